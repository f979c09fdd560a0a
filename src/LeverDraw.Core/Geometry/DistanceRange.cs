namespace LeverDraw.Geometry;

/// <summary>Least and greatest distances between a fixed thing and the points of an edge.</summary>
internal static class DistanceRange
{
    /// <summary>Largest sweep for which the tangents at an arc's ends bound it closely.</summary>
    private const double MostForHull = 2;

    /// <summary>Exact: the nearest point, and the farther end or, on an arc, the point straight behind its centre.</summary>
    public static Interval ToPoint(Edge edge, Point2D p)
    {
        double far = Math.Max(p.DistanceTo(edge.Start), p.DistanceTo(edge.End));
        if (edge is ArcEdge arc)
        {
            Vector2D away = arc.Centre - p;
            if (away.Length == 0 || arc.ContainsAngle(away.Angle))
                far = Math.Max(far, away.Length + arc.Radius);
        }

        return new Interval(EdgeProjection.Nearest(edge, p).Distance, far);
    }

    /// <summary>A bound from above on the distance from any point of a piece to an edge; for short pieces it closes in on the greatest.</summary>
    public static double MostTo(Edge piece, Edge target)
    {
        double bound = Math.Min(ToPoint(piece, target.Start).To, ToPoint(piece, target.End).To);
        return target is ArcEdge arc ? Math.Min(bound, MostToArc(piece, arc)) : Math.Min(bound, MostToLine(piece, target));
    }

    /// <summary>The distance to a straight piece is a convex function, so it is greatest at a corner of any hull: the chord's ends and where the end tangents meet.</summary>
    private static double MostToLine(Edge piece, Edge line)
    {
        double ends = Math.Max(EdgeProjection.Nearest(line, piece.Start).Distance, EdgeProjection.Nearest(line, piece.End).Distance);
        if (piece is not ArcEdge arc)
            return ends;
        if (Math.Abs(arc.Sweep) > MostForHull)
            return double.PositiveInfinity;
        Point2D corner = arc.Centre + (Vector2D.FromAngle(arc.StartAngle + (arc.Sweep / 2)) * (arc.Radius / Math.Cos(arc.Sweep / 2)));
        return Math.Max(ends, EdgeProjection.Nearest(line, corner).Distance);
    }

    /// <summary>Where the whole piece is seen from the arc's centre within the arc, the distance is that between two radii.</summary>
    private static double MostToArc(Edge piece, ArcEdge arc)
    {
        Interval radii = ToPoint(piece, arc.Centre);
        if (!arc.IsFullCircle)
        {
            // Seen from the centre, a step along the piece turns by no more than the step over the distance.
            double turn = radii.From > 0 ? piece.Length / 2 / radii.From : double.PositiveInfinity;
            double at = arc.ParameterOfAngle((piece.PointAt(0.5) - arc.Centre).Angle) * Math.Abs(arc.Sweep);
            if (at - turn < -Coincidence.Angle || at + turn > Math.Abs(arc.Sweep) + Coincidence.Angle)
                return double.PositiveInfinity;
        }

        return Math.Max(Math.Abs(radii.From - arc.Radius), Math.Abs(radii.To - arc.Radius));
    }
}
