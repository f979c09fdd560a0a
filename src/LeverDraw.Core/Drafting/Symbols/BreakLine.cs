using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Symbols;

/// <summary>Limits of a partial view (ISO 128-2): a thin straight line with zigzags, or a thin freehand-like line of tangent arcs. Ends and length are the caller's, shapes our own.</summary>
public static class BreakLine
{
    /// <summary>Straight, with one zigzag in the middle: up, down through the line, and back (30° to the line's normal, from memory).</summary>
    /// <param name="height">Of the zigzag to each side of the line.</param>
    public static LineEdge[] Zigzag(Point2D from, Point2D to, double height) => Zigzag(from, to, height, height * Math.Tan(Math.PI / 12));

    /// <summary>The same with a zigzag of any width.</summary>
    /// <param name="quarter">Of its width along the line.</param>
    public static LineEdge[] Zigzag(Point2D from, Point2D to, double height, double quarter)
    {
        Vector2D u = (to - from).Unit();
        Vector2D v = u.Left;
        if ((to - from).Length <= 4 * quarter)
            throw new ArgumentOutOfRangeException(nameof(height), height, "The zigzag is longer than its line.");
        Point2D middle = from + ((to - from) * 0.5);
        Point2D[] points =
        [
            from,
            middle - (u * (2 * quarter)),
            middle - (u * quarter) + (v * height),
            middle + (u * quarter) - (v * height),
            middle + (u * (2 * quarter)),
            to,
        ];
        return [.. Enumerable.Range(0, points.Length - 1).Select(i => new LineEdge(points[i], points[i + 1]))];
    }

    /// <summary>A wavy line of arcs that bulge to alternate sides and join without corners.</summary>
    /// <param name="wave">Wished length of one arc's chord; the arcs share the line evenly.</param>
    public static ArcEdge[] Freehand(Point2D from, Point2D to, double wave)
    {
        double length = (to - from).Length;
        int count = Math.Max(2, (int)Math.Round(length / wave));
        Vector2D u = (to - from).Unit();
        double chord = length / count;
        double half = Math.PI / 6;
        double radius = chord / (2 * Math.Sin(half));
        return [.. Enumerable.Range(0, count).Select(i => Wave(from + (u * (chord * (i + 0.5))), u, i % 2 == 0 ? 1 : -1, radius, half))];
    }

    private static ArcEdge Wave(Point2D middle, Vector2D u, int side, double radius, double half)
    {
        Point2D centre = middle - (u.Left * (side * radius * Math.Cos(half)));
        double top = (u.Left * side).Angle;
        // From the chord's start to its end: clockwise when it bulges to the left.
        return new ArcEdge(centre, radius, top + (side * half), -side * 2 * half);
    }
}
