using System.Collections.Immutable;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Geometry;

public class ContourSelfCheckTests
{
    [Fact]
    public void Find_BowTie_NamesTheCrossingEdges()
    {
        SelfMeeting m = Assert.Single(ContourSelfCheck.Find(ContourChordsTests.Polygon((0, 0), (4, 4), (4, 0), (0, 4))));
        Assert.Equal((0, 2), (m.EdgeA, m.EdgeB));
        Assert.Equal(new Point2D(2, 2), Assert.Single(Assert.IsType<Crossings>(m.Where).Meetings).Point);
    }

    [Fact]
    public void Find_CornerTouchingAnEdge_IsTouch()
    {
        ImmutableArray<SelfMeeting> found = ContourSelfCheck.Find(ContourChordsTests.Polygon((0, 0), (10, 0), (10, 10), (6, 10), (5, 0), (4, 10), (0, 10)));
        Assert.Equal(2, found.Length); // the corner belongs to two edges
        Assert.All(found, m => Assert.IsType<Touch>(m.Where));
    }

    [Fact]
    public void Find_SpikeTurningBack_IsOverlapOfNeighbours()
    {
        ImmutableArray<SelfMeeting> found = ContourSelfCheck.Find(ContourChordsTests.Polygon((0, 0), (10, 0), (10, 5), (15, 5), (12, 5), (12, 10), (0, 10)));
        Assert.IsType<Overlap>(Assert.Single(found, m => (m.EdgeA, m.EdgeB) == (2, 3)).Where);
        // The edge after the spike starts on the edge before it.
        Assert.IsType<Touch>(Assert.Single(found, m => (m.EdgeA, m.EdgeB) == (2, 4)).Where);
    }

    // The outgoing line cuts the arc it starts from a second time: 3-4-5.
    [Fact]
    public void Find_NeighboursMeetingAgain_IsCrossing()
    {
        ArcEdge arc = new(Point2D.Origin, 5, -Math.Atan2(4, 3) - 1, Math.Atan2(4, 3) + 1 + Math.Atan2(4, 3));
        LineEdge down = new(arc.End, new Point2D(3, -9));
        SelfMeeting m = Assert.Single(ContourSelfCheck.Find(Contour.Of([arc, down, new LineEdge(down.To, arc.Start)])));
        Assert.Equal((0, 1), (m.EdgeA, m.EdgeB));
        Assert.True(Assert.Single(m.Where.Meetings).Point.DistanceTo(new Point2D(3, -4)) < 1e-9);
    }

    [Fact]
    public void Find_TwoHalfCircles_IsSound() => Assert.Empty(ContourSelfCheck.Find(Contour.Of([
        new ArcEdge(Point2D.Origin, 5, 0, Math.PI),
        new ArcEdge(Point2D.Origin, 5, Math.PI, Math.PI),
    ])));

    [Fact]
    public void Find_FullCircle_IsSound() => Assert.Empty(ContourSelfCheck.Find(Contour.Circle(Point2D.Origin, 5)));
}
