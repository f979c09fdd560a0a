using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Geometry;
using LeverDraw.Units;

namespace LeverDraw.Drafting.Views;

/// <summary>What stands over a view, in one line: its name, how far it is turned if it is, its scale if it has its own.</summary>
/// <param name="turned">Radians, counter-clockwise.</param>
/// <param name="scale">Words, or none.</param>
/// <param name="height">Of the lettering, millimetres.</param>
internal sealed class ViewCaption(string name, double turned, string scale, double height)
{
    /// <summary>Before and after the sign of a turned view, in heights.</summary>
    private const double Gap = 0.5;

    private string First => turned == 0 ? name + scale : name;

    private string Rest => DimensionText.DegreesText(Angle.FromRadians(Math.Abs(turned))) + scale;

    private double SignAt => StrokeLettering.WidthOf(First, height) + (Gap * height);

    private double RestAt => SignAt + RotationSign.Width(height) + (Gap * height);

    public double Width => turned == 0 ? StrokeLettering.WidthOf(First, height) : RestAt + StrokeLettering.WidthOf(Rest, height);

    /// <param name="anchor">Left end of the baseline.</param>
    public IEnumerable<PlotItem> Ink(Point2D anchor, string view)
    {
        yield return StrokeLettering.Compose(First, anchor, height, 0, null, view);
        if (turned == 0)
            yield break;
        foreach (PlotItem item in RotationSign.Ink(anchor + new Vector2D(SignAt, 0), height, turned > 0, view))
            yield return item;
        yield return StrokeLettering.Compose(Rest, anchor + new Vector2D(RestAt, 0), height, 0, null, view);
    }
}
