using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Profiles;
using LeverDraw.Units;
using LeverDraw.Writers;

namespace LeverDraw.Cli.Drawing;

/// <summary>What <c>draw</c> was asked for, all checked.</summary>
/// <param name="Sheets">Names of sheets; empty for all there are.</param>
/// <param name="Sheet">Paper, scale and projection; its units are set for each profile by <see cref="SheetFor"/>.</param>
/// <param name="Units">Null: as the profile's own.</param>
/// <param name="Tabled">Letters on the drawing and values in a table, all profiles of a kind on one sheet.</param>
/// <param name="OutlinesOnly">Whether DXF files hold outlines only, which then stands in their names.</param>
internal sealed record DrawChoices(
    ImmutableArray<string> Sheets,
    ImmutableArray<IDrawingWriter> Writers,
    string Folder,
    SheetOptions Sheet,
    ShownUnits? Units,
    bool OutlinesOnly,
    int DotsPerInch,
    bool Tabled = false)
{
    /// <summary>Nobody asked for <see cref="Sheets"/>: a profile that has none of them draws all of its own.</summary>
    public bool SheetsUnasked { get; init; }

    public SheetOptions SheetFor(Profile profile) => Sheet with
    {
        Units = Units ?? (profile.Units == LengthUnit.Inch ? ShownUnits.Inches : ShownUnits.Millimetres),
    };

    /// <summary>The unit of a DXF file's numbers: the first one shown.</summary>
    public static SheetUnit FileUnit(ShownUnits units) =>
        units is ShownUnits.Inches or ShownUnits.InchesAndMillimetres ? SheetUnit.Inch : SheetUnit.Millimetre;
}
