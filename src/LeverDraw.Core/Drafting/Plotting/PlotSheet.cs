using System.Collections.Immutable;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Plotting;

/// <summary>Which state of the part a sheet shows; it stands in layer and file names so that two states cannot be mixed up.</summary>
public enum PartState
{
    Finished,
    Casting,
    Pattern,
    Pin,

    /// <summary>Several parts together: nothing to be made from.</summary>
    Assembly,
}

/// <summary>Unit of the numbers in a DXF file and first unit of the lettering.</summary>
public enum SheetUnit
{
    Millimetre,
    Inch,
}

/// <summary>Ink on paper, complete: the only thing a writer is given. Nothing is measured, rounded or placed after this.</summary>
/// <param name="Width">Of the trimmed sheet, millimetres.</param>
/// <param name="Height">Of the trimmed sheet, millimetres.</param>
/// <param name="Title">For the file's own title entry.</param>
/// <param name="MainScale">Paper millimetres per part millimetre of the main views.</param>
/// <param name="LetteringHeight">Of dimension text, paper millimetres.</param>
/// <param name="ArrowLength">Paper millimetres.</param>
public sealed record PlotSheet(
    double Width,
    double Height,
    string Title,
    PartState State,
    SheetUnit Unit,
    double MainScale,
    double LetteringHeight,
    double ArrowLength,
    ImmutableArray<PlotItem> Items,
    ImmutableArray<PlotView> Views,
    ImmutableArray<PlotDimension> Dimensions);
