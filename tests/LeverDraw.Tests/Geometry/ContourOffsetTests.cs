using CsCheck;
using LeverDraw.Geometry;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Geometry;

public class ContourOffsetTests
{
    private static readonly Contour Square = ContourChordsTests.Polygon((0, 0), (10, 0), (10, 10), (0, 10));

    // Two rooms 10 × 10 joined by a passage 2 high and 4 long: an hour-glass.
    private static readonly Contour Dumbbell = ContourChordsTests.Polygon(
        (0, 0), (10, 0), (10, 4), (14, 4), (14, 0), (24, 0), (24, 10), (14, 10), (14, 6), (10, 6), (10, 10), (0, 10));

    [Fact]
    public void By_SquareOutward_RoundsItsCorners()
    {
        Contour grown = Assert.Single(ContourOffset.By(Square, 2));
        Assert.Equal(8, grown.Edges.Length);
        Assert.Equal(4, grown.Edges.OfType<ArcEdge>().Count(a => Math.Abs(a.Radius - 2) < 1e-12));
        Assert.Equal(100 + (40 * 2) + (4 * Math.PI), ContourMeasure.Area(grown), 1e-9);
    }

    [Fact]
    public void By_SquareInward_StaysSquare()
    {
        Contour less = Assert.Single(ContourOffset.By(Square, -2));
        Assert.Equal(4, less.Edges.Length);
        Assert.Equal(36, ContourMeasure.Area(less), 1e-9);
    }

    [Theory]
    [InlineData(-5)]
    [InlineData(-5.000001)]
    [InlineData(-8)]
    public void By_SquareInwardToNothing_IsEmpty(double d) => Assert.Empty(ContourOffset.By(Square, d));

    [Fact]
    public void By_CircleInwardToNothing_IsEmpty() => Assert.Empty(ContourOffset.By(Contour.Circle(Point2D.Origin, 3), -3));

    [Fact]
    public void By_DumbbellInward_SplitsInTwo()
    {
        // 2 from every wall, past the doorway: each room leaves a 6 × 6 square; the doorway's corners are 2 to the side, their circles
        // of radius 2 about (10, 4) and (10, 6) reach in to x = 8 at y = 4…6, just touching the square's side x = 8.
        System.Collections.Immutable.ImmutableArray<Contour> rooms = ContourOffset.By(Dumbbell, -2);
        Assert.Equal(2, rooms.Length);
        Assert.All(rooms, r => Assert.InRange(ContourMeasure.Area(r), 35.9, 36.3));
    }

    [Fact]
    public void By_ForkOutward_ClosesTheGapIntoAHole()
    {
        // A gap 2 wide at its mouth and 6 wide inside; grown by 1.5 the mouth closes and a 3 × 3 hole is left.
        Contour jaw = ContourChordsTests.Polygon(
            (0, 0), (20, 0), (20, 20), (11, 20), (11, 16), (13, 16), (13, 10), (7, 10), (7, 16), (9, 16), (9, 20), (0, 20));
        System.Collections.Immutable.ImmutableArray<Contour> grown = ContourOffset.By(jaw, 1.5);
        Assert.Equal(2, grown.Length);
        double hole = Assert.Single(grown.Select(ContourMeasure.Area), a => a < 0);
        Assert.InRange(-hole, 9, 10.5);
    }

    // The fillet's own parallel has just vanished, or is just about to: the corner must still close.
    [Theory]
    [InlineData(0)]
    [InlineData(1e-9)]
    [InlineData(-1e-9)]
    [InlineData(1e-8)]
    [InlineData(-1e-8)]
    [InlineData(1e-7)]
    [InlineData(-1e-7)]
    [InlineData(1e-3)]
    public void By_ConcaveFilletOfNearlyTheSameRadius_LeavesASharpCorner(double off)
    {
        Point2D o = new(0, 0);
        Contour ell = ContourChordsTests.Polygon((0, 0), (20, 0), (20, 10), (10, 10), (10, 20), (0, 20));
        Filleted f = Assert.IsType<Filleted>(TangentFillet.AtCorner(ell.Edges[2], ell.Edges[3], 3));
        Contour smooth = Contour.Of([ell.Edges[0], ell.Edges[1], f.TrimmedIn, f.Arc, f.TrimmedOut, .. ell.Edges[4..]]);
        Contour grown = Assert.Single(ContourOffset.By(smooth, 3 + off));
        // 26 × 26 less the 10 × 10 corner cut (from 13 to 23 both ways) less four… five rounded corners of radius 3.
        Assert.Equal((26 * 26) - 100 - (5 * 9 * (1 - (Math.PI / 4))), ContourMeasure.Area(grown), 1e-6 + (110 * Math.Abs(off)));
    }

    // A nearly straight inner corner: its two parallels cross at so small an angle that the tails beyond hardly come nearer to the outline.
    [Fact]
    public void By_ShallowInnerCorner_Closes() => Gen.Select(Gen.Double[-10, -1], Gen.Double[-6, 0.5]).Sample(
        (angle, size) =>
        {
            double d = Math.Pow(10, size), dip = 10 * Math.Tan(Math.Pow(10, angle) / 2);
            if (d <= ContourOffset.Least)
                return;
            Contour roof = ContourChordsTests.Polygon((0, 0), (20, 0), (20, 10), (10, 10 - dip), (0, 10));
            Contour grown = Assert.Single(ContourOffset.By(roof, d));
            // As for a convex outline, less the kite counted twice at the inner corner and the wedge taken off: d²(tan(θ/2) − θ/2), doubled sides.
            double half = Math.Atan(dip / 10);
            double area = ContourMeasure.Area(roof) + (ContourMeasure.Length(roof) * d) + (Math.PI * d * d) - (d * d * (Math.Tan(half) - half));
            Assert.Equal(area, ContourMeasure.Area(grown), 1e-6);
        },
        iter: 3000);

    // Steiner's formula for convex outlines: A + Ld + πd², L + 2πd.
    [Fact]
    public void By_ConvexOutward_FollowsSteiner() => Gen.Select(ContourGen.Convex, Gen.Double[0.01, 30]).Sample(
        (c, d) =>
        {
            Contour grown = Assert.Single(ContourOffset.By(c, d));
            double area = ContourMeasure.Area(c) + (ContourMeasure.Length(c) * d) + (Math.PI * d * d);
            Assert.Equal(1, ContourMeasure.Area(grown) / area, 1e-9);
            Assert.Equal(1, ContourMeasure.Length(grown) / (ContourMeasure.Length(c) + (2 * Math.PI * d)), 1e-9);
        },
        iter: 300);

    [Fact]
    public void By_ConvexOutThenIn_Returns() => Gen.Select(ContourGen.Convex, Gen.Double[0.01, 10]).Sample(
        (c, d) =>
        {
            Contour back = Assert.Single(ContourOffset.By(Assert.Single(ContourOffset.By(c, d)), -d));
            Assert.Equal(1, ContourMeasure.Area(back) / ContourMeasure.Area(c), 1e-8);
            Assert.Equal(1, ContourMeasure.Length(back) / ContourMeasure.Length(c), 1e-6);
        },
        iter: 300);

    [Fact]
    public void By_Anything_KeepsTheDistanceAndIsSound() => Gen.Select(ContourGen.Any, Gen.Double[-8, 8]).Sample(
        (c, d) =>
        {
            if (Math.Abs(d) <= ContourOffset.Least)
                return;
            foreach (Contour part in ContourOffset.By(c, d))
            {
                Assert.Empty(ContourSelfCheck.Find(part));
                foreach (Edge edge in part.Edges)
                {
                    if (edge.Length > 1e-6)
                        Assert.Equal(Math.Abs(d), ContourQueries.NearestPoint(c, edge.PointAt(0.37)).Distance, 1e-7);
                }
            }
        },
        iter: 1000);
}
