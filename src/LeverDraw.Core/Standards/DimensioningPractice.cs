using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>Proportions of dimension lines, on paper. Some grow with the narrow line width d, others are fixed.</summary>
/// <param name="ArrowLengthInWidths">Arrowhead length in multiples of the line width; 0 when <paramref name="ArrowLength"/> is fixed.</param>
/// <param name="ArrowLength">Fixed arrowhead length.</param>
/// <param name="ArrowLengthToWidth">Length over full width of the arrowhead.</param>
/// <param name="OvershootInWidths">How far an extension line runs past the dimension line, in line widths; 0 when fixed.</param>
/// <param name="Overshoot">The same, fixed.</param>
/// <param name="Gap">Between the feature and the start of its extension line.</param>
/// <param name="FirstLine">From the outline to the first dimension line.</param>
/// <param name="BetweenLines">Between parallel dimension lines, at least.</param>
/// <param name="LeaderShoulder">The level end of a leader.</param>
public sealed record DimensionProportions(
    double ArrowLengthInWidths,
    Length ArrowLength,
    double ArrowLengthToWidth,
    double OvershootInWidths,
    Length Overshoot,
    Length Gap,
    Length FirstLine,
    Length BetweenLines,
    Length LeaderShoulder);

/// <summary>Dimensioning proportions of the two practices.</summary>
public static class DimensioningPractice
{
    public static StandardSource Source { get; } = new(
        "Proportions of dimensions", "ISO 129-1; ASME Y14.5 practice", "", "", Certainty.Mixed,
        "inch spacing: three sources; first line and spacing in mm: three pages; ISO multiples of the line width from memory");

    /// <summary>Closed, filled or open arrowhead of 30° included (from memory; an older form is 15°).</summary>
    public static Angle IsoArrowIncludedAngle { get; } = Angle.FromDegrees(30);

    /// <summary>The narrow arrowhead, 15° included.</summary>
    public static Angle NarrowArrowIncludedAngle { get; } = Angle.FromDegrees(15);

    /// <summary>ISO: arrow about 10 d, overshoot about 8 d, no gap; first line 10 mm off, then 8 mm (6 to 8 published). The leader shoulder is borrowed from the inch practice.</summary>
    public static DimensionProportions Iso { get; } = new(
        10, Length.Zero, 1 / (2 * Math.Tan(Math.PI / 12)), 8, Length.Zero, Length.Zero,
        Length.FromMillimetres(10), Length.FromMillimetres(8), Length.FromMillimetres(3));

    /// <summary>Inch: arrow 1/8 in, three times as long as wide; overshoot 1/8, gap 1/16, first line 3/8, then 1/4 in.</summary>
    public static DimensionProportions Inch { get; } = new(
        0, Length.FromInches(1.0 / 8), 3, 0, Length.FromInches(1.0 / 8), Length.FromInches(1.0 / 16),
        Length.FromInches(3.0 / 8), Length.FromInches(1.0 / 4), Length.FromInches(1.0 / 8));
}
