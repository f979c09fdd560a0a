using LeverDraw.Geometry;

namespace LeverDraw.Parts.Outlines;

/// <summary>Unbounded lines and circles with a direction of travel, as edges: only the carrier and its direction matter.</summary>
internal static class Carriers
{
    public static LineEdge Line(Point2D through, Vector2D along) => new(through, through + along);

    public static ArcEdge Circle(Point2D centre, double radius, bool counterClockwise) =>
        new(centre, radius, 0, counterClockwise ? 2 * Math.PI : -2 * Math.PI);

    /// <summary>The carrier moved to the left of its travel; null for a circle that would vanish.</summary>
    public static Edge? Beside(Edge carrier, double left)
    {
        if (carrier is ArcEdge arc)
        {
            double radius = arc.Radius - (Math.Sign(arc.Sweep) * left);
            return radius > 0 ? Circle(arc.Centre, radius, arc.Sweep > 0) : null;
        }

        Vector2D aside = carrier.TangentAt(0).Left * left;
        return new LineEdge(carrier.Start + aside, carrier.End + aside);
    }

    /// <summary>The carrier's point nearest to <paramref name="p"/>.</summary>
    public static Point2D Foot(Edge carrier, Point2D p)
    {
        if (carrier is ArcEdge arc)
            return arc.Centre + ((p - arc.Centre).Unit() * arc.Radius);
        Vector2D u = carrier.TangentAt(0);
        return carrier.Start + (u * u.Dot(p - carrier.Start));
    }

    /// <summary>Where two carriers meet, nearest to <paramref name="near"/>; null when they do not.</summary>
    public static Point2D? Meet(Edge a, Edge b, Point2D near)
    {
        CarrierHits hits = CarrierIntersection.Hits(a, b);
        return hits.Count switch
        {
            0 => null,
            1 => hits.First,
            _ => near.DistanceTo(hits.First) <= near.DistanceTo(hits.Second) ? hits.First : hits.Second,
        };
    }
}
