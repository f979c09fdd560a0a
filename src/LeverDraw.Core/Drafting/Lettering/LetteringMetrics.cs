using LeverDraw.Drafting.Plotting;
using LeverDraw.Standards;

namespace LeverDraw.Drafting.Lettering;

/// <summary>The vertical and horizontal room of a line of lettering, paper millimetres. Heights are between centre lines of the pen; gaps are clear of ink.</summary>
/// <param name="Height">Of the capitals, above zero.</param>
public readonly record struct LetteringMetrics(double Height)
{
    /// <summary>Stroke width as a share of the height.</summary>
    public const double StrokeRatio = 1.0 / Iso3098Lettering.HeightInStrokes;

    internal const double LetterGapRatio = Iso3098Lettering.LetterGapInStrokes * StrokeRatio;
    internal const double WordGapRatio = Iso3098Lettering.WordGapInStrokes * StrokeRatio;

    public double Stroke => Pens.LetteringWidth(Height);

    /// <summary>Of small letters without ascender.</summary>
    public double SmallHeight => Iso3098Lettering.SmallHeightInStrokes * Stroke;

    /// <summary>Above the baseline, of the highest ink of unaccented letters.</summary>
    public double Ascender => Height + (Stroke / 2);

    /// <summary>Below the baseline, of the lowest ink of letters, as a positive number.</summary>
    public double Descender => (Iso3098Lettering.DescenderInStrokes * Stroke) + (Stroke / 2);

    public double LetterGap => Iso3098Lettering.LetterGapInStrokes * Stroke;

    public double WordGap => Iso3098Lettering.WordGapInStrokes * Stroke;

    /// <summary>Baseline to baseline.</summary>
    public double LinePitch => Iso3098Lettering.LinePitchInStrokes * Stroke;

    /// <summary>Baseline to baseline where capitals may carry accents.</summary>
    public double LinePitchAccented => Iso3098Lettering.LinePitchAccentedInStrokes * Stroke;

    /// <summary>Baseline to baseline of lines in capitals only.</summary>
    public double LinePitchCapitals => Iso3098Lettering.LinePitchCapitalsInStrokes * Stroke;
}
