using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Lettering;

/// <summary>The exact room that lettering covers, accents, descenders and the pen's width included. Paper millimetres.</summary>
public static class InkBox
{
    /// <summary>Along the text's own axes: x along the baseline from the anchor. Empty when nothing is drawn.</summary>
    public static Box2D Local(PlotText text)
    {
        Box2D box = Box2D.Empty;
        foreach (PlotGlyph glyph in text.Glyphs)
        {
            Box2D lines = LinesOf(glyph.Shape);
            box = box.Union(new Box2D(
                glyph.OffsetX + (lines.MinX * glyph.Scale),
                glyph.OffsetY + (lines.MinY * glyph.Scale),
                glyph.OffsetX + (lines.MaxX * glyph.Scale),
                glyph.OffsetY + (lines.MaxY * glyph.Scale)));
        }

        return box.IsEmpty ? box : box.Inflated(Pens.LetteringWidth(text.Height) / 2);
    }

    /// <summary>The four corners of <see cref="Local"/> on paper, counter-clockwise from its lower left in reading direction; none when nothing is drawn.</summary>
    public static ImmutableArray<Point2D> Corners(PlotText text)
    {
        Box2D box = Local(text);
        if (box.IsEmpty)
            return [];
        Transform2D onPaper = new(1, text.Angle, false, text.Anchor - Point2D.Origin);
        return
        [
            onPaper.Apply(new Point2D(box.MinX, box.MinY)),
            onPaper.Apply(new Point2D(box.MaxX, box.MinY)),
            onPaper.Apply(new Point2D(box.MaxX, box.MaxY)),
            onPaper.Apply(new Point2D(box.MinX, box.MaxY)),
        ];
    }

    /// <summary>The box along the paper's axes around <see cref="Corners"/>.</summary>
    public static Box2D OnPaper(PlotText text) => Box2D.Of(Corners(text));

    private static Box2D LinesOf(PlotGlyphShape shape) =>
        shape.Character.Length == 1 && GlyphTable.Instance.Find(shape.Character[0]) is { } glyph && ReferenceEquals(glyph.Shape, shape)
            ? glyph.Lines
            : Glyph.BoxOf(shape.Strokes);
}
