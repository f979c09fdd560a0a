using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Symbols;

/// <summary>The sign of a taper (ISO 3040): an isosceles triangle astride the reference line, its apex toward the small end. In a line of lettering the characters ▷ and ◁ say the same.</summary>
/// <remarks>Proportions of the lettering's own sign: about one letter height long, 0.6 high (from memory).</remarks>
internal static class TaperSign
{
    public const double LengthInHeights = 1, BaseInHeights = 0.6;

    /// <summary>The character whose apex points to the reader's right, or left.</summary>
    public static string Character(bool apexRight) => apexRight ? "▷" : "◁";

    /// <param name="middle">Of the sign, on the reference line.</param>
    /// <param name="towardSmallEnd">Along the taper's axis, length one.</param>
    public static IEnumerable<PlotItem> Ink(Point2D middle, Vector2D towardSmallEnd, double height, string? owner, string? view)
    {
        var pen = new SymbolPen(SymbolPen.At(middle, towardSmallEnd.Angle), LineRole.Symbol, owner, view);
        double half = LengthInHeights * height / 2, side = BaseInHeights * height / 2;
        yield return pen.Line(-half, -side, half, 0);
        yield return pen.Line(half, 0, -half, side);
        yield return pen.Line(-half, side, -half, -side);
    }
}
