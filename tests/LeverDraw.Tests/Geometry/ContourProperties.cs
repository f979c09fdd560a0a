using CsCheck;
using LeverDraw.Geometry;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Geometry;

/// <summary>Twins: an outline changed in a way whose effect on every measure is known.</summary>
public class ContourProperties
{
    private const int Runs = 500;

    private static readonly Gen<Point2D> Points = Gen.Select(Gen.Double[-60, 60], Gen.Double[-60, 60], (x, y) => new Point2D(x, y));

    [Fact]
    public void Generated_Contours_AreSoundAndCounterClockwise() =>
        ContourGen.Any.Sample(c => ContourSelfCheck.Find(c).IsEmpty && ContourMeasure.Area(c) > 0, iter: Runs);

    [Fact]
    public void Reversed_ChangesOnlySigns() => Gen.Select(ContourGen.Any, Points).Sample(
        (c, p) =>
        {
            Contour other = c.Reversed();
            Same(ContourMeasure.Length(c), ContourMeasure.Length(other));
            Same(c.Box, other.Box);
            Same(ContourMeasure.Moments(c, p), -ContourMeasure.Moments(other, p));
            Same(ContourMeasure.Centroid(c), ContourMeasure.Centroid(other));
            Assert.Equal(ContourQueries.Contains(c, p), ContourQueries.Contains(other, p));
        },
        iter: Runs);

    [Fact]
    public void StartingElsewhere_ChangesNothing() => Gen.Select(ContourGen.Any, Points, Gen.Int[0, 100]).Sample(
        (c, p, n) =>
        {
            Contour other = c.StartingAt(n % c.Edges.Length);
            Same(ContourMeasure.Length(c), ContourMeasure.Length(other));
            Same(c.Box, other.Box);
            Same(ContourMeasure.Moments(c, p), ContourMeasure.Moments(other, p));
            Same(ContourMeasure.Centroid(c), ContourMeasure.Centroid(other));
            Assert.Equal(ContourQueries.Contains(c, p), ContourQueries.Contains(other, p));
        },
        iter: Runs);

    [Fact]
    public void RigidMotion_MovesTheMeasuresAlong() => Gen.Select(ContourGen.Any, Points, ContourGen.RigidMotion).Sample(
        (c, p, t) =>
        {
            Contour other = c.Transformed(t);
            Same(ContourMeasure.Length(c), ContourMeasure.Length(other));
            Same(ContourMeasure.Area(c), ContourMeasure.Area(other));
            Same(t.Apply(ContourMeasure.Centroid(c)), ContourMeasure.Centroid(other));
            // The sum of the two moments is the polar one, which a turn leaves alone.
            SecondMoments before = ContourMeasure.SecondMoments(c, p), after = ContourMeasure.SecondMoments(other, t.Apply(p));
            Same(before.Ixx + before.Iyy, after.Ixx + after.Iyy);
            Same((before.Ixx * before.Iyy) - (before.Ixy * before.Ixy), (after.Ixx * after.Iyy) - (after.Ixy * after.Ixy));
            Assert.Equal(ContourQueries.Contains(c, p), ContourQueries.Contains(other, t.Apply(p)));
        },
        iter: Runs);

    [Fact]
    public void QuarterTurn_SwapsTheBoxAndTheMoments() => Gen.Select(ContourGen.Any, Points).Sample(
        (c, p) =>
        {
            Transform2D quarter = Transform2D.Turn(Math.PI / 2);
            Contour other = c.Transformed(quarter);
            Same(new Box2D(-c.Box.MaxY, c.Box.MinX, -c.Box.MinY, c.Box.MaxX), other.Box);
            AreaMoments m = ContourMeasure.Moments(c, p);
            Same(new AreaMoments(m.Area, -m.Sy, m.Sx, m.Iyy, m.Ixx, -m.Ixy), ContourMeasure.Moments(other, quarter.Apply(p)));
        },
        iter: Runs);

    [Fact]
    public void Mirror_TurnsTheAreaAround() => Gen.Select(ContourGen.Any, Points).Sample(
        (c, p) =>
        {
            Contour other = c.Transformed(Transform2D.MirrorX);
            Point2D q = new(-p.X, p.Y);
            Same(ContourMeasure.Length(c), ContourMeasure.Length(other));
            Same(new Box2D(-c.Box.MaxX, c.Box.MinY, -c.Box.MinX, c.Box.MaxY), other.Box);
            AreaMoments m = ContourMeasure.Moments(c, p);
            Same(new AreaMoments(-m.Area, m.Sx, -m.Sy, -m.Ixx, -m.Iyy, m.Ixy), ContourMeasure.Moments(other, q));
            Assert.Equal(ContourQueries.Contains(c, p), ContourQueries.Contains(other, q));
        },
        iter: Runs);

    [Fact]
    public void Scale_RaisesEachMeasureToItsPower() => Gen.Select(ContourGen.Any, Points, Gen.Double[0.1, 5]).Sample(
        (c, p, k) =>
        {
            Contour other = c.Transformed(Transform2D.Enlarge(k));
            Point2D q = new(p.X * k, p.Y * k);
            Same(k * ContourMeasure.Length(c), ContourMeasure.Length(other));
            AreaMoments m = ContourMeasure.Moments(c, p);
            double k2 = k * k, k3 = k2 * k, k4 = k2 * k2;
            Same(new AreaMoments(m.Area * k2, m.Sx * k3, m.Sy * k3, m.Ixx * k4, m.Iyy * k4, m.Ixy * k4), ContourMeasure.Moments(other, q));
            Assert.Equal(ContourQueries.Contains(c, p), ContourQueries.Contains(other, q));
        },
        iter: Runs);

    // Fubini: the chords' lengths integrated over the height give the area. Midpoint rule, 4000 strips; its error is bounded by 2 · width of a strip · box width · corners.
    [Fact]
    public void Chords_SummedOverHeights_GiveTheArea() => ContourGen.Any.Sample(
        c =>
        {
            const int Strips = 4000;
            ChordScanner scanner = ChordScanner.Horizontal(c);
            double step = c.Box.Height / Strips, sum = 0;
            for (int i = 0; i < Strips; i++)
                sum += step * scanner.LengthAt(c.Box.MinY + ((i + 0.5) * step));
            Assert.Equal(ContourMeasure.Area(c), sum, 5e-3 * ContourMeasure.Area(c));
        },
        iter: 50);

    [Fact]
    public void Chord_EndsLieOnTheEdge_MiddlesInside() => Gen.Select(ContourGen.Any, Points, Gen.Double[-4, 4]).Sample(
        (c, p, angle) =>
        {
            Vector2D u = Vector2D.FromAngle(angle);
            foreach (Interval chord in ContourChords.At(c, p, u))
            {
                Assert.True(ContourQueries.NearestPoint(c, p + (u * chord.From)).Distance < 1e-8);
                Assert.True(ContourQueries.NearestPoint(c, p + (u * chord.To)).Distance < 1e-8);
                Assert.NotEqual(PointPlace.Outside, ContourQueries.Contains(c, p + (u * chord.Middle)));
            }
        },
        iter: Runs);

    private static void Same(Point2D a, Point2D b) => Assert.True(a.DistanceTo(b) < 1e-9, $"{a} {b}");

    private static void Same(Box2D a, Box2D b)
    {
        Same(new Point2D(a.MinX, a.MinY), new Point2D(b.MinX, b.MinY));
        Same(new Point2D(a.MaxX, a.MaxY), new Point2D(b.MaxX, b.MaxY));
    }

    private static void Same(AreaMoments a, AreaMoments b)
    {
        double reach = 1 + Math.Abs(a.Ixx) + Math.Abs(a.Iyy);
        Same(a.Area, b.Area);
        Assert.Equal(a.Sx, b.Sx, 1e-11 * reach);
        Assert.Equal(a.Sy, b.Sy, 1e-11 * reach);
        Assert.Equal(a.Ixx, b.Ixx, 1e-11 * reach);
        Assert.Equal(a.Iyy, b.Iyy, 1e-11 * reach);
        Assert.Equal(a.Ixy, b.Ixy, 1e-11 * reach);
    }

    private static void Same(double a, double b) => Assert.Equal(a, b, 1e-10 * (1 + Math.Abs(a)));
}
