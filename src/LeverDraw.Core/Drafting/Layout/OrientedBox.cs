using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>A rectangle at any angle: the ink box of a piece of lettering, for collision tests. Paper millimetres.</summary>
public readonly struct OrientedBox
{
    private readonly double _cos;
    private readonly double _sin;

    /// <param name="angle">Of its length, radians.</param>
    public OrientedBox(Point2D centre, double halfLength, double halfHeight, double angle)
        : this(centre, halfLength, halfHeight, angle, angle == 0 ? new Vector2D(1, 0) : Vector2D.FromAngle(angle))
    {
    }

    /// <param name="along">Its length's direction, that of <paramref name="angle"/>.</param>
    private OrientedBox(Point2D centre, double halfLength, double halfHeight, double angle, Vector2D along)
    {
        Centre = centre;
        HalfLength = halfLength;
        HalfHeight = halfHeight;
        Angle = angle;
        (_sin, _cos) = (along.Y, along.X);
        double ex = (Math.Abs(_cos) * halfLength) + (Math.Abs(_sin) * halfHeight);
        double ey = (Math.Abs(_sin) * halfLength) + (Math.Abs(_cos) * halfHeight);
        Bounds = new Box2D(centre.X - ex, centre.Y - ey, centre.X + ex, centre.Y + ey);
    }

    public Point2D Centre { get; }

    public double HalfLength { get; }

    public double HalfHeight { get; }

    public double Angle { get; }

    /// <summary>Direction of its length, length one.</summary>
    public Vector2D Along => new(_cos, _sin);

    public Box2D Bounds { get; }

    /// <summary>From the left end of its lower side, reading direction <paramref name="angle"/>.</summary>
    public static OrientedBox FromCorner(Point2D corner, double length, double height, double angle) =>
        FromCorner(corner, length, height, angle, Vector2D.FromAngle(angle), 0);

    /// <param name="along">The direction of <paramref name="angle"/>, length one: known where many boxes lie the same way.</param>
    /// <param name="margin">By which the box is larger on every side.</param>
    public static OrientedBox FromCorner(Point2D corner, double length, double height, double angle, Vector2D along, double margin) =>
        new(corner + (along * (length / 2)) + (along.Left * (height / 2)), (length / 2) + margin, (height / 2) + margin, angle, along);

    public OrientedBox Inflated(double margin) => new(Centre, HalfLength + margin, HalfHeight + margin, Angle, new Vector2D(_cos, _sin));

    public OrientedBox Moved(Vector2D by) => new(Centre + by, HalfLength, HalfHeight, Angle);

    public bool Overlaps(in OrientedBox other)
    {
        if (!Bounds.Overlaps(other.Bounds))
            return false;
        return !SeparatedAlongAxesOf(this, other) && !SeparatedAlongAxesOf(other, this);
    }

    /// <summary>True when any part of the segment lies inside.</summary>
    public bool Meets(Point2D a, Point2D b)
    {
        if ((a.X < Bounds.MinX && b.X < Bounds.MinX) || (a.X > Bounds.MaxX && b.X > Bounds.MaxX) || (a.Y < Bounds.MinY && b.Y < Bounds.MinY) || (a.Y > Bounds.MaxY && b.Y > Bounds.MaxY))
            return false;
        (double ax, double ay) = Local(a);
        (double bx, double by) = Local(b);
        double from = 0;
        double to = 1;
        return Clip(ax, bx - ax, HalfLength, ref from, ref to) && Clip(ay, by - ay, HalfHeight, ref from, ref to);
    }

    /// <summary>Whether a segment comes within a margin of any of the boxes.</summary>
    public static bool AnyMeets(ReadOnlySpan<OrientedBox> boxes, Point2D a, Point2D b, double margin)
    {
        foreach (ref readonly OrientedBox box in boxes)
        {
            if (box.Inflated(margin).Meets(a, b))
                return true;
        }

        return false;
    }

    private static bool Clip(double start, double delta, double half, ref double from, ref double to)
    {
        if (delta == 0)
            return Math.Abs(start) < half;
        double t0 = (-half - start) / delta;
        double t1 = (half - start) / delta;
        if (t0 > t1)
            (t0, t1) = (t1, t0);
        from = Math.Max(from, t0);
        to = Math.Min(to, t1);
        return from < to;
    }

    private static bool SeparatedAlongAxesOf(in OrientedBox a, in OrientedBox b)
    {
        (double x, double y) = a.Local(b.Centre);
        double cos = Math.Abs((a._cos * b._cos) + (a._sin * b._sin));
        double sin = Math.Abs((a._cos * b._sin) - (a._sin * b._cos));
        return Math.Abs(x) >= a.HalfLength + (cos * b.HalfLength) + (sin * b.HalfHeight)
            || Math.Abs(y) >= a.HalfHeight + (sin * b.HalfLength) + (cos * b.HalfHeight);
    }

    private (double X, double Y) Local(Point2D p)
    {
        double dx = p.X - Centre.X;
        double dy = p.Y - Centre.Y;
        return ((dx * _cos) + (dy * _sin), (dy * _cos) - (dx * _sin));
    }
}
