using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>A filled arrowhead, three times as long as wide (reference 10h: inch practice 3:1; the ISO form is wider, from memory).</summary>
public static class Arrowhead
{
    /// <param name="direction">The way it points, length one.</param>
    public static PlotFill At(Point2D tip, Vector2D direction, DraftingStyle style, string? owner, string view)
    {
        Point2D back = tip - (direction * style.ArrowLength);
        Vector2D half = direction.Left * style.ArrowHalfWidth;
        return new PlotFill(LineRole.Dimension, [tip, back + half, back - half], owner, view);
    }

    /// <summary>Its widest place, for collision tests.</summary>
    public static Stroke Back(Point2D tip, Vector2D direction, DraftingStyle style)
    {
        Point2D back = tip - (direction * style.ArrowLength);
        Vector2D half = direction.Left * style.ArrowHalfWidth;
        return new Stroke(back + half, back - half, StrokeKind.DimensionLine);
    }

    /// <summary>From the middle of an arrowhead's back to its point: what the back alone says of it.</summary>
    internal static Vector2D Pointing(in Stroke back) => (back.B - back.A).Left * DraftingStyle.ArrowSlimness;

    internal static Point2D Tip(in Stroke back) => Point2D.Lerp(back.A, back.B, 0.5) + Pointing(back);

    /// <param name="least">Its radius, millimetres, where it must be told from an outline it lies on.</param>
    public static PlotFill Dot(Point2D at, DraftingStyle style, string? owner, string view, double least = 0)
    {
        double r = Math.Max(least, style.ArrowLength / 6);
        return new PlotFill(LineRole.Dimension, [.. Enumerable.Range(0, 12).Select(i => at + (Vector2D.FromAngle(i * Math.PI / 6) * r))], owner, view);
    }
}
