using LeverDraw.Geometry;

namespace LeverDraw.Parts.Outlines;

/// <summary>Lines and arcs that follow a smooth curve which is neither, such as an ellipse a slanted face shows; never farther off than <see cref="Error"/>.</summary>
internal static class ArcFit
{
    /// <summary>Largest distance from the true curve at the points tried, millimetres; views only, no size is taken from such an edge.</summary>
    public const double Error = 0.001;

    public static void Add(List<Edge> into, Func<double, Point2D> curve, double from, double to) =>
        Add(into, curve, from, to, curve(from), curve(to), 0);

    private static void Add(List<Edge> into, Func<double, Point2D> curve, double from, double to, Point2D start, Point2D end, int depth)
    {
        if (start.DistanceTo(end) <= 1e-7)
            return;
        Edge fit = Through(start, curve((from + to) / 2), end);
        if (depth < 8 && !Follows(fit, curve, from, to))
        {
            double middle = (from + to) / 2;
            Point2D at = curve(middle);
            Add(into, curve, from, middle, start, at, depth + 1);
            Add(into, curve, middle, to, at, end, depth + 1);
            return;
        }

        into.Add(fit);
    }

    private static bool Follows(Edge fit, Func<double, Point2D> curve, double from, double to)
    {
        if (fit is ArcEdge { Sweep: > 1.5 or < -1.5 })
            return false;
        for (int i = 1; i < 8; i++)
        {
            if (i != 4 && EdgeProjection.Nearest(fit, curve(from + ((to - from) * i / 8))).Distance > Error / 2)
                return false;
        }

        return true;
    }

    private static Edge Through(Point2D a, Point2D b, Point2D c)
    {
        Vector2D ab = b - a, ac = c - a;
        double cross = ab.Cross(ac), length = ac.Length;
        if (Math.Abs(cross) / length <= Error / 10)
            return new LineEdge(a, c);
        double abSquare = ab.Dot(ab), acSquare = ac.Dot(ac);
        Vector2D toCentre = new(((ac.Y * abSquare) - (ab.Y * acSquare)) / (2 * cross), ((ab.X * acSquare) - (ac.X * abSquare)) / (2 * cross));
        return ArcEdge.Between(a + toCentre, a, c, cross > 0);
    }
}
