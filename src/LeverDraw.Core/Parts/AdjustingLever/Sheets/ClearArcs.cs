using System.Collections.Immutable;
using LeverDraw.Geometry;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>Where a radius may be pointed at: the middle of each arc, for an arrow near the end of a tangent arc could mean either; the longest arc first, for there an arrow is read best.</summary>
internal static class ClearArcs
{
    public static ImmutableArray<ArcEdge> Of(params ReadOnlySpan<Edge?> edges)
    {
        List<ArcEdge> arcs = [];
        foreach (Edge? edge in edges)
        {
            if (edge is ArcEdge { IsFullCircle: false } arc)
                arcs.Add(arc.Trimmed(0.25, 0.75));
            else if (edge is ArcEdge circle)
                arcs.Add(circle);
        }

        return [.. arcs.OrderByDescending(a => Math.Round(a.Length, 6))];
    }
}
