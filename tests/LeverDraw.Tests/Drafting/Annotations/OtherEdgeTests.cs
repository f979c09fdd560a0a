using System.Collections.Immutable;
using LeverDraw.Drafting;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Layout;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Annotations;

/// <summary>A part from −10 to 10 across and from −20 to 20 up, whose height may be measured at either edge.</summary>
public class OtherEdgeTests
{
    private static readonly LinearDimension Height = new("x", 40, Label.Of("40"), new Point2D(10, -20), new Point2D(10, 20), LinearDimension.Upright)
    {
        AtOtherEdge = (new Point2D(-10, -20), new Point2D(-10, 20)),
    };

    private static readonly Stroke Outline = new(new Point2D(-10, 0), new Point2D(10, 0), StrokeKind.Feature);

    [Fact]
    public void DimensionLine_OnEitherSide_IsMeasuredFromTheEdgeThere()
    {
        Candidate[] all = [.. Places(Height).All()];
        Assert.Contains(all, c => c.Strokes[0].A.X < -10);
        foreach (Candidate place in all)
        {
            double line = place.Strokes[0].A.X;
            foreach (Stroke extension in place.Strokes.Where(s => s.Kind == StrokeKind.ExtensionLine))
                Assert.True(Math.Sign(line) == Math.Sign(extension.A.X) && Math.Abs(extension.A.X) > 10);
        }
    }

    [Fact]
    public void DimensionLine_WithoutOtherEdge_IsMeasuredFromItsOwn() =>
        Assert.Contains(Places(Height with { AtOtherEdge = null }).All(), c => c.Strokes[0].A.X < -10 && c.Strokes.Any(s => s.Kind == StrokeKind.ExtensionLine && s.A.X > 0));

    // A line from (x, −20) to (x, 20) within the part crosses the outline that runs across its middle.
    [Fact]
    public void DimensionLine_AcrossOutlines_IsDearerThanOneInAHollow()
    {
        var middle = new LinearDimension("x", 40, Label.Of("40"), new Point2D(-4, -20), new Point2D(-4, 20), LinearDimension.Upright) { Sides = DimensionSides.Right };
        var hollow = Cheapest(middle, []);
        var solid = Cheapest(middle, [Outline]);
        Assert.Equal(40, solid - hollow, 9);

        double Cheapest(LinearDimension dimension, Stroke[] strokes) => Places(dimension, strokes).All().Where(c => c.Strokes[0].A.X is > -10 and < 10).Min(c => c.Cost);
    }

    // The first tier stands at 10 and style's first distance; a circle round a detail that turns just there would merge with it, one that turns beyond the line's ends not.
    [Theory]
    [InlineData(0, 18)]
    [InlineData(60, 0)]
    public void DimensionLine_AlongADetailsCircle_IsDearer(double height, double dearer)
    {
        double tier = 10 + DraftingStyle.Small.FirstTier;
        var circle = ArcEdge.FullCircle(new Point2D(tier - 5.5, height), 6);
        Assert.Equal(dearer, AtTier([circle]) - AtTier([]), 9);

        double AtTier(ImmutableArray<ArcEdge> circles) =>
            LinearCandidates.For(Height, "d", new PlacingContext("v", Transform2D.Identity, new Box2D(-10, -20, 10, 20), DraftingStyle.Small) { Circles = circles })
                .All().Where(c => Math.Abs(c.Strokes[0].A.X - tier) < 1e-9).Min(c => c.Cost);
    }

    /// <summary>The solver drops a place by it before its lettering is worked out.</summary>
    [Theory]
    [InlineData(40)]
    [InlineData(3)]
    public void PointAt_OfEveryPlace_LiesWithinIt(double size)
    {
        var scratch = new PlaceShape();
        PlaceSet places = Places(new LinearDimension("x", size, Label.Of("12.34"), new Point2D(10, 0), new Point2D(10, size), LinearDimension.Upright));
        for (int rank = 0; rank < places.Count; rank++)
        {
            if (places.Make(rank, scratch) is { } place)
                Assert.True(place.Bounds.Inflated(1e-9).Contains(places.PointAt(rank)!.Value));
        }
    }

    private static PlaceSet Places(LinearDimension dimension, Stroke[]? strokes = null) =>
        LinearCandidates.For(dimension, "d", new PlacingContext("v", Transform2D.Identity, new Box2D(-10, -20, 10, 20), DraftingStyle.Small) { Strokes = strokes ?? [] });
}
