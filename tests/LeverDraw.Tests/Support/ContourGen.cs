using CsCheck;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Support;

/// <summary>Random sound outlines of lines and arcs, counter-clockwise, some 10 to 60 mm across, turned and moved at random.</summary>
public static class ContourGen
{
    /// <summary>A turn and a move, no scale and no mirror.</summary>
    public static Gen<Transform2D> RigidMotion { get; } =
        Gen.Select(Gen.Double[-4, 4], Gen.Double[-50, 50], Gen.Double[-50, 50], (turn, x, y) => Transform2D.Turn(turn).Then(Transform2D.Move(x, y)));

    /// <summary>Star-shaped polygons, three to nine corners, about half of them rounded, convex and concave.</summary>
    public static Gen<Contour> RoundedPolygon { get; } = Polygon(5, 25);

    /// <summary>Convex rounded polygons: corners on one circle.</summary>
    public static Gen<Contour> ConvexPolygon { get; } = Polygon(20, 20);

    /// <summary>Two parallel lines and two half circles.</summary>
    public static Gen<Contour> Stadium { get; } = Gen.Select(Gen.Double[3, 10], Gen.Double[1, 30], (radius, length) => Contour.Of([
        new LineEdge(new Point2D(0, -radius), new Point2D(length, -radius)),
        new ArcEdge(new Point2D(length, 0), radius, -Math.PI / 2, Math.PI),
        new LineEdge(new Point2D(length, radius), new Point2D(0, radius)),
        new ArcEdge(Point2D.Origin, radius, Math.PI / 2, Math.PI),
    ]));

    /// <summary>A circle with a round bite out of its right side.</summary>
    public static Gen<Contour> NotchedCircle { get; } = Gen.Select(Gen.Double[5, 20], Gen.Double[0.2, 0.8], Gen.Double[0.1, 0.6], (radius, halfAngle, bite) =>
    {
        Point2D lower = new(radius * Math.Cos(halfAngle), -radius * Math.Sin(halfAngle)), upper = new(lower.X, -lower.Y);
        // The bite's centre outside the chord, so that it is less than a half circle.
        Point2D centre = new(lower.X + (bite * radius), 0);
        return Contour.Of([
            ArcEdge.Between(Point2D.Origin, upper, lower, true),
            ArcEdge.Between(centre, lower, upper, false),
        ]);
    });

    public static Gen<Contour> Circle { get; } = Gen.Double[2, 20].Select(r => Contour.Circle(Point2D.Origin, r));

    /// <summary>Any of the above.</summary>
    public static Gen<Contour> Any { get; } =
        Moved(Gen.OneOf(RoundedPolygon, RoundedPolygon, ConvexPolygon, Stadium, NotchedCircle, Circle));

    public static Gen<Contour> Convex { get; } = Moved(Gen.OneOf(ConvexPolygon, Stadium, Circle));

    private static Gen<Contour> Moved(Gen<Contour> of) => Gen.Select(of, RigidMotion, (c, t) => c.Transformed(t));

    private static Gen<Contour> Polygon(double least, double most) =>
        Gen.Select(Gen.Double[-0.3, 0.3], Gen.Double[0, 1], Gen.Double[-1, 1])
            .Array[3, 9]
            .Select(corners => Rounded(corners.Select((c, i) => (
                Corner: Point2D.Origin + (Vector2D.FromAngle(2 * Math.PI * (i + c.Item1) / corners.Length) * (least + ((most - least) * c.Item2))),
                Round: c.Item3)).ToArray()));

    // Each corner has the halves of its two sides to itself; Round is the part of that room a fillet takes, none when negative.
    private static Contour Rounded((Point2D Corner, double Round)[] corners)
    {
        List<Edge> edges = [];
        Point2D at = default;
        for (int i = 0; i < corners.Length; i++)
        {
            Point2D before = corners[(i + corners.Length - 1) % corners.Length].Corner, here = corners[i].Corner, after = corners[(i + 1) % corners.Length].Corner;
            LineEdge into = new(Point2D.Lerp(before, here, 0.5), here), outOf = new(here, Point2D.Lerp(here, after, 0.5));
            if (i == 0)
                at = into.From;
            double half = Math.Abs(Math.Atan2(into.TangentAt(0).Cross(outOf.TangentAt(0)), into.TangentAt(0).Dot(outOf.TangentAt(0)))) / 2;
            double radius = 0.9 * corners[i].Round * Math.Min(into.Length, outOf.Length) / Math.Tan(half);
            if (radius > 0.05 && radius < 1000 && TangentFillet.AtCorner(into, outOf, radius) is Filleted fillet)
            {
                edges.Add(new LineEdge(at, fillet.TrimmedIn.End));
                edges.Add(fillet.Arc);
                at = fillet.TrimmedOut.Start;
            }
            else
            {
                edges.Add(new LineEdge(at, here));
                at = here;
            }
        }

        edges.Add(new LineEdge(at, Point2D.Lerp(corners[^1].Corner, corners[0].Corner, 0.5)));
        return Contour.Of(edges);
    }
}
