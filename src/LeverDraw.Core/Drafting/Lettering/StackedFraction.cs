using LeverDraw.Drafting.Lettering.Shapes;

namespace LeverDraw.Drafting.Lettering;

/// <summary>
/// Proportions of a fraction in a line of text, for a capital height of 1: numerals of 0.65 h drawn with the same pen, the numerator raised and the denominator lowered beside a slanted bar, 1.3 h high between centre lines.
/// Our own choice: a horizontal bar with two such numerals would be higher than 1.5 h.
/// </summary>
internal static class StackedFraction
{
    public const double NumeralScale = 0.65;
    public const double NumeratorBaseline = 0.5;
    public const double DenominatorBaseline = -0.15;

    /// <summary>Clear of ink between a whole number and its fraction: more than between letters, less than between words.</summary>
    public const double GapAfterWhole = 0.35;

    /// <summary>From the numerator's cell to the bar's foot and from there to the denominator's cell; the bar leans over the one and away from the other by the same amount.</summary>
    public const double NumeralToBar = -0.05;
    public const double BarToDenominator = 0.36;

    private const double NumeralGap = 0.13;
    private const double CellWidth = (Digits.CellWidth * NumeralScale / 10) + LetteringMetrics.StrokeRatio;

    /// <summary>From one numeral's cell to the next.</summary>
    public const double Advance = CellWidth + NumeralGap;

    public static Glyph Bar { get; } = Glyph.FromPath("/", "M 0 -1.8 L 3.6 11.8");

    public static double WidthOf(ReadOnlySpan<char> digits) => (digits.Length * Advance) - NumeralGap;

    /// <summary>Where a numeral's own origin goes, from its cell's left edge.</summary>
    public static double OffsetOf(Glyph digit) =>
        (CellWidth / 2) - (NumeralScale * (digit.Left + digit.Right) / 2);
}
