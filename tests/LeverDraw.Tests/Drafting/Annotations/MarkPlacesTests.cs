using LeverDraw.Drafting;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Layout;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Annotations;

/// <summary>Where a mould's joint and a detail's letter may stand, and from where a radius is pointed at (common practice, no source).</summary>
public class MarkPlacesTests
{
    private static readonly DraftingStyle Style = DraftingStyle.Small;

    private static readonly PlacingContext Context = new("v", Transform2D.Identity, new Box2D(-20, -20, 20, 20), Style);

    // Two arrowheads of 2.5 are 5: lines at 4.6 and 5.2 push the arrow ahead to 6.2, one at -7 leaves the one behind at 5.
    [Fact]
    public void Joint_BesideOtherLines_HasNoArrowThatEndsOnOne()
    {
        var joint = new MouldJoint("j", Point2D.Origin, new(1, 0), new(0, 1), "DRAG", "COPE") { Levels = [-7, 5.2, 4.6] };
        foreach (Candidate place in MouldJointCandidates.For(joint, Context).All())
        {
            Assert.Equal(6.2, Arrowhead.Tip(place.Heads[0]).Y, 1e-9);
            Assert.Equal(-2 * Style.ArrowLength, Arrowhead.Tip(place.Heads[1]).Y, 1e-9);
        }
    }

    [Fact]
    public void DetailLetter_BesideThePart_StandsOffItFirst()
    {
        // The part lies to the right and above, where the letter would stand first.
        Contour part = Contour.Of([new LineEdge(new(0, 0), new(40, 0)), new LineEdge(new(40, 0), new(40, 40)), new LineEdge(new(40, 40), new(0, 40)), new LineEdge(new(0, 40), new(0, 0))]);
        Point2D Cheapest(Contour of) => RadialCandidates.For(new DetailLetter("d", "F", Point2D.Origin, 5, of), "d", Context).All().MinBy(c => c.Cost)!.Texts[0].Centre;
        Contour elsewhere = part.Transformed(Transform2D.Move(100, 100));
        Assert.True(Cheapest(elsewhere) is { X: > 0, Y: > 0 });
        Assert.False(Cheapest(part) is { X: > 0, Y: > 0 });
    }

    // A pad's crown: from inside the arrow would come through the whole pad.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Radius_OnlyFromOutside_HasNoArrowFromTheCentresSide(bool only)
    {
        var arc = new ArcEdge(Point2D.Origin, 20, -0.3, 0.6);
        var radius = new RadiusDimension("r", 20, Label.Of("R20"), [arc]) { MaterialAtCentre = true, OnlyFromOutside = only };
        bool inside = RadialCandidates.For(radius, "d", Context).All().Any(c => Point2D.Lerp(c.Heads[0].A, c.Heads[0].B, 0.5).DistanceTo(arc.Centre) < arc.Radius);
        Assert.Equal(!only, inside);
    }
}
