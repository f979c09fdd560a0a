namespace LeverDraw.Geometry;

/// <summary>The point of one contour that lies farthest from another, and the other's nearest point to it.</summary>
/// <param name="From">On the first contour.</param>
/// <param name="To">On the second; the line between them is square to it unless it is a corner.</param>
/// <param name="Distance">Millimetres; the true greatest distance is at most <see cref="LargestDistance.Error"/> more.</param>
public readonly record struct FarthestPoint(Point2D From, Point2D To, double Distance);

/// <summary>The one-sided largest distance between contours (the directed Hausdorff distance), on the exact lines and arcs.</summary>
/// <remarks>Branch and bound: pieces of the first contour are halved, the most promising first, until no piece can hold a point farther away than the best found.
/// The bound of a piece is the least, over the other contour's edges, of the greatest distance to that edge (<see cref="DistanceRange"/>).</remarks>
public static class LargestDistance
{
    /// <summary>How much farther away than the point found another may lie, millimetres.</summary>
    public const double Error = 1e-6;

    public static FarthestPoint Between(Contour from, Contour to)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        Search search = new(to);
        foreach (Edge edge in from.Edges)
            search.Look(edge.Start);
        foreach (Edge edge in from.Edges)
            search.Add(new Piece(edge, 0, 1));
        return search.Run();
    }

    private readonly record struct Piece(Edge Edge, double From, double To)
    {
        public double Middle => (From + To) / 2;
    }

    private sealed class Search(Contour to)
    {
        private readonly PriorityQueue<Piece, double> _open = new();
        private FarthestPoint _best = new(default, default, -1);

        public void Look(Point2D p)
        {
            NearestOnContour near = ContourQueries.NearestPoint(to, p);
            if (near.Distance > _best.Distance)
                _best = new FarthestPoint(p, near.Point, near.Distance);
        }

        public void Add(Piece piece)
        {
            Edge edge = piece.Edge.Trimmed(piece.From, piece.To);
            double bound = double.PositiveInfinity;
            foreach (Edge target in to.Edges)
            {
                bound = Math.Min(bound, DistanceRange.MostTo(edge, target));
                if (bound <= _best.Distance + Error)
                    return;
            }

            Look(edge.PointAt(0.5));
            _open.Enqueue(piece, -bound);
        }

        public FarthestPoint Run()
        {
            while (_open.TryDequeue(out Piece piece, out double negative) && -negative > _best.Distance + Error)
            {
                Add(piece with { To = piece.Middle });
                Add(piece with { From = piece.Middle });
            }

            return _best;
        }
    }
}
