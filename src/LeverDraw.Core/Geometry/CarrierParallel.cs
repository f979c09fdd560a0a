namespace LeverDraw.Geometry;

/// <summary>One curve of centres of the circles of a radius tangent to a carrier, and how a centre leads back to its tangent point.</summary>
/// <param name="Inward">For a circle inside the rolling one: the tangent point lies on the far side of its centre.</param>
internal readonly record struct CarrierParallel(Edge Carrier, Edge Locus, bool Inward)
{
    public static CarrierParallel[] Of(Edge carrier, double radius)
    {
        if (carrier is ArcEdge arc)
        {
            CarrierParallel outside = new(carrier, ArcEdge.FullCircle(arc.Centre, arc.Radius + radius), false);
            double inner = Math.Abs(arc.Radius - radius);
            // A circle of the same radius rolling inside is the carrier itself, not a fillet.
            return inner <= Coincidence.Distance
                ? [outside]
                : [outside, new(carrier, ArcEdge.FullCircle(arc.Centre, inner), radius > arc.Radius)];
        }

        Vector2D aside = carrier.TangentAt(0).Left * radius;
        return
        [
            new(carrier, new LineEdge(carrier.Start + aside, carrier.End + aside), false),
            new(carrier, new LineEdge(carrier.Start - aside, carrier.End - aside), false),
        ];
    }

    public Point2D TangentPoint(Point2D centre)
    {
        if (Carrier is ArcEdge arc)
        {
            Vector2D out0 = (centre - arc.Centre).Unit();
            return arc.Centre + (out0 * (Inward ? -arc.Radius : arc.Radius));
        }

        Vector2D u = Carrier.TangentAt(0);
        return centre - (u.Left * u.Cross(centre - Carrier.Start));
    }
}
