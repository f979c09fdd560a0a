using System.Collections.Immutable;
using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>How wide the body is at each n, seen along the arms: from the half gap to the half width over all that stands at that n.</summary>
/// <remarks>At one n the side profile spans some heights; the body there is as wide as the fork profile is anywhere within them. Where a fillet of one outline meets a shoulder of the other this is an ellipse, followed by arcs to <see cref="ArcFit.Error"/>.</remarks>
internal sealed class PlanSilhouette
{
    // Far enough from a break for a chord to be found there; near enough that a root start is missed by less than the fit's error.
    private const double Hair = 1e-7;
    private readonly ChordScanner _columns;
    private readonly ChordScanner _fork;
    private readonly double[] _levels;

    public PlanSilhouette(Contour side, Contour fork)
    {
        _columns = ChordScanner.Along(Point2D.Origin, new Vector2D(0, 1), side);
        _fork = ChordScanner.Horizontal(fork);
        _levels = [.. fork.Edges.Select(e => e.Start.Y).Concat(fork.Edges.SelectMany(e => new[] { e.Box.MinY, e.Box.MaxY })).Distinct()];
        Breaks = BreaksOf(side);
    }

    /// <summary>n at which the widths may turn or jump.</summary>
    public ImmutableArray<double> Breaks { get; }

    /// <summary>Half the free gap (zero where the body closes it) and half the width.</summary>
    public (double Inner, double Outer) At(double n)
    {
        double inner = double.PositiveInfinity, outer = 0;
        foreach (Interval column in _columns.At(-n))
        {
            foreach (double z in _levels.Where(l => l > column.From && l < column.To).Append(column.From + (Hair / 10)).Append(column.To - (Hair / 10)))
            {
                ImmutableArray<Interval> chords = _fork.At(z);
                if (chords.IsEmpty)
                    continue;
                outer = Math.Max(outer, chords[^1].To);
                inner = Math.Min(inner, Math.Max(0, chords.Length > 1 ? chords[^1].From : 0));
            }
        }

        return (Math.Min(inner, outer), outer);
    }

    public Contour Outline()
    {
        int first = 0, last = Breaks.Length - 1;
        int closedFrom = first, closedTo = last;
        while (closedFrom < last && At(Middle(closedFrom)).Inner > 1e-6)
            closedFrom++;
        while (closedTo > closedFrom && At(Middle(closedTo - 1)).Inner > 1e-6)
            closedTo--;

        List<Edge> right = Follow(first, last, n => At(n).Outer);
        List<Edge> path = [];
        if (closedFrom > first)
        {
            List<Edge> lower = Follow(first, closedFrom, n => At(n).Inner);
            path.Add(new LineEdge(new(0, lower[^1].End.Y), lower[^1].End));
            path.AddRange(lower.AsEnumerable().Reverse().Select(e => e.Reversed()));
        }

        Join(path, path.Count == 0 ? new(0, Breaks[first]) : path[^1].End, right[0].Start);
        path.AddRange(right);
        if (closedTo < last)
        {
            List<Edge> upper = Follow(closedTo, last, n => At(n).Inner);
            Join(path, path[^1].End, upper[^1].End);
            path.AddRange(upper.AsEnumerable().Reverse().Select(e => e.Reversed()));
            path.Add(new LineEdge(upper[0].Start, new(0, upper[0].Start.Y)));
        }
        else
        {
            Join(path, path[^1].End, new(0, Breaks[last]));
        }

        return Contour.Of([.. path, .. path.AsEnumerable().Reverse().Select(e => e.Transformed(Transform2D.MirrorX).Reversed())]);
    }

    private double Middle(int span) => (Breaks[span] + Breaks[span + 1]) / 2;

    /// <summary>The curve x = f(n) from break to break, joined by level lines where it jumps.</summary>
    private List<Edge> Follow(int from, int to, Func<double, double> f)
    {
        List<Edge> edges = [];
        for (int i = from; i < to; i++)
        {
            double a = Breaks[i], b = Breaks[i + 1], hair = Math.Min(Hair, (b - a) / 4);
            List<Edge> piece = [];
            // Steps shrink toward the ends, where the widths may change like a square root.
            ArcFit.Add(
                piece,
                t =>
                {
                    double n = t <= 0 ? a : t >= 1 ? b : ((a + b) / 2) - ((b - a) / 2 * Math.Cos(t * Math.PI));
                    return new Point2D(f(Math.Clamp(n, a + hair, b - hair)), n);
                },
                0,
                1);
            // Also closes the step of some 1e-4 mm that a hair leaves where the curve starts like a square root.
            if (edges.Count > 0 && piece.Count > 0)
                Join(edges, edges[^1].End, piece[0].Start);
            edges.AddRange(piece);
        }

        return edges;
    }

    private static void Join(List<Edge> path, Point2D from, Point2D to)
    {
        if (from.DistanceTo(to) > Coincidence.Distance)
            path.Add(new LineEdge(from, to));
    }

    private ImmutableArray<double> BreaksOf(Contour side)
    {
        List<double> all = [];
        foreach (Edge edge in side.Edges)
        {
            Box2D box = edge.Box;
            all.Add(box.MinX);
            all.Add(box.MaxX);
            all.Add(edge.Start.X);
            foreach (double level in _levels.Where(l => l > box.MinY && l < box.MaxY))
            {
                LineEdge line = new(new(-1, level), new(1, level));
                all.AddRange(CarrierIntersection.Between(edge, line).Meetings.Where(m => m.Ta is >= 0 and <= 1).Select(m => m.Point.X));
            }
        }

        all.Sort();
        List<double> kept = [];
        foreach (double n in all)
        {
            if (kept.Count == 0 || n - kept[^1] > 1e-6)
                kept.Add(n);
        }

        return [.. kept];
    }
}
