using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>The letter of a section, a detail or an auxiliary view: level, of the captions' height, about a middle.</summary>
internal readonly struct CentredLetter(string letter, DraftingStyle style)
{
    private readonly double _width = StrokeLettering.WidthOf(letter, style.CaptionLettering);

    public double Height => style.CaptionLettering;

    public OrientedBox Box(Point2D middle) => new(middle, (_width / 2) + style.Clearance, (Height / 2) + style.Clearance, 0);

    public PlotText Ink(Point2D middle, string view) =>
        StrokeLettering.Compose(letter, middle - new Vector2D(_width / 2, Height / 2), Height, 0, null, view);
}
