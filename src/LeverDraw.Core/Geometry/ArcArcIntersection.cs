namespace LeverDraw.Geometry;

/// <summary>Two circles.</summary>
internal static class ArcArcIntersection
{
    /// <summary>The full circles. Tangent, inside or outside, when the centre distance fits within <see cref="Coincidence.Distance"/>.</summary>
    public static CarrierHits Carriers(ArcEdge a, ArcEdge b)
    {
        // The larger one first, so that swapping the arguments gives the same points.
        if (b.Radius > a.Radius)
            (a, b) = (b, a);
        Vector2D between = b.Centre - a.Centre;
        double distance = between.Length;
        double excess = a.Radius - b.Radius;
        if (distance <= Coincidence.Distance && excess <= Coincidence.Distance)
            return CarrierHits.Everything;
        double apart = distance - (a.Radius + b.Radius);
        double within = excess - distance;
        if (apart > Coincidence.Distance || within > Coincidence.Distance || distance == 0)
            return CarrierHits.None;
        Vector2D u = between.Unit();
        if (apart >= -Coincidence.Distance)
            return CarrierHits.TangentAt(a.Centre + (u * (a.Radius + (apart / 2))));
        if (within >= -Coincidence.Distance)
            return CarrierHits.TangentAt(a.Centre + (u * (a.Radius - (within / 2))));
        double along = (distance + (excess * (a.Radius + b.Radius) / distance)) / 2;
        // Heron's product in a form without cancelling: 4·area of the triangle of centres and crossing.
        double product = -apart * -within * (distance + excess) * (distance + a.Radius + b.Radius);
        double half = Math.Sqrt(product) / (2 * distance);
        Point2D foot = a.Centre + (u * along);
        return CarrierHits.CrossAt(foot - (u.Left * half), foot + (u.Left * half));
    }
}
