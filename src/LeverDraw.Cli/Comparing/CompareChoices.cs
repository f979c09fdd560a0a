using System.Collections.Immutable;
using LeverDraw.Comparison;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Units;
using LeverDraw.Writers;

namespace LeverDraw.Cli.Comparing;

/// <summary>What goes to standard output.</summary>
internal enum ComparePrint
{
    Text,
    Csv,
    Json,
}

/// <summary>What <c>compare</c> was asked for, all checked.</summary>
/// <param name="TableOnly">No sheet; any number of variants.</param>
/// <param name="Units">Null: as the first profile's own.</param>
internal sealed record CompareChoices(
    Alignment Alignment,
    bool TableOnly,
    ComparePrint Print,
    ImmutableArray<IDrawingWriter> Writers,
    string Folder,
    SheetOptions Sheet,
    ShownUnits? Units,
    int DotsPerInch)
{
    public ShownUnits UnitsFor(LeverVariant first) => Units ?? (first.Profile.Units == LengthUnit.Inch ? ShownUnits.Inches : ShownUnits.Millimetres);

    /// <summary>Of the printed values.</summary>
    public LengthUnit UnitFor(LeverVariant first) => UnitsFor(first).MillimetresFirst() ? LengthUnit.Millimetre : LengthUnit.Inch;
}
