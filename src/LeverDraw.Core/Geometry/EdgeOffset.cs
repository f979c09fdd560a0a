namespace LeverDraw.Geometry;

/// <summary>An edge moved parallel to itself: <see cref="Parallel"/> or <see cref="ArcCollapsed"/>.</summary>
public abstract record EdgeOffsetResult
{
    private protected EdgeOffsetResult()
    {
    }
}

public sealed record Parallel(Edge Edge) : EdgeOffsetResult;

/// <summary>The distance reaches the arc's centre or goes beyond it, so no parallel arc is left.</summary>
public sealed record ArcCollapsed(Point2D Centre) : EdgeOffsetResult;

/// <summary>Parallels of single edges.</summary>
public static class EdgeOffset
{
    /// <summary>The edge moved <paramref name="distance"/> millimetres to the left of travel (to the right when negative), same direction and same sweep.</summary>
    public static EdgeOffsetResult Left(Edge edge, double distance)
    {
        if (edge is ArcEdge arc)
        {
            // The centre lies to the left of a counter-clockwise arc.
            double radius = arc.Radius - (Math.Sign(arc.Sweep) * distance);
            return radius <= Coincidence.Distance ? new ArcCollapsed(arc.Centre) : new Parallel(arc with { Radius = radius });
        }

        Vector2D aside = edge.TangentAt(0).Left * distance;
        return new Parallel(new LineEdge(edge.Start + aside, edge.End + aside));
    }
}
