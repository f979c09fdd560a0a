using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Symbols;

/// <summary>The sign of a view that stands turned from how its arrow sees it: an arc with an arrowhead the way it is turned, in line with the view's letter (ISO 128-3, from memory: not seen).</summary>
/// <remarks>Proportions our own: half a circle as wide as the capitals are high, the arrowhead half as long as that and half as wide as long, so that it is seen beside heavy lettering.</remarks>
internal static class RotationSign
{
    private const double RadiusInHeights = 0.5, HeadInHeights = 0.5, HeadHalfWidth = HeadInHeights / 4;

    /// <summary>Of the sign beside capitals of a height, the arrowhead included, millimetres.</summary>
    public static double Width(double height) => 2 * (RadiusInHeights + HeadHalfWidth) * height;

    /// <param name="corner">Left end of the sign on the lettering's baseline.</param>
    /// <param name="height">Of the capitals, millimetres.</param>
    /// <param name="counterClockwise">The way the view is turned.</param>
    public static IEnumerable<PlotItem> Ink(Point2D corner, double height, bool counterClockwise, string? view)
    {
        double radius = RadiusInHeights * height, head = HeadInHeights * height, half = HeadHalfWidth * height, way = counterClockwise ? -1 : 1;
        // The arc leaves room under it for its arrowhead, whose tip stands on the baseline's level.
        var pen = new SymbolPen(SymbolPen.At(corner + new Vector2D(Width(height) / 2, 0), 0), LineRole.Symbol, null, view);
        yield return pen.Stroke(new ArcEdge(new Point2D(0, head), radius, 0, Math.PI));
        yield return pen.Fill(new Point2D(way * radius, 0), new Point2D((way * radius) + half, head), new Point2D((way * radius) - half, head));
    }
}
