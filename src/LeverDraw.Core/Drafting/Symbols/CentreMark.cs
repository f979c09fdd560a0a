using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Symbols;

/// <summary>Centre of a circle or arc marked by two short crossed lines, or by centre lines that stand out of the circle (ISO 128-2 practice, from memory).</summary>
public static class CentreMark
{
    /// <summary>A small cross: each line of the given length, for arcs whose centre only has to be shown.</summary>
    public static LineEdge[] Cross(Point2D centre, double length) => Lines(centre, length / 2);

    /// <summary>Two centre lines from rim to rim; a view's ink lets centre lines stand out by the style's overshoot.</summary>
    public static LineEdge[] Through(Point2D centre, double radius) => Lines(centre, radius);

    private static LineEdge[] Lines(Point2D at, double reach) =>
    [
        new(at - new Vector2D(reach, 0), at + new Vector2D(reach, 0)),
        new(at - new Vector2D(0, reach), at + new Vector2D(0, reach)),
    ];
}
