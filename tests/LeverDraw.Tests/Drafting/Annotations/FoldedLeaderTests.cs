using LeverDraw.Drafting;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Layout;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Annotations;

/// <summary>A leader that comes down from an arc and folds back under itself: its lettering keeps clear of it, so that a radius finds room in a hollow.</summary>
public class FoldedLeaderTests
{
    private static readonly PlacingContext Context = new("v", Transform2D.Identity, new Box2D(-20, -20, 20, 20), DraftingStyle.Large);

    [Fact]
    public void Radius_InAHollow_HasFoldedLeadersThatMissTheirLettering()
    {
        // The roof of a gap 20 wide: the material lies outside.
        ArcEdge roof = new(Point2D.Origin, 10, 0, Math.PI);
        var radius = new RadiusDimension("r", 10, Label.Of("R10"), [roof]) { MaterialAtCentre = false };
        Candidate[] folded = [.. RadialCandidates.For(radius, "d", Context).All().Where(IsFolded)];
        Assert.Contains(folded, c => c.Bounds is { MinX: > -10, MaxX: < 10 } && c.Texts[0].Bounds.MaxY < -2);
        Assert.All(folded, c => Assert.False(c.Texts[0].Meets(c.Strokes[0].A, c.Strokes[0].B)));
    }

    private static bool IsFolded(Candidate place)
    {
        Vector2D slant = place.Strokes[0].B - place.Strokes[0].A, shoulder = place.Strokes[1].B - place.Strokes[1].A;
        return slant.Y < 0 && slant.X * shoulder.X < 0;
    }
}
