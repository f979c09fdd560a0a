using System.Collections.Immutable;
using LeverDraw.Geometry;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>Where a radius may be pointed at: the middle of each arc, for an arrow near the end of a tangent arc could mean either; the longest arc first, for there an arrow is read best.</summary>
internal static class ClearArcs
{
    /// <summary>What is left out at each end: this length, millimetres, but never more than a quarter of the arc (own rule).</summary>
    private const double FromEnd = 0.8, MostOfArc = 0.25;

    public static ImmutableArray<ArcEdge> Of(params ReadOnlySpan<Edge?> edges)
    {
        List<ArcEdge> arcs = [];
        foreach (Edge? edge in edges)
        {
            if (edge is ArcEdge { IsFullCircle: false } arc)
                arcs.Add(arc.Trimmed(Share(arc), 1 - Share(arc)));
            else if (edge is ArcEdge circle)
                arcs.Add(circle);
        }

        return [.. arcs.OrderByDescending(a => Math.Round(a.Length, 6))];
    }

    private static double Share(ArcEdge arc) => Math.Min(MostOfArc, FromEnd / arc.Length);
}
