using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Drafting.Sheets;

/// <summary>In which unit sizes are lettered; with both, the second stands in square brackets.</summary>
public enum ShownUnits
{
    Millimetres,
    Inches,
    MillimetresAndInches,
    InchesAndMillimetres,
}

/// <summary>Which of two units stands first.</summary>
public static class ShownUnitsOrder
{
    public static bool MillimetresFirst(this ShownUnits units) => units is ShownUnits.Millimetres or ShownUnits.MillimetresAndInches;

    public static LengthUnit First(this ShownUnits units) => units.MillimetresFirst() ? LengthUnit.Millimetre : LengthUnit.Inch;

    /// <summary>The one in square brackets; null when sizes are in one unit only.</summary>
    public static LengthUnit? Second(this ShownUnits units) => units switch
    {
        ShownUnits.MillimetresAndInches => LengthUnit.Inch,
        ShownUnits.InchesAndMillimetres => LengthUnit.Millimetre,
        _ => null,
    };

    /// <summary>Such as <c>mm [in]</c>.</summary>
    public static string Words(this ShownUnits units) => units.First().Word() + (units.Second() is { } second ? " [" + second.Word() + "]" : "");
}

/// <summary>What the user may choose about a sheet.</summary>
/// <param name="Paper">Null: the smallest sheet on which the drawing is at least at 2:1.</param>
/// <param name="Scale">Null: the largest preferred scale that fits.</param>
public sealed record SheetOptions(
    SheetFormat? Paper = null,
    DrawingScale? Scale = null,
    ShownUnits Units = ShownUnits.Millimetres,
    ProjectionMethod Projection = ProjectionMethod.ThirdAngle)
{
    /// <summary>The unit that sizes are lettered in first.</summary>
    public SheetUnit FirstUnit => Units.MillimetresFirst() ? SheetUnit.Millimetre : SheetUnit.Inch;

    /// <summary>A paper smaller than A3 is asked for: what else stands beside the views has to go elsewhere.</summary>
    public bool IsOnSmallPaper => Paper is { } paper && !PaperRoom.IsLargeSheet(paper);

    /// <summary>How sizes with a tolerance of their own are lettered.</summary>
    public ToleranceForm Tolerances { get; init; }
}
