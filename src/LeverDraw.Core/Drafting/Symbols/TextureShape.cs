using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;
using LeverDraw.Standards;

namespace LeverDraw.Drafting.Symbols;

/// <summary>A surface-texture sign measured: vee with legs at 60°, its tip on the surface, the text under the bar of the long leg (legs of reference 10i, from memory).</summary>
internal sealed class TextureShape
{
    private static readonly double Slope = Math.Tan(Math.PI / 3);

    private readonly TextureSign _sign;
    private readonly double _h;
    private readonly double _short;
    private readonly double _long;
    private readonly double _textWidth;

    public TextureShape(TextureSign sign, DraftingStyle style)
    {
        _sign = sign;
        _h = style.LetteringHeight;
        SymbolSizes sizes = SymbolPen.Sizes(style);
        _short = sizes.SurfaceShortLeg.Millimetres;
        _long = sizes.SurfaceLongLeg.Millimetres;
        _textWidth = sign.Text.Length == 0 ? 0 : StrokeLettering.WidthOf(sign.Text, _h, stackFractions: false);
    }

    /// <summary>From the tip to the left.</summary>
    public double Left => _short / Slope;

    /// <summary>From the tip to the right.</summary>
    public double Right => _textWidth == 0 ? _long / Slope : TextAt + _textWidth + (0.2 * _h);

    public double Width => Left + Right;

    public double Height => _long;

    /// <summary>The text clears the long leg by a third of its height at the capitals' top.</summary>
    private double TextAt => ((_long - (0.5 * _h)) / Slope) + (0.35 * _h);

    public OrientedBox Box(Point2D tip, double angle, double clearance)
    {
        Vector2D u = Vector2D.FromAngle(angle);
        return OrientedBox.FromCorner(tip - (u * Left), Width, Height, angle).Inflated(clearance);
    }

    /// <param name="angle">Reading direction of the text; the sign stands to its left.</param>
    public IEnumerable<PlotItem> Ink(Point2D tip, double angle, string? owner, string? view)
    {
        var pen = new SymbolPen(SymbolPen.At(tip, angle), LineRole.Symbol, owner, view);
        double across = _short / Slope;
        yield return pen.Line(-across, _short, 0, 0);
        yield return pen.Line(0, 0, _long / Slope, _long);
        if (_sign.Process == TextureProcess.Removal)
            yield return pen.Line(-across, _short, across, _short);
        else if (_sign.Process == TextureProcess.NoRemoval)
            yield return pen.Circle(new Point2D(0, 2 * _short / 3), _short / 3);
        if (_textWidth == 0)
            yield break;
        yield return pen.Line(_long / Slope, _long, Right, _long);
        yield return pen.Text(_sign.Text, new Point2D(TextAt, _long - (1.5 * _h)), _h);
    }
}
