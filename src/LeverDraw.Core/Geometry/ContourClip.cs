using System.Collections.Immutable;

namespace LeverDraw.Geometry;

/// <summary>Parts of outlines, closed along the cut.</summary>
public static class ContourClip
{
    /// <summary>The part of the area to the left of the directed line, as contours running the way the given one does. What only touches the line doesn't count.</summary>
    /// <exception cref="ArgumentException">The direction is the zero vector.</exception>
    public static ImmutableArray<Contour> ByLine(Contour contour, Point2D on, Vector2D direction)
    {
        if (direction.Length == 0)
            throw new ArgumentException("A line needs a direction.", nameof(direction));
        if (ContourMeasure.Area(contour) < 0)
            return [.. ByLine(contour.Reversed(), on, direction).Select(c => c.Reversed())];

        LineCut line = new(on, direction.Unit());
        List<Edge> pieces = [];
        List<double> cuts = [];
        foreach (Edge edge in contour.Edges)
        {
            cuts.Clear();
            line.AddCuts(edge, cuts);
            EdgeCuts.Split(edge, cuts, 0, pieces);
        }

        int all = pieces.Count;
        pieces.RemoveAll(p => !line.IsLeft(p));
        if (pieces.Count == 0)
            return [];
        if (pieces.Count == all && all == contour.Edges.Length)
            return [contour];
        AddClosing(contour, line, pieces);
        return PieceChains.Close(pieces);
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

    // The chords a hair to the left of the line bound the part from below, travelling with the line.
    private static void AddClosing(Contour contour, LineCut line, List<Edge> pieces)
    {
        ChordScanner scanner = ChordScanner.Along(line.On, line.Along, contour);
        double[] ends = new double[scanner.MaxIntervals];
        int count = scanner.Crossings(0, true, ends, out _);
        for (int i = 0; i + 1 < count; i += 2)
        {
            if (ends[i + 1] - ends[i] > Coincidence.Distance)
                pieces.Add(new LineEdge(line.On + (line.Along * ends[i]), line.On + (line.Along * ends[i + 1])));
        }
    }
}
