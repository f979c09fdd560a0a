using CsCheck;
using LeverDraw.Drafting.Layout;
using LeverDraw.Geometry;
using NetTopologySuite.Geometries;

namespace LeverDraw.Tests.Drafting.Layout;

/// <summary>Against sampled points, and against an independent polygon kernel.</summary>
public class OrientedBoxProperties
{
    private static readonly Gen<OrientedBox> Boxes =
        Gen.Select(Gen.Double[-10, 10], Gen.Double[-10, 10], Gen.Double[0.5, 8], Gen.Double[0.5, 4], Gen.OneOf(Gen.Double[-3.2, 3.2], Gen.Const(0.0), Gen.Const(Math.PI / 2)))
            .Select((x, y, l, h, a) => new OrientedBox(new Point2D(x, y), l, h, a));

    private static readonly Gen<Point2D> Points = Gen.Select(Gen.Double[-15, 15], Gen.Double[-15, 15], (x, y) => new Point2D(x, y));

    [Fact]
    public void Overlaps_TwoBoxes_AgreesWithAnotherKernel() =>
        Gen.Select(Boxes, Boxes).Sample((a, b) =>
        {
            if (Polygon(a.Inflated(-1e-6)).Intersects(Polygon(b.Inflated(-1e-6))))
                Assert.True(a.Overlaps(b));
            if (!Polygon(a.Inflated(1e-6)).Intersects(Polygon(b.Inflated(1e-6))))
                Assert.False(a.Overlaps(b));
            Assert.Equal(a.Overlaps(b), b.Overlaps(a));
        }, iter: 3000);

    [Fact]
    public void Overlaps_WhereSamplesOfOneLieInTheOther_IsTrue() =>
        Gen.Select(Boxes, Boxes).Sample((a, b) =>
        {
            bool shared = Samples(a).Any(p => Holds(b, p, -1e-9));
            if (shared)
                Assert.True(a.Overlaps(b));
            if (!a.Overlaps(b))
                Assert.DoesNotContain(Samples(b), p => Holds(a, p, -1e-9));
        }, iter: 1000);

    [Fact]
    public void Meets_Segment_AgreesWithAnotherKernel() =>
        Gen.Select(Boxes, Points, Points).Sample((box, a, b) =>
        {
            if ((b - a).Length < 1e-6)
                return;
            LineString segment = new([At(a), At(b)]);
            if (Polygon(box.Inflated(-1e-6)).Intersects(segment))
                Assert.True(box.Meets(a, b) && box.Meets(b, a));
            if (!Polygon(box.Inflated(1e-6)).Intersects(segment))
                Assert.False(box.Meets(a, b) || box.Meets(b, a));
        }, iter: 3000);

    [Fact]
    public void Bounds_Box_HoldsItsCornersTightly() =>
        Boxes.Sample(box =>
        {
            Box2D corners = Box2D.Of(Corners(box));
            Assert.Equal(0, Math.Abs(corners.MinX - box.Bounds.MinX) + Math.Abs(corners.MaxX - box.Bounds.MaxX) + Math.Abs(corners.MinY - box.Bounds.MinY) + Math.Abs(corners.MaxY - box.Bounds.MaxY), 9);
        });

    private static bool Holds(in OrientedBox box, Point2D p, double margin)
    {
        Vector2D from = p - box.Centre, u = Vector2D.FromAngle(box.Angle);
        return Math.Abs(from.Dot(u)) < box.HalfLength + margin && Math.Abs(from.Dot(u.Left)) < box.HalfHeight + margin;
    }

    private static IEnumerable<Point2D> Samples(OrientedBox box)
    {
        Vector2D u = Vector2D.FromAngle(box.Angle);
        for (int i = -9; i <= 9; i++)
        {
            for (int j = -9; j <= 9; j++)
                yield return box.Centre + (u * (i * box.HalfLength / 10)) + (u.Left * (j * box.HalfHeight / 10));
        }
    }

    private static Point2D[] Corners(OrientedBox box)
    {
        Vector2D u = Vector2D.FromAngle(box.Angle) * box.HalfLength, v = Vector2D.FromAngle(box.Angle).Left * box.HalfHeight;
        return [box.Centre - u - v, box.Centre + u - v, box.Centre + u + v, box.Centre - u + v];
    }

    private static Polygon Polygon(OrientedBox box)
    {
        Point2D[] c = Corners(box);
        return new Polygon(new LinearRing([At(c[0]), At(c[1]), At(c[2]), At(c[3]), At(c[0])]));
    }

    private static Coordinate At(Point2D p) => new(p.X, p.Y);
}
