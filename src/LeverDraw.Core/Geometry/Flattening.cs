using System.Collections.Immutable;

namespace LeverDraw.Geometry;

/// <summary>Points on an edge or contour such that the chords between them stay within a stated error of it. For output that knows no arcs, and for checks; no other part of the kernel flattens.</summary>
public static class Flattening
{
    /// <summary>From start to end, both included. Points lie on the arc, so chords err to its inside only.</summary>
    /// <param name="maxError">Largest distance between chord and arc, millimetres, above zero.</param>
    public static ImmutableArray<Point2D> Of(Edge edge, double maxError)
    {
        int pieces = PieceCount(edge, maxError);
        ImmutableArray<Point2D>.Builder points = ImmutableArray.CreateBuilder<Point2D>(pieces + 1);
        points.Add(edge.Start);
        for (int i = 1; i < pieces; i++)
            points.Add(edge.PointAt((double)i / pieces));
        points.Add(edge.End);
        return points.MoveToImmutable();
    }

    /// <summary>The first point is not repeated at the end.</summary>
    public static ImmutableArray<Point2D> Of(Contour contour, double maxError)
    {
        ImmutableArray<Point2D>.Builder points = ImmutableArray.CreateBuilder<Point2D>();
        foreach (Edge edge in contour.Edges)
        {
            ImmutableArray<Point2D> own = Of(edge, maxError);
            points.AddRange(own.AsSpan(0, own.Length - 1));
        }

        return points.DrainToImmutable();
    }

    private static int PieceCount(Edge edge, double maxError)
    {
        if (!(maxError > 0))
            throw new ArgumentOutOfRangeException(nameof(maxError), "The error allowed must be above zero.");
        if (edge is not ArcEdge arc)
            return 1;
        // Sagitta of a chord over an angle w: R(1 − cos(w/2)) = 2R sin²(w/4). A quarter turn at most keeps circles round.
        double step = Math.Min(4 * Math.Asin(Math.Min(1, Math.Sqrt(maxError / (2 * arc.Radius)))), Math.PI / 2);
        return Math.Max(1, (int)Math.Ceiling(Math.Abs(arc.Sweep) / step));
    }
}
