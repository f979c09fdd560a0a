namespace LeverDraw.Geometry;

/// <summary>A tangent circle looked at as the rounding of one corner.</summary>
/// <param name="Lost">Length the two edges lose, millimetres.</param>
/// <param name="Fault">Set when the tangent points don't lie on the edges.</param>
internal sealed record CornerArc(TangentCircle Circle, ArcEdge Arc, double Lost, FilletFault? Fault)
{
    /// <summary>Null when travel along the circle wouldn't go on in the direction of both edges, or would go round the wrong way.</summary>
    public static CornerArc? From(TangentCircle circle, Edge incoming, Edge outgoing, double turn)
    {
        Vector2D into = DirectionOf(incoming, circle.OnA, circle.Ta);
        Vector2D outOf = DirectionOf(outgoing, circle.OnB, circle.Tb);
        double side = Math.Sign(turn);
        if (side * into.Cross(circle.Centre - circle.OnA) <= 0 || side * outOf.Cross(circle.Centre - circle.OnB) <= 0)
            return null;

        // The arc must turn exactly as much as the corner and the cut-off pieces did together: a whole turn more or less is another circle's job.
        double lostTurn = SweepOf(incoming) * (1 - circle.Ta) + (SweepOf(outgoing) * circle.Tb);
        double sweep = turn + lostTurn;
        double start = (circle.OnA - circle.Centre).Angle;
        double measured = (circle.OnB - circle.Centre).Angle - start;
        double off = (sweep - measured) / (2 * Math.PI);
        sweep = measured + (2 * Math.PI * Math.Round(off));
        if (side * sweep <= 0 || Math.Abs(sweep) >= 2 * Math.PI)
            return null;

        double lostIn = (1 - circle.Ta) * incoming.Length, lostOut = circle.Tb * outgoing.Length;
        // A tangent point beyond the corner itself rounds the carriers' other crossing.
        if (lostIn < -Coincidence.Distance || lostOut < -Coincidence.Distance)
            return null;
        bool inShort = incoming.Length - lostIn <= Coincidence.Distance;
        bool outShort = outgoing.Length - lostOut <= Coincidence.Distance;
        FilletFault? fault = (inShort, outShort) switch
        {
            (true, true) => FilletFault.BothTooShort,
            (true, false) => FilletFault.IncomingTooShort,
            (false, true) => FilletFault.OutgoingTooShort,
            _ => null,
        };
        return new CornerArc(circle, new ArcEdge(circle.Centre, circle.Radius, start, sweep), lostIn + lostOut, fault);
    }

    private static double SweepOf(Edge edge) => edge is ArcEdge arc ? arc.Sweep : 0;

    private static Vector2D DirectionOf(Edge edge, Point2D p, double t)
    {
        if (edge is not ArcEdge arc)
            return edge.TangentAt(t);
        Vector2D out0 = (p - arc.Centre).Unit();
        return arc.Sweep >= 0 ? out0.Left : -out0.Left;
    }
}
