using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Lettering;

/// <summary>A letter of the table: its shared shape and the room it takes along the line, for a capital height of 1.</summary>
/// <param name="Left">Where its cell begins, pen width included.</param>
/// <param name="Right">Where its cell ends, pen width included.</param>
/// <param name="Lines">Box of the centre lines.</param>
internal sealed record Glyph(PlotGlyphShape Shape, double Left, double Right, Box2D Lines)
{
    public double Width => Right - Left;

    public static Glyph FromPath(string character, string path) => FromStrokes(character, GlyphPath.Parse(path));

    public static Glyph FromStrokes(string character, ImmutableArray<ImmutableArray<Edge>> strokes)
    {
        Box2D lines = BoxOf(strokes);
        double pen = LetteringMetrics.StrokeRatio / 2;
        return new Glyph(new PlotGlyphShape(character, strokes), lines.MinX - pen, lines.MaxX + pen, lines);
    }

    public static Box2D BoxOf(ImmutableArray<ImmutableArray<Edge>> strokes)
    {
        Box2D box = Box2D.Empty;
        foreach (ImmutableArray<Edge> stroke in strokes)
        {
            foreach (Edge edge in stroke)
                box = box.Union(edge.Box);
        }

        return box;
    }
}
