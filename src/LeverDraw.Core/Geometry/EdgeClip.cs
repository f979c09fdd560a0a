using System.Collections.Immutable;

namespace LeverDraw.Geometry;

/// <summary>The pieces of loose edges that lie inside a bound, ends and boundary included; each keeps its direction, and their order stays.</summary>
public static class EdgeClip
{
    public static ImmutableArray<Edge> ToCircle(IEnumerable<Edge> edges, Point2D centre, double radius) =>
        Inside(edges, [ArcEdge.FullCircle(centre, radius)], p => p.DistanceTo(centre) <= radius + Coincidence.Distance);

    public static ImmutableArray<Edge> ToBox(IEnumerable<Edge> edges, Box2D box)
    {
        if (box.IsEmpty)
            return [];
        Point2D a = new(box.MinX, box.MinY), b = new(box.MaxX, box.MinY), c = new(box.MaxX, box.MaxY), d = new(box.MinX, box.MaxY);
        Box2D closed = box.Inflated(Coincidence.Distance);
        return Inside(edges, [new LineEdge(a, b), new LineEdge(b, c), new LineEdge(c, d), new LineEdge(d, a)], closed.Contains);
    }

    private static ImmutableArray<Edge> Inside(IEnumerable<Edge> edges, ImmutableArray<Edge> bound, Func<Point2D, bool> holds)
    {
        List<Edge> pieces = [];
        List<double> cuts = [];
        foreach (Edge edge in edges)
        {
            cuts.Clear();
            foreach (Edge side in bound)
                EdgeCuts.AddFirst(EdgeIntersection.Between(edge, side), cuts);
            EdgeCuts.Split(edge, cuts, Coincidence.Distance, pieces);
        }

        return [.. pieces.Where(p => holds(p.PointAt(0.5)))];
    }
}
