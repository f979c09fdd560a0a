namespace LeverDraw.Geometry;

/// <summary>A straight line and a circle.</summary>
internal static class LineArcIntersection
{
    /// <summary>The unbounded line and the full circle. Tangent when the line's distance from the centre equals the radius within <see cref="Coincidence.Distance"/>.</summary>
    public static CarrierHits Carriers(LineEdge line, ArcEdge arc)
    {
        Vector2D u = line.TangentAt(0);
        Vector2D toCentre = arc.Centre - line.From;
        double side = u.Cross(toCentre);
        Point2D foot = arc.Centre - (u.Left * side);
        double depth = arc.Radius - Math.Abs(side);
        if (depth < -Coincidence.Distance)
            return CarrierHits.None;
        if (depth <= Coincidence.Distance)
            return CarrierHits.TangentAt(foot);
        // (R − d)(R + d) keeps the digits that R² − d² loses when the line is nearly tangent.
        double half = Math.Sqrt(depth * (arc.Radius + Math.Abs(side)));
        return CarrierHits.CrossAt(foot - (u * half), foot + (u * half));
    }
}
