using LeverDraw.Geometry;

namespace LeverDraw.Tests.Geometry;

public class ContourChordsTests
{
    private static readonly Contour Square = Polygon((0, 0), (10, 0), (10, 10), (0, 10));

    // A U, 10 wide, its gap from x = 4 to 6 above y = 3.
    private static readonly Contour Fork = Polygon((0, 0), (10, 0), (10, 10), (6, 10), (6, 3), (4, 3), (4, 10), (0, 10));

    [Theory]
    [InlineData(0)]
    [InlineData(5)]
    [InlineData(10)]
    [InlineData(10 + 1e-10)]
    public void HorizontalAt_SquareAndItsEdges_IsFullWidth(double y) =>
        Assert.Equal([new Interval(0, 10)], ContourChords.HorizontalAt(Square, y).ToArray());

    [Theory]
    [InlineData(-0.001)]
    [InlineData(10.001)]
    public void HorizontalAt_Beside_IsNothing(double y) => Assert.Empty(ContourChords.HorizontalAt(Square, y));

    [Fact]
    public void HorizontalAt_ThroughForkArms_IsTwo() =>
        Assert.Equal([new Interval(0, 4), new Interval(6, 10)], ContourChords.HorizontalAt(Fork, 7).ToArray());

    [Fact]
    public void HorizontalAt_AlongTheGapsBottom_JoinsBothSides() =>
        Assert.Equal([new Interval(0, 10)], ContourChords.HorizontalAt(Fork, 3).ToArray());

    [Fact]
    public void HorizontalAt_TangentToCircle_IsNothing() =>
        Assert.Empty(ContourChords.HorizontalAt(Contour.Circle(Point2D.Origin, 5), 5));

    [Fact]
    public void At_SlantedLineThroughCircle_MeasuresFromThePoint()
    {
        // Centre line of the circle, met from 5 away: 10 ± 5 along the 3-4-5 direction.
        Interval chord = Assert.Single(ContourChords.At(Contour.Circle(new Point2D(6, 8), 5), Point2D.Origin, new Vector2D(3, 4)));
        Assert.Equal(5, chord.From, 1e-12);
        Assert.Equal(15, chord.To, 1e-12);
    }

    [Fact]
    public void At_DiagonalThroughCorners_IsWholeDiagonal()
    {
        Interval chord = Assert.Single(ContourChords.At(Square, Point2D.Origin, new Vector2D(1, 1)));
        Assert.Equal(0, chord.From, 1e-9);
        Assert.Equal(10 * Math.Sqrt(2), chord.To, 1e-9);
    }

    [Fact]
    public void Scanner_RingOfTwoCircles_LeavesTheHoleOut()
    {
        ChordScanner ring = ChordScanner.Horizontal(Contour.Circle(Point2D.Origin, 5), Contour.Circle(Point2D.Origin, 3).Reversed());
        Assert.Equal(4, ring.LengthAt(0), 1e-12);
        Assert.Equal(6, ring.LengthAt(4), 1e-12); // 3-4-5
    }

    [Theory]
    [InlineData(5, 1, PointPlace.Inside)]
    [InlineData(5, 5, PointPlace.Outside)]
    [InlineData(2, 3, PointPlace.Inside)]
    [InlineData(4, 5, PointPlace.OnEdge)]
    [InlineData(10, 10, PointPlace.OnEdge)]
    [InlineData(-1, 3, PointPlace.Outside)]
    [InlineData(11, 3, PointPlace.Outside)]
    public void Contains_Fork_TellsThePlace(double x, double y, PointPlace place) =>
        Assert.Equal(place, ContourQueries.Contains(Fork, new Point2D(x, y)));

    [Fact]
    public void Contains_BetweenArcAndItsChord_IsInside() =>
        Assert.Equal(PointPlace.Inside, ContourQueries.Contains(Contour.Circle(Point2D.Origin, 5), new Point2D(3.53, 3.53)));

    [Fact]
    public void NearestPoint_FromFocusOfNotch_IsOnTheWall()
    {
        NearestOnContour near = ContourQueries.NearestPoint(Fork, new Point2D(5.5, 8));
        Assert.Equal(0.5, near.Distance, 1e-12);
        Assert.Equal(new Point2D(6, 8), near.Point);
        Assert.Equal(3, near.Edge);
    }

    internal static Contour Polygon(params (double X, double Y)[] corners) =>
        Contour.Of(corners.Select((c, i) => new LineEdge(
            new Point2D(c.X, c.Y), new Point2D(corners[(i + 1) % corners.Length].X, corners[(i + 1) % corners.Length].Y))));
}
