namespace LeverDraw.Geometry;

/// <summary>A point in the plane, millimetres. The kernel's raw layer: plain doubles, no checks.</summary>
public readonly record struct Point2D(double X, double Y)
{
    public static Point2D Origin => default;

    public static Vector2D operator -(Point2D a, Point2D b) => new(a.X - b.X, a.Y - b.Y);

    public static Point2D operator +(Point2D p, Vector2D v) => new(p.X + v.X, p.Y + v.Y);

    public static Point2D operator -(Point2D p, Vector2D v) => new(p.X - v.X, p.Y - v.Y);

    public static Point2D Lerp(Point2D a, Point2D b, double t) => new(a.X + ((b.X - a.X) * t), a.Y + ((b.Y - a.Y) * t));

    public double DistanceTo(Point2D other) => (other - this).Length;
}
