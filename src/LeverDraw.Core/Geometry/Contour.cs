using System.Collections.Immutable;

namespace LeverDraw.Geometry;

/// <summary>A closed outline of lines and arcs, each starting where the one before ended. Checked once, on making, so later code may trust it.</summary>
/// <remarks>Positive area when counter-clockwise. Self-crossing is not checked here: see <see cref="ContourSelfCheck"/>.</remarks>
public sealed class Contour
{
    private Contour(ImmutableArray<Edge> edges) => Edges = edges;

    public ImmutableArray<Edge> Edges { get; }

    public Box2D Box => Edges.Aggregate(Box2D.Empty, (box, edge) => box.Union(edge.Box));

    /// <exception cref="ArgumentException">No edges, an edge of no length, or a gap larger than <see cref="Coincidence.Distance"/> times ten.</exception>
    public static Contour Of(IEnumerable<Edge> edges)
    {
        ImmutableArray<Edge> all = [.. edges];
        if (all.IsEmpty)
            throw new ArgumentException("A contour needs at least one edge.", nameof(edges));
        for (int i = 0; i < all.Length; i++)
        {
            if (all[i].Length <= Coincidence.Distance)
                throw new ArgumentException(FormattableString.Invariant($"Edge {i} has no length."), nameof(edges));
            Edge next = all[(i + 1) % all.Length];
            if (all[i].End.DistanceTo(next.Start) > 10 * Coincidence.Distance)
                throw new ArgumentException(FormattableString.Invariant($"Edge {i} ends {all[i].End.DistanceTo(next.Start)} mm from where the next starts."), nameof(edges));
        }

        return new Contour(all);
    }

    public static Contour Circle(Point2D centre, double radius) => new([ArcEdge.FullCircle(centre, radius)]);

    public Contour Reversed() => new([.. Edges.Reverse().Select(e => e.Reversed())]);

    public Contour Transformed(Transform2D transform) => new([.. Edges.Select(e => e.Transformed(transform))]);

    /// <summary>The same outline begun at another edge.</summary>
    public Contour StartingAt(int edge) => new([.. Edges[edge..], .. Edges[..edge]]);
}
