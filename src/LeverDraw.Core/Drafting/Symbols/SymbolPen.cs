using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Drafting.Symbols;

/// <summary>Draws in a symbol's own millimetres and puts it on the block: what every symbol shares.</summary>
/// <param name="toBlock">Turn and place, no scale.</param>
internal readonly struct SymbolPen(Transform2D toBlock, LineRole role, string? owner, string? view)
{
    public PlotStroke Line(double x1, double y1, double x2, double y2) => Stroke(new LineEdge(new Point2D(x1, y1), new Point2D(x2, y2)));

    public PlotStroke Circle(Point2D centre, double radius) => Stroke(ArcEdge.FullCircle(centre, radius));

    public PlotStroke Stroke(Edge edge) => new(role, edge.Transformed(toBlock), owner, view);

    public PlotFill Fill(params ReadOnlySpan<Point2D> corners)
    {
        var placed = new Point2D[corners.Length];
        for (int i = 0; i < corners.Length; i++)
            placed[i] = toBlock.Apply(corners[i]);
        return new PlotFill(role, [.. placed], owner, view);
    }

    public PlotText Text(string text, Point2D anchor, double height) =>
        Lettering.StrokeLettering.Compose(text, toBlock.Apply(anchor), height, toBlock.Rotation, owner, view);

    /// <summary>Sizes for a style's lettering.</summary>
    public static SymbolSizes Sizes(DraftingStyle style) => SymbolProportions.Beside(Length.FromMillimetres(style.LetteringHeight));

    /// <summary>From a symbol's own axes to a place, its x axis turned to <paramref name="angle"/>.</summary>
    public static Transform2D At(Point2D place, double angle) => new(1, angle, false, place - Point2D.Origin);
}
