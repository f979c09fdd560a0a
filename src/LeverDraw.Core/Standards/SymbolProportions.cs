using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>Sizes of the graphical symbols that go with lettering of one height, on paper.</summary>
/// <param name="LetterHeight">h.</param>
/// <param name="LineWidth">h/10.</param>
/// <param name="SurfaceShortLeg">Height H1 of the surface-texture sign's short leg; legs at 60°.</param>
/// <param name="SurfaceLongLeg">Least height H2 of its long leg.</param>
/// <param name="FrameHeight">Tolerance-frame compartment height, 2 h; the first one is about square.</param>
/// <param name="ProjectionLarge">Large circle and cone end of the projection symbol, 2 h.</param>
/// <param name="ProjectionSmall">Small circle and cone end, h; the cone is about 2 h long.</param>
public sealed record SymbolSizes(
    Length LetterHeight,
    Length LineWidth,
    Length SurfaceShortLeg,
    Length SurfaceLongLeg,
    Length FrameHeight,
    Length ProjectionLarge,
    Length ProjectionSmall);

/// <summary>Proportions of surface-texture signs, tolerance frames and the projection symbol.</summary>
public static class SymbolProportions
{
    public static StandardSource Source { get; } = new(
        "Proportions of symbols", "ISO 1302:2002; ISO 7083; ISO 5456-2", "", "", Certainty.FromMemory,
        "all from memory; an earlier edition had slightly higher long legs; no projection symbol size was held for 2.5 mm lettering, 2 h and h are used");

    /// <summary>Smallest lettering first.</summary>
    public static ImmutableArray<SymbolSizes> All { get; } =
    [
        Sizes(2.5, 3.5, 7.5),
        Sizes(3.5, 5, 10.5),
        Sizes(5, 7, 15),
        Sizes(7, 10, 21),
        Sizes(10, 14, 30),
        Sizes(14, 20, 42),
        Sizes(20, 28, 60),
    ];

    public static Answer<SymbolSizes> ForLetterHeight(Length height)
    {
        double mm = SizeSteps.ToBorder(height);
        foreach (SymbolSizes sizes in All)
        {
            if (SizeSteps.ToBorder(sizes.LetterHeight) == mm)
                return Answer<SymbolSizes>.Given(sizes);
        }
        return Answer<SymbolSizes>.Refused("symbols are given for lettering of 2.5, 3.5, 5, 7, 10, 14 and 20 mm");
    }

    /// <summary>Base of the datum triangle in letter heights; the triangle is equilateral (ISO 5459, from memory).</summary>
    public const double DatumTriangleBase = 1;

    /// <summary>Multiples of the letter height for lettering smaller than the table: what its first rows come to.</summary>
    private const double ShortLegInHeights = 1.4, LongLegInHeights = 3;

    /// <summary>The table's row, or the same proportions at a height that has none, such as the smallest lettering of 1.8 mm.</summary>
    public static SymbolSizes Beside(Length height) => ForLetterHeight(height) is { IsGiven: true } row
        ? row.Value
        : Sizes(height.Millimetres, ShortLegInHeights * height.Millimetres, LongLegInHeights * height.Millimetres);

    private static SymbolSizes Sizes(double h, double shortLeg, double longLeg) => new(
        Length.FromMillimetres(h), Length.FromMillimetres(h / 10), Length.FromMillimetres(shortLeg), Length.FromMillimetres(longLeg),
        Length.FromMillimetres(2 * h), Length.FromMillimetres(2 * h), Length.FromMillimetres(h));
}
