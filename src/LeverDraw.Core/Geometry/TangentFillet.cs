using System.Collections.Immutable;

namespace LeverDraw.Geometry;

/// <summary>A circle tangent to the carriers of two edges: its centre, and on each carrier the tangent point and its parameter.</summary>
public readonly record struct TangentCircle(Point2D Centre, double Radius, Point2D OnA, Point2D OnB, double Ta, double Tb);

/// <summary>Fillets of a given radius between any two edges.</summary>
/// <remarks>Construction: the centre lies on a parallel of each carrier at the radius, so it is where two parallels cross (for a circle: the concentric circles of radius R + r and |R − r|).</remarks>
public static class TangentFillet
{
    /// <summary>Every circle of the radius tangent to both carriers, up to eight, in a fixed order. Empty when the carriers are one and the same.</summary>
    public static ImmutableArray<TangentCircle> Candidates(Edge a, Edge b, double radius)
    {
        if (!(radius > 0) || CarrierIntersection.Hits(a, b).Same)
            return [];
        ImmutableArray<TangentCircle>.Builder found = ImmutableArray.CreateBuilder<TangentCircle>();
        foreach (CarrierParallel pa in CarrierParallel.Of(a, radius))
        {
            foreach (CarrierParallel pb in CarrierParallel.Of(b, radius))
            {
                CarrierHits hits = CarrierIntersection.Hits(pa.Locus, pb.Locus);
                for (int i = 0; i < hits.Count; i++)
                {
                    Point2D onA = pa.TangentPoint(hits[i]), onB = pb.TangentPoint(hits[i]);
                    found.Add(new TangentCircle(hits[i], radius, onA, onB, EdgeProjection.ParameterOf(a, onA), EdgeProjection.ParameterOf(b, onB)));
                }
            }
        }

        return found.DrainToImmutable();
    }

    /// <summary>Rounds the corner where <paramref name="incoming"/> ends and <paramref name="outgoing"/> starts, to the inside of the turn.</summary>
    public static FilletResult AtCorner(Edge incoming, Edge outgoing, double radius)
    {
        if (!(radius > Coincidence.Distance))
            return new NoFillet(FilletFault.RadiusNotPositive);
        if (incoming.End.DistanceTo(outgoing.Start) > 10 * Coincidence.Distance)
            return new NoFillet(FilletFault.EdgesDoNotMeet);
        double turn = JointTurn.Between(incoming, outgoing);
        if (Math.Abs(turn) <= Coincidence.Angle)
            return new NoFillet(FilletFault.AlreadyTangent);

        CornerArc? best = null;
        FilletFault fault = FilletFault.NoTangentCircle;
        double nearestMiss = double.PositiveInfinity;
        foreach (TangentCircle circle in Candidates(incoming, outgoing, radius))
        {
            if (CornerArc.From(circle, incoming, outgoing, turn) is not { } corner)
                continue;
            if (corner.Fault is { } missed)
            {
                // Of several misses, the one nearest to the corner is the one the user meant.
                if (corner.Lost < nearestMiss)
                    (fault, nearestMiss) = (missed, corner.Lost);
                continue;
            }

            if (best is null || corner.Lost < best.Lost)
                best = corner;
        }

        return best is null
            ? new NoFillet(fault)
            : new Filleted(
                CutEnd(incoming, best.Circle.Ta, best.Circle.OnA),
                best.Arc,
                CutEnd(outgoing.Reversed(), 1 - best.Circle.Tb, best.Circle.OnB).Reversed());
    }

    private static Edge CutEnd(Edge edge, double t, Point2D at) => edge is LineEdge line ? new LineEdge(line.From, at) : edge.Trimmed(0, t);
}
