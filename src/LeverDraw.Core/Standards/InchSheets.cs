using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>The inch sheets: A (letter) upright, the others lying.</summary>
public static class InchSheets
{
    public static StandardSource Source { get; } = new(
        "Inch drawing sheets", "ASME Y14.1", "", "", Certainty.Mixed,
        "sizes A to E: two sources agree; size F and all margins from memory; no reference grid held");

    public static SheetFormat Letter { get; } = Sheet("letter", "A", 8.5, 11, 0.38, 0.25);

    public static SheetFormat Tabloid { get; } = Sheet("tabloid", "B", 17, 11, 0.38, 0.62);

    /// <summary>Smallest area first.</summary>
    public static ImmutableArray<SheetFormat> All { get; } =
    [
        Letter,
        Tabloid,
        Sheet("C", "C", 22, 17, 0.75, 0.5),
        Sheet("D", "D", 34, 22, 0.5, 1.0),
        Sheet("F", "F", 40, 28, 0.5, 0.5),
        Sheet("E", "E", 44, 34, 1.0, 0.5),
    ];

    private static SheetFormat Sheet(string name, string series, double widthIn, double heightIn, double topBottomIn, double leftRightIn)
    {
        Length side = Length.FromInches(leftRightIn);
        Length end = Length.FromInches(topBottomIn);
        return new SheetFormat(
            name, series, Length.FromInches(widthIn), Length.FromInches(heightIn), new SheetBorders(side, side, end, end), 0, 0);
    }
}
