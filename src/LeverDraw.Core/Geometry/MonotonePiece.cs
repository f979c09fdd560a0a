namespace LeverDraw.Geometry;

/// <summary>A piece of an edge along which y only rises or only falls, held from its lower to its upper end.</summary>
/// <param name="Side">0 for a straight piece; otherwise +1 or −1, the side of its centre an arc's piece lies on.</param>
internal readonly record struct MonotonePiece(double LowX, double LowY, double HighX, double HighY, double CentreX, double CentreY, double Radius, int Side)
{
    /// <summary>x where the piece has height <paramref name="y"/>; at or beyond an end, within <see cref="Coincidence.Distance"/>, that end's x.</summary>
    /// <remarks>Without that slack a line a hair below an arc's top would meet it far to both sides of the top.</remarks>
    public double XAt(double y)
    {
        if (y <= LowY + Coincidence.Distance)
            return LowX;
        if (y >= HighY - Coincidence.Distance)
            return HighX;
        if (Side == 0)
            return LowX + ((HighX - LowX) * ((y - LowY) / (HighY - LowY)));
        double up = y - CentreY;
        double square = (Radius - up) * (Radius + up);
        return CentreX + (Side * (square > 0 ? Math.Sqrt(square) : 0));
    }

    /// <summary>Cuts the contour at its arcs' highest and lowest points. Each piece takes its end from the next edge's start, so that no height falls between two pieces.</summary>
    public static void Collect(Contour contour, List<MonotonePiece> into)
    {
        for (int i = 0; i < contour.Edges.Length; i++)
        {
            Edge edge = contour.Edges[i];
            Point2D from = edge.Start, to = contour.Edges[(i + 1) % contour.Edges.Length].Start;
            if (edge is ArcEdge arc)
                CollectArc(arc, from, to, into);
            else
                Add(from, to, null, 0, into);
        }
    }

    private static void CollectArc(ArcEdge arc, Point2D from, Point2D to, List<MonotonePiece> into)
    {
        double low = Math.Min(arc.StartAngle, arc.EndAngle), high = Math.Max(arc.StartAngle, arc.EndAngle);
        // Tops and bottoms stand at odd multiples of a quarter turn.
        int first = (int)Math.Ceiling((low - (Math.PI / 2)) / Math.PI);
        int last = (int)Math.Floor((high - (Math.PI / 2)) / Math.PI);
        bool forward = arc.Sweep >= 0;
        Point2D at = from;
        double atAngle = arc.StartAngle;
        for (int n = 0; n <= last - first; n++)
        {
            int k = forward ? first + n : last - n;
            double angle = (k * Math.PI) + (Math.PI / 2);
            Point2D turn = new(arc.Centre.X, arc.Centre.Y + (int.IsEvenInteger(k) ? arc.Radius : -arc.Radius));
            Add(at, turn, arc, (atAngle + angle) / 2, into);
            (at, atAngle) = (turn, angle);
        }

        Add(at, to, arc, (atAngle + arc.EndAngle) / 2, into);
    }

    private static void Add(Point2D p, Point2D q, ArcEdge? arc, double middleAngle, List<MonotonePiece> into)
    {
        if (p.Y == q.Y)
            return;
        if (p.Y > q.Y)
            (p, q) = (q, p);
        into.Add(arc is null
            ? new MonotonePiece(p.X, p.Y, q.X, q.Y, 0, 0, 0, 0)
            : new MonotonePiece(p.X, p.Y, q.X, q.Y, arc.Centre.X, arc.Centre.Y, arc.Radius, Math.Cos(middleAngle) >= 0 ? 1 : -1));
    }
}
