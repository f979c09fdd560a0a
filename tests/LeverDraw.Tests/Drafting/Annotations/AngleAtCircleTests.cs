using LeverDraw.Drafting;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Layout;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Annotations;

/// <summary>An angle's arrowhead on the circle that marks a detail cannot be told from it: such an arc is a blemish, one clear of the circle none.</summary>
public class AngleAtCircleTests
{
    private static readonly ArcEdge Circle = ArcEdge.FullCircle(Point2D.Origin + (Vector2D.FromAngle(50 * Math.PI / 180) * 30), 6);

    [Fact]
    public void Arc_WithAnArrowheadOnACircle_IsABlemish()
    {
        Candidate[] places = [.. AngleCandidates.For(Angle, "d", Context([Circle])).All()];
        Assert.Contains(places, p => IsNear(p));
        Assert.Contains(places, p => !IsNear(p));
        Assert.All(places, p => Assert.Equal(IsNear(p) ? PlacingCosts.HeadOnCircle : 0, p.Blemish));
    }

    [Fact]
    public void Arc_WhereThereIsNoCircle_IsNoBlemish() =>
        Assert.All(AngleCandidates.For(Angle, "d", Context([])).All(), p => Assert.Equal(0, p.Blemish));

    /// <summary>Of 40 degrees from upright, its second leg through the circle's middle, from 20 to 60 mm.</summary>
    private static AngleDimension Angle => new("a", 40 * Math.PI / 180, Label.Of("40°"), Point2D.Origin, 50 * Math.PI / 180, 90 * Math.PI / 180, null, null) { Reach = (20, 60) };

    private static PlacingContext Context(System.Collections.Immutable.ImmutableArray<ArcEdge> circles) =>
        new("v", Transform2D.Identity, new Box2D(-20, -20, 40, 60), DraftingStyle.Large) { Circles = circles };

    private static bool IsNear(Candidate place) => place.Heads.Any(head =>
    {
        Point2D tip = Arrowhead.Tip(head), back = Point2D.Lerp(head.A, head.B, 0.5);
        double beyondTip = tip.DistanceTo(Circle.Centre) - Circle.Radius, beyondBack = back.DistanceTo(Circle.Centre) - Circle.Radius;
        return Math.Min(Math.Abs(beyondTip), Math.Abs(beyondBack)) < 1.4 || (beyondTip > 0) != (beyondBack > 0);
    });
}
