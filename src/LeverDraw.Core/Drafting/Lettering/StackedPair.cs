namespace LeverDraw.Drafting.Lettering;

/// <summary>
/// Proportions of two deviations or limits one above the other, for a capital height of 1: numerals one size smaller (ISO 129-1 allows it, from memory; the step of ISO 3098's heights is √2) drawn with the same pen,
/// 0.2 h clear between them, the pair about the middle of the line's capitals.
/// </summary>
internal static class StackedPair
{
    public const double Scale = 0.7;

    /// <summary>Between centre lines of the upper numerals' foot and the lower ones' top.</summary>
    private const double Gap = 0.3;

    public const double LowerBaseline = 0.5 - Scale - (Gap / 2);
    public const double UpperBaseline = 0.5 + (Gap / 2);

    /// <summary>How far its ink stands out above the capitals and below the baseline, pen included.</summary>
    public const double StandsOut = -LowerBaseline + (LetteringMetrics.StrokeRatio / 2);

    private const double NumeralGap = LetteringMetrics.LetterGapRatio * Scale;

    public static double WidthOf(ReadOnlySpan<char> number)
    {
        double width = 0;
        foreach (char character in number)
            width += CellOf(character) + NumeralGap;
        return width - NumeralGap;
    }

    /// <summary>From one character's cell to the next.</summary>
    public static double AdvanceOf(char character) => CellOf(character) + NumeralGap;

    /// <summary>Where a character's own origin goes, from its cell's left edge.</summary>
    public static double OffsetOf(Glyph glyph) => (CellOf(glyph) / 2) - (Scale * (glyph.Left + glyph.Right) / 2);

    private static double CellOf(char character) => CellOf(GlyphTable.Instance.Find(character)!);

    /// <summary>The pen is not made smaller with the numeral.</summary>
    private static double CellOf(Glyph glyph) => ((glyph.Width - LetteringMetrics.StrokeRatio) * Scale) + LetteringMetrics.StrokeRatio;
}
