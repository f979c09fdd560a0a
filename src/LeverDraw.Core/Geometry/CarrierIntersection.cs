using System.Collections.Immutable;

namespace LeverDraw.Geometry;

/// <summary>Where the unbounded carriers of two edges (infinite lines, full circles) meet.</summary>
public static class CarrierIntersection
{
    /// <summary>Parameters may lie outside 0…1. <see cref="Overlap"/>, without pieces, says both edges lie on one carrier.</summary>
    public static IntersectionResult Between(Edge a, Edge b)
    {
        CarrierHits hits = Hits(a, b);
        if (hits.Same)
            return new Overlap([], []);
        ImmutableArray<Meeting>.Builder found = ImmutableArray.CreateBuilder<Meeting>(hits.Count);
        for (int i = 0; i < hits.Count; i++)
            found.Add(new Meeting(hits[i], EdgeProjection.ParameterOf(a, hits[i]), EdgeProjection.ParameterOf(b, hits[i]), !hits.Tangent));
        found.Sort((p, q) => p.Ta.CompareTo(q.Ta));
        return IntersectionResult.Of(found.DrainToImmutable());
    }

    internal static CarrierHits Hits(Edge a, Edge b) => (a, b) switch
    {
        (LineEdge p, LineEdge q) => LineLineIntersection.Carriers(p, q),
        (LineEdge p, ArcEdge q) => LineArcIntersection.Carriers(p, q),
        (ArcEdge p, LineEdge q) => LineArcIntersection.Carriers(q, p),
        (ArcEdge p, ArcEdge q) => ArcArcIntersection.Carriers(p, q),
        _ => throw new NotSupportedException("An edge is a line or an arc."),
    };
}
