using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Writers.Dxf;

/// <summary>Drafting signs that a reader's font may lack: drawn with the pen, so that no tolerance frame shows a blank or a question mark. Only signs at the start of a line of lettering occur.</summary>
internal static class DxfSigns
{
    /// <summary>Signs of geometrical tolerances, of a taper and of an arc's length.</summary>
    private const string Drawn = "\u23E4\u23E5\u25CB\u232D\u2313\u22A5\u27C2\u2225\u2220\u2316\u25CE\u232F\u2197\u2330\u25B7\u25C1\u2312";

    public static bool IsDrawn(char c) => Drawn.Contains(c, StringComparison.Ordinal);

    /// <summary>The pen strokes of the leading signs, on paper.</summary>
    public static IEnumerable<Edge> Strokes(PlotText text)
    {
        Transform2D line = new(1, text.Angle, false, text.Anchor - Point2D.Origin);
        foreach (PlotGlyph sign in Leading(text))
        {
            Transform2D place = new Transform2D(sign.Scale, 0, false, new Vector2D(sign.OffsetX, sign.OffsetY)).Then(line);
            foreach (Edge edge in sign.Shape.Strokes.SelectMany(stroke => stroke))
                yield return edge.Transformed(place);
        }
    }

    /// <summary>The lettering after the leading signs; null when there is none.</summary>
    public static PlotText? Rest(PlotText text)
    {
        int signs = Leading(text).Count();
        if (signs == 0)
            return text;
        ImmutableArray<PlotGlyph> rest = [.. text.Glyphs.Skip(signs)];
        if (rest.IsEmpty)
            return null;
        double from = rest.Min(g => g.OffsetX);
        Vector2D along = Vector2D.FromAngle(text.Angle) * from;
        return text with { Text = WithoutSigns(text.Text), Anchor = text.Anchor + along, Width = text.Width - from, Glyphs = [.. rest.Select(g => g with { OffsetX = g.OffsetX - from })] };
    }

    /// <summary>What is left of a line as text.</summary>
    public static string WithoutSigns(string text)
    {
        int at = 0;
        while (at < text.Length && IsDrawn(text[at]))
            at++;
        return at == 0 ? text : text[at..].TrimStart();
    }

    private static IEnumerable<PlotGlyph> Leading(PlotText text) =>
        text.Glyphs.TakeWhile((glyph, i) => i < text.Text.Length && IsDrawn(text.Text[i]));
}
