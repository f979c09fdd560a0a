using System.Collections.Immutable;
using CsCheck;
using LeverDraw.Geometry;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Geometry;

public class ClipTests
{
    private static readonly Contour Square = ContourChordsTests.Polygon((0, 0), (10, 0), (10, 10), (0, 10));

    private static readonly Contour Fork = ContourChordsTests.Polygon((0, 0), (10, 0), (10, 10), (6, 10), (6, 3), (4, 3), (4, 10), (0, 10));

    [Fact]
    public void ByLine_AlongAnEdge_KeepsAllOrNothing()
    {
        Assert.Equal(100, ContourMeasure.Area(Assert.Single(ContourClip.ByLine(Square, Point2D.Origin, new Vector2D(1, 0)))), 1e-12);
        Assert.Empty(ContourClip.ByLine(Square, Point2D.Origin, new Vector2D(-1, 0)));
        Assert.Empty(ContourClip.ByLine(Square, new Point2D(3, 10), new Vector2D(1, 0)));
    }

    [Fact]
    public void ByLine_ThroughForkArms_GivesTwoTips()
    {
        ImmutableArray<Contour> tips = ContourClip.ByLine(Fork, new Point2D(0, 7), new Vector2D(1, 0));
        Assert.Equal([12, 12], tips.Select(t => Math.Round(ContourMeasure.Area(t), 9)).ToArray());
    }

    [Fact]
    public void ByLine_AlongTheGapsBottom_GivesTwoArmsTouchingNothing()
    {
        Assert.Equal([28, 28], ContourClip.ByLine(Fork, new Point2D(0, 3), new Vector2D(1, 0)).Select(t => Math.Round(ContourMeasure.Area(t), 9)).ToArray());
        Assert.Equal(30, ContourMeasure.Area(Assert.Single(ContourClip.ByLine(Fork, new Point2D(0, 3), new Vector2D(-1, 0)))), 1e-9);
    }

    [Fact]
    public void ByLine_Diagonal_IsATriangle()
    {
        Contour half = Assert.Single(ContourClip.ByLine(Square, Point2D.Origin, new Vector2D(1, 1)));
        Assert.Equal(3, half.Edges.Length);
        Assert.Equal(50, ContourMeasure.Area(half), 1e-9);
    }

    [Fact]
    public void ByLine_Hole_StaysAHole() =>
        Assert.Equal(-12.5 * Math.PI, ContourMeasure.Area(Assert.Single(ContourClip.ByLine(Contour.Circle(Point2D.Origin, 5).Reversed(), Point2D.Origin, new Vector2D(1, 0)))), 1e-9);

    [Theory]
    [InlineData(0)]
    [InlineData(0.5e-9)]
    [InlineData(-0.5e-9)]
    [InlineData(2e-9)]
    [InlineData(-2e-9)]
    public void ByLine_GrazingACircle_IsWholeOrAlmost(double off)
    {
        Contour circle = Contour.Circle(Point2D.Origin, 5);
        ImmutableArray<Contour> kept = ContourClip.ByLine(circle, new Point2D(0, -5 + off), new Vector2D(1, 0));
        Assert.Equal(25 * Math.PI, ContourMeasure.Area(Assert.Single(kept)), 1e-9);
        Assert.True(ContourClip.ByLine(circle, new Point2D(0, -5 + off), new Vector2D(-1, 0)).Sum(ContourMeasure.Area) < 1e-9);
    }

    // A square of side 6 about the centre of a circle of radius 5 has its corners inside (√18 < 5): the square is what is left.
    // One of side 8 has them outside and cuts four segments off, each with a half chord of 3 (3-4-5).
    [Fact]
    public void ToBox_CircleAndSquare()
    {
        Contour circle = Contour.Circle(Point2D.Origin, 5);
        Assert.Equal(36, ContourMeasure.Area(Assert.Single(ContourClip.ToBox(circle, new Box2D(-3, -3, 3, 3)))), 1e-9);
        // Less four segments of half angle q with cos q = 4/5: R²(q − sin q cos q) each.
        double q = Math.Asin(0.6), segment = 25 * (q - 0.48);
        Assert.Equal((25 * Math.PI) - (4 * segment), ContourMeasure.Area(Assert.Single(ContourClip.ToBox(circle, new Box2D(-4, -4, 4, 4)))), 1e-9);
        Assert.Empty(ContourClip.ToBox(circle, new Box2D(6, 6, 8, 8)));
    }

    [Fact]
    public void ByLine_BothSides_AddUp() => Gen.Select(ContourGen.Any, Gen.Double[0, 1], Gen.Double[0, 1], Gen.Double[-4, 4], Gen.Int[0, 50]).Sample(
        (c, x, y, angle, corner) =>
        {
            // Half of the lines pass exactly through a corner, a quarter along an edge.
            Edge edge = c.Edges[corner % c.Edges.Length];
            Point2D on = corner % 2 == 0 ? edge.Start : new(c.Box.MinX + (x * c.Box.Width), c.Box.MinY + (y * c.Box.Height));
            Vector2D u = corner % 4 == 0 ? edge.TangentAt(0) : Vector2D.FromAngle(angle);
            double left = ContourClip.ByLine(c, on, u).Sum(ContourMeasure.Area), right = ContourClip.ByLine(c, on, -u).Sum(ContourMeasure.Area);
            // A line nearer to an edge than what counts as coincident is taken as along it: at most that distance times a chord is lost.
            double area = ContourMeasure.Area(c), sliver = Coincidence.Distance * (c.Box.Width + c.Box.Height);
            Assert.InRange(left + right, (area * (1 - 1e-9)) - sliver, (area * (1 + 1e-9)) + sliver);
        },
        iter: 2000);

    [Fact]
    public void EdgesToCircle_LineThroughIt_IsTheChord()
    {
        LineEdge chord = Assert.IsType<LineEdge>(Assert.Single(EdgeClip.ToCircle([new LineEdge(new Point2D(-9, 3), new Point2D(9, 3))], Point2D.Origin, 5)));
        Assert.Equal(-4, chord.From.X, 1e-12);
        Assert.Equal(4, chord.To.X, 1e-12);
    }

    [Fact]
    public void EdgesToBox_ArcInAndOut_KeepsBothPieces()
    {
        // The upper half circle of radius 5 in a box up to y = 4: x from ±3 outward.
        ImmutableArray<Edge> kept = EdgeClip.ToBox([new ArcEdge(Point2D.Origin, 5, 0, Math.PI)], new Box2D(-10, 0, 10, 4));
        Assert.Equal(2, kept.Length);
        Assert.Equal(3, kept[0].End.X, 1e-12);
        Assert.Equal(-3, kept[1].Start.X, 1e-12);
    }

    [Fact]
    public void EdgesToBox_AlongItsSide_AreKept() =>
        Assert.Equal(4, Assert.Single(EdgeClip.ToBox([new LineEdge(new Point2D(-9, 4), new Point2D(9, 4))], new Box2D(-2, 0, 2, 4))).Length, 1e-12);

    [Fact]
    public void EdgesToCircle_StayInside() => Gen.Select(ContourGen.Any, Gen.Double[1, 15]).Sample(
        (c, r) =>
        {
            Point2D centre = c.Edges[0].Start;
            foreach (Edge piece in EdgeClip.ToCircle(c.Edges, centre, r))
            {
                for (double t = 0; t <= 1; t += 0.125)
                    Assert.True(piece.PointAt(t).DistanceTo(centre) <= r + 1e-8);
            }
        },
        iter: 500);
}
