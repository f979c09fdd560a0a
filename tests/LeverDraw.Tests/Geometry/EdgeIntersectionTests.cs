using LeverDraw.Geometry;

namespace LeverDraw.Tests.Geometry;

public class EdgeIntersectionTests
{
    private const double Close = 1e-9;

    private static readonly ArcEdge Upper = new(Point2D.Origin, 5, 0, Math.PI);

    [Fact]
    public void Between_LinesCrossing_GivesPointAndParameters()
    {
        Crossings found = Assert.IsType<Crossings>(EdgeIntersection.Between(Line(0, 0, 4, 0), Line(1, -1, 1, 3)));
        Meeting m = Assert.Single(found.Meetings);
        Assert.Equal(0.25, m.Ta, Close);
        Assert.Equal(0.25, m.Tb, Close);
        Near(1, 0, m.Point);
    }

    [Fact]
    public void Between_LineEndingOnLine_IsTouch()
    {
        Meeting m = Assert.Single(Assert.IsType<Touch>(EdgeIntersection.Between(Line(0, 0, 4, 0), Line(1, 0, 1, 3))).Meetings);
        Assert.Equal((0.25, 0.0), (m.Ta, m.Tb));
    }

    [Fact]
    public void Between_LinesShortOfEachOther_IsNone() =>
        Assert.IsType<NoIntersection>(EdgeIntersection.Between(Line(0, 0, 4, 0), Line(1, 1e-6, 1, 3)));

    [Fact]
    public void Between_CollinearLinesRunningOppositely_GivesSharedPiece()
    {
        Overlap found = Assert.IsType<Overlap>(EdgeIntersection.Between(Line(0, 0, 4, 0), Line(6, 0, 2, 0)));
        SharedPiece piece = Assert.Single(found.Pieces);
        Assert.Equal(0.5, piece.TaFrom, Close);
        Assert.Equal(1, piece.TaTo, Close);
        Assert.Equal(1, piece.TbFrom, Close);
        Assert.Equal(0.5, piece.TbTo, Close);
    }

    [Fact]
    public void Between_CollinearLinesEndToEnd_IsTouch() =>
        Assert.Single(Assert.IsType<Touch>(EdgeIntersection.Between(Line(0, 0, 4, 0), Line(4, 0, 9, 0))).Meetings);

    [Fact]
    public void Between_ParallelLines_IsNone() =>
        Assert.IsType<NoIntersection>(EdgeIntersection.Between(Line(0, 0, 4, 0), Line(0, 0.001, 4, 0.001)));

    // 3-4-5 triangle: the chord at height 3 of a circle of radius 5 ends at x = ±4.
    [Fact]
    public void Between_LineThroughArc_CrossesTwice()
    {
        Crossings found = Assert.IsType<Crossings>(EdgeIntersection.Between(Line(-8, 3, 8, 3), Upper));
        Assert.Equal(2, found.Meetings.Length);
        Near(-4, 3, found.Meetings[0].Point);
        Near(4, 3, found.Meetings[1].Point);
        Assert.Equal(0.25, found.Meetings[0].Ta, Close);
        Assert.Equal(Math.Atan2(3, 4) / Math.PI, found.Meetings[1].Tb, Close);
    }

    [Fact]
    public void Between_LineTangentToArc_IsTouch()
    {
        Meeting m = Assert.Single(Assert.IsType<Touch>(EdgeIntersection.Between(Line(-8, 5, 8, 5), Upper)).Meetings);
        Near(0, 5, m.Point);
        Assert.False(m.Crosses);
    }

    [Fact]
    public void Between_LineBesideTheArcsSweep_IsNone() =>
        Assert.IsType<NoIntersection>(EdgeIntersection.Between(Line(-8, -3, 8, -3), Upper));

    // Circles of radius 5 and 5 with centres 6 apart cross at (3, ±4): 3-4-5 again.
    [Fact]
    public void Between_Circles_CrossTwice()
    {
        Crossings found = Assert.IsType<Crossings>(EdgeIntersection.Between(Circle(0, 0, 5), Circle(6, 0, 5)));
        Assert.Equal(2, found.Meetings.Length);
        Assert.All(found.Meetings, m => Assert.Equal(3, m.Point.X, Close));
        Assert.Equal([-4, 4], found.Meetings.Select(m => Math.Round(m.Point.Y, 9)).Order());
    }

    [Theory]
    [InlineData(8, 3)] // outside
    [InlineData(2, 3)] // inside
    public void Between_CirclesTangent_IsTouch(double apart, double radius)
    {
        Meeting m = Assert.Single(Assert.IsType<Touch>(EdgeIntersection.Between(
            new ArcEdge(Point2D.Origin, 5, 1, 2 * Math.PI), new ArcEdge(new Point2D(apart, 0), radius, 2, 2 * Math.PI))).Meetings);
        Near(5, 0, m.Point);
    }

    [Fact]
    public void Between_ConcentricCircles_IsNone() =>
        Assert.IsType<NoIntersection>(EdgeIntersection.Between(Circle(0, 0, 5), Circle(0, 0, 4.9)));

    [Fact]
    public void Between_ArcsOfOneCircle_OverlapInTwoPieces()
    {
        // From 0° to 270° and from 180° to 450°: shared 180…270° and 0…90°.
        ArcEdge a = new(Point2D.Origin, 5, 0, 1.5 * Math.PI), b = new(Point2D.Origin, 5, Math.PI, 1.5 * Math.PI);
        Overlap found = Assert.IsType<Overlap>(EdgeIntersection.Between(a, b));
        Assert.Equal(2, found.Pieces.Length);
        Assert.Equal(1 / 3.0, found.Pieces[0].TaTo, Close);
        Assert.Equal(2 / 3.0, found.Pieces[0].TbFrom, Close);
        Assert.Equal(2 / 3.0, found.Pieces[1].TaFrom, Close);
        Assert.Equal(0, found.Pieces[1].TbFrom, Close);
        Assert.Empty(found.Meetings);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0, 1)]
    [InlineData(2, 5)]
    public void Between_OneCircleTwice_OverlapsWholly(double seamA, double seamB)
    {
        ArcEdge a = new(Point2D.Origin, 5, seamA, 2 * Math.PI), b = new(Point2D.Origin, 5, seamB, -2 * Math.PI);
        Overlap found = Assert.IsType<Overlap>(EdgeIntersection.Between(a, b));
        Assert.Equal(1, found.Pieces.Sum(p => p.TaTo - p.TaFrom), Close);
        Assert.Empty(found.Meetings);
    }

    [Fact]
    public void Between_TangentJoint_IsOneTouchAtTheJoint()
    {
        // A joint 1e-7 rad off tangent: the circle's two crossings with the line lie within a nanometre of it in depth.
        ArcEdge arc = new(Point2D.Origin, 5, -1, 1);
        LineEdge line = new(arc.End, arc.End + new Vector2D(1e-7, 1) * 5);
        Meeting m = Assert.Single(Assert.IsType<Touch>(EdgeIntersection.Between(arc, line)).Meetings);
        Assert.Equal((1.0, 0.0), (m.Ta, m.Tb));
    }

    [Fact]
    public void CarrierBetween_SegmentsApart_MeetBeyondTheirEnds()
    {
        Meeting m = Assert.Single(CarrierIntersection.Between(Line(0, 0, 1, 0), Line(3, 1, 3, 2)).Meetings);
        Assert.Equal(3, m.Ta, Close);
        Assert.Equal(-1, m.Tb, Close);
    }

    [Fact]
    public void CarrierBetween_SameCircle_IsOverlap() =>
        Assert.IsType<Overlap>(CarrierIntersection.Between(Upper, new ArcEdge(Point2D.Origin, 5, 4, 1)));

    private static LineEdge Line(double x0, double y0, double x1, double y1) => new(new Point2D(x0, y0), new Point2D(x1, y1));

    private static ArcEdge Circle(double x, double y, double r) => ArcEdge.FullCircle(new Point2D(x, y), r);

    private static void Near(double x, double y, Point2D p) => Assert.True(p.DistanceTo(new Point2D(x, y)) <= Close, p.ToString());
}
