using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>Lettering that reads as another's: in a row with it, over its leader's shoulder, at the end of its line.</summary>
internal static class LetterBlemish
{
    /// <summary>Between boxes of lettering, in heights of the lower of the two: with the clearance inside the boxes some two heights of the letters.</summary>
    private const double RowGap = 0.75;

    /// <summary>Share of the lower box's height over which the two stand side by side, from which they are in one row.</summary>
    private const double OneRow = 0.4;

    /// <summary>Farther from lettering no line is a blemish of it, millimetres.</summary>
    private const double Farthest = 2;

    /// <summary>Whether lines within a box may be a blemish of lettering at all.</summary>
    public static bool IsNear(ReadOnlySpan<OrientedBox> texts, Box2D lines)
    {
        Box2D reach = lines.Inflated(Farthest);
        foreach (ref readonly OrientedBox text in texts)
        {
            if (text.Bounds.Overlaps(reach))
                return true;
        }

        return false;
    }

    /// <summary>How nearly one piece of lettering reads on into another: 0 where they are not in one row or far enough apart, 1 where they touch.</summary>
    public static double Nearness(in OrientedBox a, in OrientedBox b)
    {
        double low = 2 * Math.Min(a.HalfHeight, b.HalfHeight), gap = RowGap * low;
        Vector2D between = b.Centre - a.Centre, along = a.Along;
        double reach = a.HalfLength + b.HalfLength + gap;
        if (Math.Abs(between.X) > reach + low || Math.Abs(between.Y) > reach + low || Math.Abs(along.Cross(b.Along)) > 0.02)
            return 0;
        double beside = a.HalfHeight + b.HalfHeight - Math.Abs(along.Cross(between));
        double apart = Math.Abs(along.Dot(between)) - a.HalfLength - b.HalfLength;
        return beside < OneRow * low || apart >= gap ? 0 : 1 - (Math.Max(0, apart) / gap);
    }

    /// <summary>A letter or sign that stands by itself so near to the end of another's line that this seems to point at it.</summary>
    public static bool IsAt(ReadOnlySpan<Stroke> lines, ReadOnlySpan<Stroke> its, ReadOnlySpan<OrientedBox> letter)
    {
        if (letter.Length != 1 || !its.IsEmpty)
            return false;
        foreach (ref readonly Stroke line in lines)
        {
            if (OrientedBox.AnyMeets(letter, line.A, line.B, Farthest))
                return true;
        }

        return false;
    }

    /// <summary>A leader's shoulder close over or under another's lettering, a sign or a frame, and along half of it: it seems to belong to it.</summary>
    /// <param name="its">The lines of the other: a mark's words stand by themselves, and look like one more line of a label over them.</param>
    public static bool Underlines(ReadOnlySpan<Stroke> lines, ReadOnlySpan<Stroke> its, ReadOnlySpan<OrientedBox> texts)
    {
        const double Close = 1, CloseToMark = Farthest;
        double close = LineBlemish.IsMark(its) ? CloseToMark : Close;
        foreach (ref readonly Stroke line in lines)
        {
            if (line.Kind != StrokeKind.Leader || line.A.Y != line.B.Y)
                continue;
            foreach (ref readonly OrientedBox text in texts)
            {
                Box2D box = text.Bounds;
                double shared = Math.Min(line.Bounds.MaxX, box.MaxX) - Math.Max(line.Bounds.MinX, box.MinX);
                if (shared > Math.Min(box.Width, line.Bounds.Width) / 2 && line.A.Y > box.MinY - close && line.A.Y < box.MaxY + close)
                    return true;
            }
        }

        return false;
    }

    /// <summary>Lettering close beside another's dimension line: legible, but squeezed in, and a glance takes it for that one's.</summary>
    public static bool IsBeside(ReadOnlySpan<Stroke> lines, ReadOnlySpan<OrientedBox> texts)
    {
        const double Near = 0.6;
        foreach (ref readonly Stroke line in lines)
        {
            if (line.Kind == StrokeKind.DimensionLine && OrientedBox.AnyMeets(texts, line.A, line.B, Near))
                return true;
        }

        return false;
    }

    /// <summary>An extension line that ends so near before another's lettering or sign, and in a row with it, that it seems to run into it.</summary>
    public static bool RunsInto(ReadOnlySpan<Stroke> lines, ReadOnlySpan<OrientedBox> texts)
    {
        const double Near = 1.2;
        foreach (ref readonly Stroke line in lines)
        {
            if (line.Kind == StrokeKind.ExtensionLine && OrientedBox.AnyMeets(texts, line.B, line.B + ((line.B - line.A).Unit() * Near), 0))
                return true;
        }

        return false;
    }
}
