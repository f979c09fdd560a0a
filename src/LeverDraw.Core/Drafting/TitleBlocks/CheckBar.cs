using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;
using LeverDraw.Units;

namespace LeverDraw.Drafting.TitleBlocks;

/// <summary>A bar of known length on the paper, so that a print can be measured: 50 mm, or 2 in on an inch sheet.</summary>
public static class CheckBar
{
    public const double Height = 7;

    public static double LengthOf(SheetUnit unit) =>
        unit == SheetUnit.Millimetre ? 50 : Length.FromInches(2).Millimetres;

    /// <param name="corner">Lower left corner.</param>
    public static IEnumerable<PlotItem> Draw(SheetUnit unit, Point2D corner, double lettering)
    {
        double length = LengthOf(unit);
        yield return Line(corner, corner + new Vector2D(length, 0));
        int parts = unit == SheetUnit.Millimetre ? 5 : 4;
        for (int i = 0; i <= parts; i++)
        {
            Point2D foot = corner + new Vector2D(length * i / parts, 0);
            yield return Line(foot, foot + new Vector2D(0, i == 0 || i == parts ? 3 : 1.8));
        }

        string text = unit == SheetUnit.Millimetre ? "PRINT CHECK: 50 mm" : "PRINT CHECK: 2 in";
        double width = StrokeLettering.WidthOf(text, lettering);
        yield return StrokeLettering.Compose(text, corner + new Vector2D((length - width) / 2, 3.2), lettering);
    }

    private static PlotStroke Line(Point2D a, Point2D b) => new(LineRole.Frame, new LineEdge(a, b));
}
