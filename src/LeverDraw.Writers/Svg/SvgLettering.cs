using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Writers.Svg;

/// <summary>Lines of lettering, each as one path with its letters put on their baseline. Within a stroke the path goes by steps: a letter that stood on the page before, in the same height and direction, is copied.</summary>
/// <remarks>A step is the difference of two rounded places in the letter, so that rounding does not add up along a stroke: every point is true to 0.00015 mm.</remarks>
internal sealed class SvgLettering(Utf8Page page, double sheetHeight)
{
    private readonly Dictionary<(PlotGlyphShape Shape, double Scale, double Angle), (int First, int Count)> known = new(new SameShape());
    private readonly List<GlyphStroke> strokes = [];

    public void Write(PlotText text)
    {
        Vector2D along = Vector2D.FromAngle(text.Angle);
        foreach (PlotGlyph glyph in text.Glyphs)
        {
            Point2D foot = text.Anchor + (along * glyph.OffsetX) + (along.Left * glyph.OffsetY);
            if (!known.TryGetValue((glyph.Shape, glyph.Scale, text.Angle), out (int First, int Count) written))
            {
                First(glyph, text.Angle, foot);
                continue;
            }

            for (int i = written.First; i < written.First + written.Count; i++)
            {
                MoveTo(foot + strokes[i].Start);
                page.Again(strokes[i].From, strokes[i].Length);
            }
        }
    }

    private void First(PlotGlyph glyph, double angle, Point2D foot)
    {
        known.Add((glyph.Shape, glyph.Scale, angle), (strokes.Count, glyph.Shape.Strokes.Length));
        var place = new Transform2D(glyph.Scale, angle, false, default);
        foreach (var stroke in glyph.Shape.Strokes)
        {
            Point2D start = place.Apply(stroke[0].Start);
            MoveTo(foot + (start - Point2D.Origin));
            int from = page.Length;
            var steps = new SvgSteps(page, start);
            foreach (Edge edge in stroke)
                steps.Along(edge.Transformed(place));
            strokes.Add(new GlyphStroke(start - Point2D.Origin, from, page.Length - from));
        }
    }

    private void MoveTo(Point2D p)
    {
        page.Raw((byte)'M');
        page.Paper(p.X);
        page.Raw((byte)' ');
        page.Paper(sheetHeight - p.Y);
    }

    /// <summary>Where a stroke starts, from the letter's foot, and where on the page its steps stand.</summary>
    private readonly record struct GlyphStroke(Vector2D Start, int From, int Length);

    /// <summary>Letters of the table are shared: one object each.</summary>
    private sealed class SameShape : IEqualityComparer<(PlotGlyphShape Shape, double Scale, double Angle)>
    {
        public bool Equals((PlotGlyphShape Shape, double Scale, double Angle) a, (PlotGlyphShape Shape, double Scale, double Angle) b) =>
            ReferenceEquals(a.Shape, b.Shape) && a.Scale == b.Scale && a.Angle == b.Angle;

        public int GetHashCode([DisallowNull] (PlotGlyphShape Shape, double Scale, double Angle) key) =>
            HashCode.Combine(RuntimeHelpers.GetHashCode(key.Shape), key.Scale, key.Angle);
    }
}
