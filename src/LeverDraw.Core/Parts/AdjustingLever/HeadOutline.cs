using System.Collections.Immutable;
using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>The head seen along the pin, before arms and tongue join it: a circle, or a block with rounded corners. Convex, counter-clockwise from its lower end.</summary>
internal sealed class HeadOutline
{
    private readonly ImmutableArray<Edge> _edges;

    private HeadOutline(ImmutableArray<Edge> edges) => _edges = edges;

    public static HeadOutline Of(LeverMeasures m)
    {
        if (m.RoundHead)
            return new HeadOutline([new ArcEdge(Point2D.Origin, m.HeadDepth / 2, -Math.PI / 2, 2 * Math.PI)]);

        double r = m.HeadCornerRadius, n = m.HeadDepth / 2, z = m.HeadHeight / 2, flat = n - r, tall = z - r, quarter = Math.PI / 2;
        Edge[] all =
        [
            new LineEdge(new(0, -z), new(flat, -z)), new ArcEdge(new(flat, -tall), r, -quarter, quarter),
            new LineEdge(new(n, -tall), new(n, tall)), new ArcEdge(new(flat, tall), r, 0, quarter),
            new LineEdge(new(flat, z), new(-flat, z)), new ArcEdge(new(-flat, tall), r, quarter, quarter),
            new LineEdge(new(-n, tall), new(-n, -tall)), new ArcEdge(new(-flat, -tall), r, 2 * quarter, quarter),
            new LineEdge(new(-flat, -z), new(0, -z)),
        ];
        return new HeadOutline([.. all.Where(e => e.Length > Coincidence.Distance)]);
    }

    /// <summary>The fillet between a face and the head that lies farthest out along <paramref name="outward"/>; null when the face misses the head.</summary>
    /// <param name="toHead">True when the outline runs along the face and then the head.</param>
    public HeadBlend? BlendWith(Edge face, double radius, Vector2D outward, bool toHead)
    {
        HeadBlend? best = null;
        if (Carriers.Beside(face, -radius) is not { } faceSide)
            return null;
        for (int i = 0; i < _edges.Length; i++)
        {
            if (Carriers.Beside(_edges[i], -radius) is not { } headSide)
                continue;
            CarrierHits hits = CarrierIntersection.Hits(faceSide, headSide);
            for (int k = 0; k < hits.Count; k++)
            {
                Point2D onHead = Carriers.Foot(_edges[i], hits[k]), onFace = Carriers.Foot(face, hits[k]);
                double t = EdgeProjection.ParameterOf(_edges[i], onHead);
                double slack = Coincidence.Distance / _edges[i].Length;
                if (t < -slack || t > 1 + slack || (best is { } b && outward.Dot(hits[k] - b.Blend.Centre) <= 0))
                    continue;
                Blend blend = toHead ? new(hits[k], radius, onFace, onHead, true) : new(hits[k], radius, onHead, onFace, true);
                best = new HeadBlend(blend, i, Math.Clamp(t, 0, 1));
            }
        }

        return best;
    }

    /// <summary>Follows the head counter-clockwise between two fillets; false, and nothing added, when they overlap.</summary>
    public bool Follow(OutlinePath path, string name, HeadBlend from, HeadBlend to)
    {
        if (from.Edge > to.Edge || (from.Edge == to.Edge && (to.T - from.T) * _edges[to.Edge].Length <= Coincidence.Distance))
            return false;
        for (int i = from.Edge; i < to.Edge; i++)
            path.Along(name, _edges[i], _edges[i].End);
        path.Along(name, _edges[to.Edge], to.Blend.From);
        return true;
    }
}

/// <summary>A fillet at the head, with the place on the head's outline where it touches.</summary>
internal readonly record struct HeadBlend(Blend Blend, int Edge, double T);
