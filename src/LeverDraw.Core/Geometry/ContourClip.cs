using System.Collections.Immutable;

namespace LeverDraw.Geometry;

/// <summary>Parts of outlines, closed along the cut.</summary>
public static class ContourClip
{
    /// <summary>The part of the area to the left of the directed line, as contours running the way the given one does. What only touches the line doesn't count.</summary>
    /// <exception cref="ArgumentException">The direction is the zero vector.</exception>
    /// <exception cref="InvalidOperationException">The contour crosses itself, so its parts don't close.</exception>
    public static ImmutableArray<Contour> ByLine(Contour contour, Point2D on, Vector2D direction)
    {
        if (direction.Length == 0)
            throw new ArgumentException("A line needs a direction.", nameof(direction));
        if (ContourMeasure.Area(contour) < 0)
            return [.. ByLine(contour.Reversed(), on, direction).Select(c => c.Reversed())];

        LineCut line = new(on, direction.Unit());
        List<Edge> pieces = Cut(contour, line);
        int all = pieces.Count;
        pieces.RemoveAll(p => !line.IsLeft(p));
        if (pieces.Count == 0)
            return [];
        if (pieces.Count == all && all == contour.Edges.Length)
            return [contour];
        AddClosing(line, pieces);
        return PieceChains.Close(pieces);
    }

    /// <summary>The pieces of an outline to the left of the directed line, not closed along it: enough where only their extent counts.</summary>
    /// <param name="direction">Of length one.</param>
    internal static List<Edge> PiecesLeftOf(Contour contour, Point2D on, Vector2D direction)
    {
        LineCut line = new(on, direction);
        List<Edge> pieces = Cut(contour, line);
        pieces.RemoveAll(p => !line.IsLeft(p));
        return pieces;
    }

    private static List<Edge> Cut(Contour contour, LineCut line)
    {
        List<Edge> pieces = new(contour.Edges.Length + 4);
        List<double> cuts = [];
        foreach (Edge edge in contour.Edges)
        {
            cuts.Clear();
            line.AddCuts(edge, cuts);
            EdgeCuts.Split(edge, cuts, 0, pieces);
        }

        return pieces;
    }

    /// <summary>The part of the area inside the box.</summary>
    public static ImmutableArray<Contour> ToBox(Contour contour, Box2D box)
    {
        if (box.IsEmpty)
            return [];
        ImmutableArray<Contour> parts = [contour];
        Point2D low = new(box.MinX, box.MinY), high = new(box.MaxX, box.MaxY);
        parts = [.. parts.SelectMany(c => ByLine(c, low, new Vector2D(1, 0)))];
        parts = [.. parts.SelectMany(c => ByLine(c, high, new Vector2D(0, 1)))];
        parts = [.. parts.SelectMany(c => ByLine(c, high, new Vector2D(-1, 0)))];
        return [.. parts.SelectMany(c => ByLine(c, low, new Vector2D(0, -1)))];
    }

    // Along the line, what is kept ends (comes down to the line) and starts again (goes up from it) in turn; each end is joined to the start after it.
    // Taking the pieces' own ends, and not chords found separately, keeps both sides of the bookkeeping alike however close the line grazes.
    private static void AddClosing(LineCut line, List<Edge> pieces)
    {
        List<(double At, bool IsEnd, Point2D Point)> open = [];
        foreach (Edge piece in pieces)
        {
            if (Math.Abs(line.Height(piece.Start)) <= PieceChains.Reach)
                open.Add((line.Along.Dot(piece.Start - line.On), false, piece.Start));
            if (Math.Abs(line.Height(piece.End)) <= PieceChains.Reach)
                open.Add((line.Along.Dot(piece.End - line.On), true, piece.End));
        }

        open.Sort((p, q) => p.At.CompareTo(q.At));
        while (open.Count > 0)
        {
            Point2D from = Take(open, true), to = Take(open, false);
            if (from.DistanceTo(to) > Coincidence.Distance)
                pieces.Add(new LineEdge(from, to));
        }
    }

    // At one place on the line, starts and ends stand in no order of their own: the kind wanted is taken.
    private static Point2D Take(List<(double At, bool IsEnd, Point2D Point)> open, bool end)
    {
        int i = open.FindIndex(e => e.IsEnd == end);
        if (i < 0 || open[i].At - open[0].At > PieceChains.Reach)
            throw new InvalidOperationException("The pieces of an outline don't alternate along the line that cuts it.");
        Point2D point = open[i].Point;
        open.RemoveAt(i);
        return point;
    }
}
