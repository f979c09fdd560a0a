using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Symbols;

/// <summary>The corner of an edge sign with its values in it (form and proportions from memory: legs about two letter heights).</summary>
internal sealed class EdgeShape(EdgeSign sign, DraftingStyle style)
{
    private const double LegInHeights = 2;

    /// <summary>From the upright leg to the values, and from the level leg up to the lower one.</summary>
    private const double InsetInHeights = 0.5;

    private readonly double _h = style.LetteringHeight;

    private double Pitch => 1.6 * _h;

    private double TextWidth => Math.Max(StrokeLettering.WidthOf(sign.Upper, _h), sign.Lower.Length == 0 ? 0 : StrokeLettering.WidthOf(sign.Lower, _h));

    public double Width => Math.Max(LegInHeights * _h, (InsetInHeights * _h) + TextWidth);

    public double Height => Math.Max(LegInHeights * _h, (InsetInHeights * _h) + _h + (sign.Lower.Length == 0 ? 0 : Pitch));

    /// <param name="corner">Of the sign's two legs, lower left.</param>
    public IEnumerable<PlotItem> Ink(Point2D corner, string? owner, string? view)
    {
        var pen = new SymbolPen(SymbolPen.At(corner, 0), LineRole.Symbol, owner, view);
        double inset = InsetInHeights * _h;
        yield return pen.Line(0, 0, 0, LegInHeights * _h);
        yield return pen.Line(0, 0, LegInHeights * _h, 0);
        yield return pen.Text(sign.Upper, new Point2D(inset, inset + (sign.Lower.Length == 0 ? 0 : Pitch)), _h);
        if (sign.Lower.Length > 0)
            yield return pen.Text(sign.Lower, new Point2D(inset, inset), _h);
    }
}
