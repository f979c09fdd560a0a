namespace LeverDraw.Geometry;

/// <summary>A box with sides along the axes, millimetres. <see cref="Empty"/> holds nothing and is neutral in <see cref="Union(Box2D)"/>.</summary>
public readonly record struct Box2D(double MinX, double MinY, double MaxX, double MaxY)
{
    public static Box2D Empty => new(double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);

    public bool IsEmpty => MinX > MaxX || MinY > MaxY;

    public double Width => IsEmpty ? 0 : MaxX - MinX;

    public double Height => IsEmpty ? 0 : MaxY - MinY;

    public Point2D Centre => new((MinX + MaxX) / 2, (MinY + MaxY) / 2);

    public static Box2D Of(IEnumerable<Point2D> points)
    {
        Box2D box = Empty;
        foreach (Point2D p in points)
            box = box.Including(p);
        return box;
    }

    public static Box2D Of(Point2D point) => new(point.X, point.Y, point.X, point.Y);

    // Asked by the ten thousand while a sheet is laid out: the processor's own smaller and greater, since no side is ever a NaN.
    public Box2D Including(Point2D p) =>
        new(double.MinNative(MinX, p.X), double.MinNative(MinY, p.Y), double.MaxNative(MaxX, p.X), double.MaxNative(MaxY, p.Y));

    public Box2D Union(Box2D other) =>
        new(double.MinNative(MinX, other.MinX), double.MinNative(MinY, other.MinY), double.MaxNative(MaxX, other.MaxX), double.MaxNative(MaxY, other.MaxY));

    /// <summary>What lies in both; empty where they do not overlap.</summary>
    public Box2D Intersection(Box2D other) =>
        new(Math.Max(MinX, other.MinX), Math.Max(MinY, other.MinY), Math.Min(MaxX, other.MaxX), Math.Min(MaxY, other.MaxY));

    /// <summary>Grown by <paramref name="margin"/> on every side (shrunk when negative).</summary>
    public Box2D Inflated(double margin) => new(MinX - margin, MinY - margin, MaxX + margin, MaxY + margin);

    public Box2D Moved(Vector2D by) => new(MinX + by.X, MinY + by.Y, MaxX + by.X, MaxY + by.Y);

    public bool Contains(Point2D p) => p.X >= MinX && p.X <= MaxX && p.Y >= MinY && p.Y <= MaxY;

    public bool Contains(Box2D other) =>
        other.MinX >= MinX && other.MaxX <= MaxX && other.MinY >= MinY && other.MaxY <= MaxY;

    /// <summary>True when the two share more than an edge.</summary>
    public bool Overlaps(Box2D other) =>
        MinX < other.MaxX && other.MinX < MaxX && MinY < other.MaxY && other.MinY < MaxY;
}
