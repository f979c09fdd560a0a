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

    /// <summary>An arc without what lies near a level at which a straight edge or a dimension is seen to end on it: an arrow there could mean that one. The longer piece; the whole arc where that leaves next to nothing (without it the leader would cross the part to another).</summary>
    /// <param name="near">Millimetres up and down from the level.</param>
    public static ArcEdge Off(double level, ArcEdge arc, double near = 0.8)
    {
        const double Least = 0.2;
        const int Steps = 32;
        int[] tooNear = [.. Enumerable.Range(0, Steps + 1).Where(i => Math.Abs(arc.PointAt((double)i / Steps).Y - level) < near)];
        if (tooNear.Length == 0)
            return arc;
        double before = (tooNear[0] - 1.0) / Steps, after = 1 - ((tooNear[^1] + 1.0) / Steps);
        return Math.Max(before, after) < Least ? arc : before >= after ? arc.Trimmed(0, before) : arc.Trimmed(1 - after, 1);
    }

    private static double Share(ArcEdge arc) => Math.Min(MostOfArc, FromEnd / arc.Length);
}
