namespace LeverDraw.Geometry;

/// <summary>The point of an edge nearest to some other point: its parameter, place and distance in millimetres.</summary>
public readonly record struct NearestOnEdge(double T, Point2D Point, double Distance);

/// <summary>Nearest points and parameters on single edges.</summary>
public static class EdgeProjection
{
    /// <summary>The nearest point of the edge, ends included. Every point of an arc is as near to its centre; the arc's start is then given.</summary>
    public static NearestOnEdge Nearest(Edge edge, Point2D p)
    {
        double t = ParameterOf(edge, p);
        if (edge is ArcEdge arc)
        {
            Vector2D out0 = p - arc.Centre;
            double reach = out0.Length;
            if (reach > 0 && t >= 0 && t <= 1)
                return new NearestOnEdge(t, arc.Centre + (out0 * (arc.Radius / reach)), Math.Abs(reach - arc.Radius));
            Point2D start = arc.Start, end = arc.End;
            double toStart = p.DistanceTo(start), toEnd = p.DistanceTo(end);
            return toStart <= toEnd ? new NearestOnEdge(0, start, toStart) : new NearestOnEdge(1, end, toEnd);
        }

        t = Math.Clamp(t, 0, 1);
        Point2D foot = t == 0 ? edge.Start : t == 1 ? edge.End : edge.PointAt(t);
        return new NearestOnEdge(t, foot, p.DistanceTo(foot));
    }

    /// <summary>The parameter of the point's projection on the edge's carrier: square to a line (any value), seen from the centre of an arc (nearest turn).</summary>
    public static double ParameterOf(Edge edge, Point2D p)
    {
        if (edge is ArcEdge arc)
            return arc.ParameterOfAngle((p - arc.Centre).Angle);
        Vector2D along = edge.End - edge.Start;
        double length = along.Length;
        return length == 0 ? 0 : (p - edge.Start).Dot(along) / length / length;
    }

    internal static bool IsOn(Edge edge, Point2D p) => Nearest(edge, p).Distance <= Coincidence.Distance;
}
