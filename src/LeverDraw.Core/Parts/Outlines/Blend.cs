using LeverDraw.Geometry;

namespace LeverDraw.Parts.Outlines;

/// <summary>An arc tangent to two carriers that follow each other round an outline whose material lies to the left.</summary>
/// <param name="Concave">True for a fillet (material outside the arc's circle), false for a round.</param>
internal readonly record struct Blend(Point2D Centre, double Radius, Point2D From, Point2D To, bool Concave)
{
    /// <summary>The blend whose centre is nearest to <paramref name="near"/>, or null when no circle of the radius touches both on the right side.</summary>
    /// <remarks>A fillet's centre lies at the radius to the right of both carriers, a round's to the left.</remarks>
    public static Blend? Between(Edge first, Edge second, double radius, bool concave, Point2D near)
    {
        double aside = concave ? -radius : radius;
        if (Carriers.Beside(first, aside) is not { } a || Carriers.Beside(second, aside) is not { } b)
            return null;
        CarrierHits hits = CarrierIntersection.Hits(a, b);
        if (hits.Count == 0)
            return null;
        Point2D centre = hits.Count == 1 || near.DistanceTo(hits.First) <= near.DistanceTo(hits.Second) ? hits.First : hits.Second;
        return new Blend(centre, radius, Carriers.Foot(first, centre), Carriers.Foot(second, centre), concave);
    }
}
