using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;
using LeverDraw.Standards;

namespace LeverDraw.Drafting.Symbols;

/// <summary>A datum feature's letter in a square frame, joined to a filled triangle that stands on the feature (ISO 5459; sizes of references 10i and 10j, from memory).</summary>
/// <param name="letter">Datum letter.</param>
/// <param name="stem">Line from the triangle to the frame, in letter heights.</param>
internal sealed class DatumIndicator(string letter, DraftingStyle style, double stem = 0.6)
{
    private readonly double _h = style.LetteringHeight;
    private readonly double _half = SymbolPen.Sizes(style).FrameHeight.Millimetres / 2;

    private double TriangleHeight => SymbolProportions.DatumTriangleBase * _h * Math.Sqrt(3) / 2;

    /// <summary>From the feature to the far side of the frame, measured square to it.</summary>
    public double Reach => TriangleHeight + (stem * _h) + (2 * _half);

    /// <param name="foot">On the feature, in the middle of the triangle's base.</param>
    /// <param name="outward">Away from the feature, length one.</param>
    /// <param name="angle">Reading direction of the letter.</param>
    public OrientedBox Box(Point2D foot, Vector2D outward, double angle, double clearance)
    {
        // One box round frame and stem; the triangle's corners lie within it but for the narrow side of a slanting stem.
        Vector2D u = Vector2D.FromAngle(angle);
        Vector2D toFar = FrameCentre(foot, outward, angle) - foot;
        double along = toFar.Dot(u), up = toFar.Dot(u.Left), side = SymbolProportions.DatumTriangleBase * _h / 2;
        (double left, double right) = (Math.Min(along - _half, -side * Math.Abs(outward.Dot(u.Left))), Math.Max(along + _half, side * Math.Abs(outward.Dot(u.Left))));
        (double low, double high) = (Math.Min(up - _half, -side * Math.Abs(outward.Dot(u))), Math.Max(up + _half, side * Math.Abs(outward.Dot(u))));
        return OrientedBox.FromCorner(foot + (u * left) + (u.Left * low), right - left, high - low, angle).Inflated(clearance);
    }

    public IEnumerable<PlotItem> Ink(Point2D foot, Vector2D outward, double angle, string? owner, string? view)
    {
        double side = SymbolProportions.DatumTriangleBase * _h / 2;
        Point2D apex = foot + (outward * TriangleHeight);
        yield return new PlotFill(LineRole.Symbol, [apex, foot + (outward.Left * side), foot - (outward.Left * side)], owner, view);
        Point2D centre = FrameCentre(foot, outward, angle);
        yield return new PlotStroke(LineRole.Symbol, new LineEdge(apex, centre - (outward * EdgeDistance(outward, angle))), owner, view);
        var pen = new SymbolPen(SymbolPen.At(centre, angle), LineRole.Symbol, owner, view);
        yield return pen.Line(-_half, -_half, _half, -_half);
        yield return pen.Line(_half, -_half, _half, _half);
        yield return pen.Line(_half, _half, -_half, _half);
        yield return pen.Line(-_half, _half, -_half, -_half);
        yield return pen.Text(letter, new Point2D(-StrokeLettering.WidthOf(letter, _h) / 2, -_h / 2), _h);
    }

    private Point2D FrameCentre(Point2D foot, Vector2D outward, double angle) =>
        foot + (outward * (TriangleHeight + (stem * _h) + EdgeDistance(outward, angle)));

    /// <summary>From the frame's centre to its edge along the stem.</summary>
    private double EdgeDistance(Vector2D outward, double angle)
    {
        Vector2D u = Vector2D.FromAngle(angle);
        return _half / Math.Max(Math.Abs(outward.Dot(u)), Math.Abs(outward.Dot(u.Left)));
    }
}
