using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>What a candidate generator needs to know: the view, its scale, its box on paper, the style.</summary>
/// <param name="ToBlock">From view millimetres to the block's paper millimetres (scale and turn, no shift).</param>
/// <param name="Bounds">Of the view's own ink, block millimetres.</param>
public sealed record PlacingContext(string View, Transform2D ToBlock, Box2D Bounds, DraftingStyle Style)
{
    public double Scale => ToBlock.Scale;

    /// <summary>The labels measured so far.</summary>
    internal LabelStore Labels { get; init; } = new();

    /// <summary>Of the view itself.</summary>
    internal IReadOnlyList<Stroke> Strokes { get; init; } = [];

    /// <summary>Of a detail the thin circle round it, on which no dimension line should lie.</summary>
    internal ArcEdge? Circle { get; init; }

    /// <summary>Thin circles in the view, such as those that mark details; block millimetres.</summary>
    internal ImmutableArray<ArcEdge> Circles { get; init; } = [];

    /// <summary>Whether a line of a view is one of these.</summary>
    internal static bool IsThinCircle(LineRole role, Edge edge) => role == LineRole.Dimension && edge is ArcEdge { IsFullCircle: true };

    /// <summary>Reading direction for lettering along a line: from the bottom or from the right of the sheet.</summary>
    public static double ReadingAngle(double direction)
    {
        double angle = Math.IEEERemainder(direction, Math.PI);
        // A hair under vertical still reads from the right.
        return angle <= (-Math.PI / 2) + 1e-9 ? angle + Math.PI : angle;
    }

    /// <summary>Least and greatest extent of the view along a direction.</summary>
    public (double Min, double Max) Extent(Vector2D along)
    {
        double[] corners =
        [
            along.Dot(new Vector2D(Bounds.MinX, Bounds.MinY)), along.Dot(new Vector2D(Bounds.MaxX, Bounds.MinY)),
            along.Dot(new Vector2D(Bounds.MinX, Bounds.MaxY)), along.Dot(new Vector2D(Bounds.MaxX, Bounds.MaxY)),
        ];
        return (corners.Min(), corners.Max());
    }

    /// <summary>Whether an outline crosses the line between two points.</summary>
    internal bool IsOutlineBetween(Point2D from, Point2D to)
    {
        var line = new Stroke(from, to, StrokeKind.DimensionLine);
        foreach (Stroke stroke in Strokes)
        {
            if (stroke.Kind == StrokeKind.Feature && line.IsNear(stroke, 0) && line.Crosses(stroke))
                return true;
        }

        return false;
    }

    /// <summary>Least and greatest extent to the left of a direction of what is seen between two places along it; empty where nothing is.</summary>
    internal Interval ExtentBetween(Vector2D along, double from, double to)
    {
        double least = double.PositiveInfinity, most = double.NegativeInfinity;
        foreach (Stroke stroke in Strokes)
        {
            if (stroke.Kind != StrokeKind.Feature && Circle is null)
                continue;
            double a = along.Dot(stroke.A - Point2D.Origin), b = along.Dot(stroke.B - Point2D.Origin);
            if (Math.Max(a, b) <= from || Math.Min(a, b) >= to)
                continue;
            double start = a == b ? 0 : Math.Clamp((from - a) / (b - a), 0, 1), end = a == b ? 1 : Math.Clamp((to - a) / (b - a), 0, 1);
            foreach (double share in (ReadOnlySpan<double>)[start, end])
            {
                double aside = along.Left.Dot(Point2D.Lerp(stroke.A, stroke.B, share) - Point2D.Origin);
                (least, most) = (Math.Min(least, aside), Math.Max(most, aside));
            }
        }

        return new Interval(least, most);
    }
}
