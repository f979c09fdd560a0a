using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Lettering;

/// <summary>Text as pen strokes in our own single-stroke letters, with their own widths.</summary>
public static class StrokeLettering
{
    /// <summary>Width from the first to the last stroke's edge, millimetres, pen width included.</summary>
    public static double WidthOf(string text, double height) => throw new NotImplementedException();

    /// <summary>A line of lettering whose baseline starts at <paramref name="anchor"/>.</summary>
    /// <param name="height">Of the capitals, millimetres, above zero.</param>
    /// <param name="angle">Radians, counter-clockwise.</param>
    public static PlotText Compose(string text, Point2D anchor, double height, double angle = 0, string? owner = null, string? view = null) =>
        throw new NotImplementedException();
}
