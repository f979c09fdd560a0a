using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>A level word about a middle, such as the letter of a section, a detail or an auxiliary view.</summary>
/// <param name="height">Of the lettering, paper millimetres.</param>
internal readonly struct CentredWord(string text, double height, DraftingStyle style)
{
    public double Width { get; } = StrokeLettering.WidthOf(text, height);

    public double Height => height;

    public bool IsEmpty => text.Length == 0;

    /// <summary>With the style's clearance all round.</summary>
    public OrientedBox Box(Point2D middle) => new(middle, (Width / 2) + style.Clearance, (Height / 2) + style.Clearance, 0);

    public PlotText Ink(Point2D middle, string view) =>
        StrokeLettering.Compose(text, middle - new Vector2D(Width / 2, Height / 2), Height, 0, null, view);
}
