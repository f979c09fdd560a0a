using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>The ISO A sheets with their frames: A4 upright, the others lying.</summary>
public static class IsoSheets
{
    public static StandardSource Source { get; } = new(
        "ISO drawing sheets", "ISO 5457", "1999", "trimmed sizes of ISO 216", Certainty.Mixed,
        "sizes: three sources agree; borders: one drafting page and memory; number of grid fields from memory");

    public static SheetFormat A4 { get; } = Sheet("A4", 210, 297, 4, 6);

    public static SheetFormat A3 { get; } = Sheet("A3", 420, 297, 8, 6);

    public static SheetFormat A2 { get; } = Sheet("A2", 594, 420, 12, 8);

    public static SheetFormat A1 { get; } = Sheet("A1", 841, 594, 16, 12);

    public static SheetFormat A0 { get; } = Sheet("A0", 1189, 841, 24, 16);

    /// <summary>Smallest first.</summary>
    public static ImmutableArray<SheetFormat> All { get; } = [A4, A3, A2, A1, A0];

    private static SheetFormat Sheet(string name, double widthMm, double heightMm, int fieldsAlongWidth, int fieldsAlongHeight) =>
        new(name, name, Length.FromMillimetres(widthMm), Length.FromMillimetres(heightMm),
            new SheetBorders(SheetLayout.LeftBorder, SheetLayout.OtherBorder, SheetLayout.OtherBorder, SheetLayout.OtherBorder),
            fieldsAlongWidth, fieldsAlongHeight);
}
