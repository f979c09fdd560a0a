using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Symbols;

/// <summary>Picks measured pieces out of a symbol's ink.</summary>
internal static class SymbolInk
{
    public static LineEdge[] Lines(this IEnumerable<PlotItem> ink) => [.. ink.OfType<PlotStroke>().Select(s => s.Edge).OfType<LineEdge>()];

    public static ArcEdge[] Arcs(this IEnumerable<PlotItem> ink) => [.. ink.OfType<PlotStroke>().Select(s => s.Edge).OfType<ArcEdge>()];

    public static string[] Texts(this IEnumerable<PlotItem> ink) => [.. ink.OfType<PlotText>().Select(t => t.Text)];

    public static Box2D StrokeBox(this IEnumerable<PlotItem> ink) => ink.OfType<PlotStroke>().Aggregate(Box2D.Empty, (b, s) => b.Union(s.Edge.Box));
}
