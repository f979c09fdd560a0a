using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>One nominal size of type B lettering, as its standard prints it (rounded there).</summary>
/// <param name="Height">h, of the capitals.</param>
/// <param name="SmallHeight">c, of lower-case letters without ascender: 7/10 h.</param>
/// <param name="Stroke">d, width of the pen line: h/10.</param>
/// <param name="LetterGap">a, clear space between letters: 2 d.</param>
/// <param name="WordGap">e, clear space between words: 6 d.</param>
/// <param name="LinePitchAccented">b1, from baseline to baseline where capitals carry accents: 19 d.</param>
/// <param name="LinePitch">b2, from baseline to baseline of capitals and small letters: 15 d.</param>
/// <param name="LinePitchCapitals">b3, from baseline to baseline of capitals only: 13 d.</param>
public sealed record LetteringSize(
    Length Height,
    Length SmallHeight,
    Length Stroke,
    Length LetterGap,
    Length WordGap,
    Length LinePitchAccented,
    Length LinePitch,
    Length LinePitchCapitals);

/// <summary>Sizes of type B lettering. Source: ISO 3098-1 as printed in one secondary table (reference 10g, S111) whose cells its own ratios to d reproduce: solid. Descender 3 d: from memory of the same standard.</summary>
public static class Iso3098Lettering
{
    /// <summary>The ratios to the stroke width d that every row rounds.</summary>
    public const int HeightInStrokes = 10;
    public const int SmallHeightInStrokes = 7;
    public const int DescenderInStrokes = 3;
    public const int LetterGapInStrokes = 2;
    public const int WordGapInStrokes = 6;
    public const int LinePitchAccentedInStrokes = 19;
    public const int LinePitchInStrokes = 15;
    public const int LinePitchCapitalsInStrokes = 13;

    /// <summary>Nominal heights from 1.8 to 20 mm.</summary>
    public static ImmutableArray<LetteringSize> TypeB { get; } =
    [
        Row(1.8, 1.26, 0.18, 0.36, 1.08, 3.42, 2.7, 2.34),
        Row(2.5, 1.75, 0.25, 0.5, 1.5, 4.75, 3.75, 3.25),
        Row(3.5, 2.5, 0.35, 0.7, 2.1, 6.65, 5.25, 4.55),
        Row(5, 3.5, 0.5, 1, 3, 9.5, 7.5, 6.5),
        Row(7, 5, 0.7, 1.4, 4.2, 13.3, 10.5, 9.1),
        Row(10, 7, 1, 2, 6, 19, 15, 13),
        Row(14, 10, 1.4, 2.8, 8.4, 26.6, 21, 18.2),
        Row(20, 14, 2, 4, 12, 38, 30, 26),
    ];

    private static LetteringSize Row(double h, double c, double d, double a, double e, double b1, double b2, double b3) =>
        new(
            Length.FromMillimetres(h),
            Length.FromMillimetres(c),
            Length.FromMillimetres(d),
            Length.FromMillimetres(a),
            Length.FromMillimetres(e),
            Length.FromMillimetres(b1),
            Length.FromMillimetres(b2),
            Length.FromMillimetres(b3));
}
