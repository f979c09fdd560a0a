using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>What a straight piece of ink is, as far as placing is concerned.</summary>
public enum StrokeKind : byte
{
    /// <summary>Part of the view: outlines, hidden edges.</summary>
    Feature,

    /// <summary>Centre lines and the like: may be crossed freely by lines, not by lettering.</summary>
    Light,

    /// <summary>Section lining: crossed by extension lines, by leaders and dimension lines only where little of it is.</summary>
    Lining,
    DimensionLine,
    ExtensionLine,
    Leader,

    /// <summary>A cutting plane's end: nothing may run along it or through it.</summary>
    Mark,
}

/// <summary>A straight piece of ink, for collision tests. Arcs come as short chords. The direction is worked out once: the tests run by the ten thousand.</summary>
public readonly struct Stroke
{
    private readonly double _ux;
    private readonly double _uy;
    private readonly double _length;

    public Stroke(Point2D a, Point2D b, StrokeKind kind)
    {
        A = a;
        B = b;
        Kind = kind;
        double dx = b.X - a.X;
        double dy = b.Y - a.Y;
        _length = Math.Sqrt((dx * dx) + (dy * dy));
        (_ux, _uy) = _length > 0 ? (dx / _length, dy / _length) : (0, 0);
        (double minX, double maxX) = a.X < b.X ? (a.X, b.X) : (b.X, a.X);
        (double minY, double maxY) = a.Y < b.Y ? (a.Y, b.Y) : (b.Y, a.Y);
        Bounds = new Box2D(minX, minY, maxX, maxY);
    }

    public Point2D A { get; }

    public Point2D B { get; }

    public StrokeKind Kind { get; }

    public Box2D Bounds { get; }

    /// <summary>True when the boxes of the two come within a distance of each other.</summary>
    public bool IsNear(in Stroke other, double distance) =>
        Bounds.MinX - distance <= other.Bounds.MaxX && other.Bounds.MinX - distance <= Bounds.MaxX
        && Bounds.MinY - distance <= other.Bounds.MaxY && other.Bounds.MinY - distance <= Bounds.MaxY;

    /// <summary>True when the two cross at a point inside both (sharing an end is not a crossing).</summary>
    public bool Crosses(in Stroke other) =>
        Side(other.A) * Side(other.B) < 0 && other.Side(A) * other.Side(B) < 0;

    /// <summary>True when the two run along each other, nearer than <paramref name="distance"/>, over more than a point.</summary>
    public bool RunsAlong(in Stroke other, double distance)
    {
        if (Math.Abs((_ux * other._uy) - (_uy * other._ux)) > 1e-3 || Math.Abs(Side(other.A)) > distance)
            return false;
        double s = (_ux * (other.A.X - A.X)) + (_uy * (other.A.Y - A.Y));
        double t = (_ux * (other.B.X - A.X)) + (_uy * (other.B.Y - A.Y));
        return Math.Max(s, t) > 0.3 && Math.Min(s, t) < _length - 0.3;
    }

    /// <summary>True when the two lie at nearly the same slant (within 5 degrees) beside each other, nearer than <paramref name="distance"/>, over more than a millimetre: the eye takes one for the other.</summary>
    public bool LiesBeside(in Stroke other, double distance)
    {
        const double Slant = 0.0872;
        return SineTo(other) <= Slant && RunsBeside(other, distance);
    }

    /// <summary>True when, at whatever slant, the two lie beside each other over more than a millimetre, on average nearer than <paramref name="distance"/>.</summary>
    public bool RunsBeside(in Stroke other, double distance)
    {
        const double Least = 1;
        double s = (_ux * (other.A.X - A.X)) + (_uy * (other.A.Y - A.Y));
        double t = (_ux * (other.B.X - A.X)) + (_uy * (other.B.Y - A.Y));
        double from = Math.Max(0, Math.Min(s, t)), to = Math.Min(_length, Math.Max(s, t));
        if (to - from < Least)
            return false;
        double share = (((from + to) / 2) - s) / (t - s);
        return Math.Abs(Side(other.A) + ((Side(other.B) - Side(other.A)) * share)) < distance;
    }

    /// <summary>From a point to the nearest of this stroke.</summary>
    public double DistanceTo(Point2D p) => FromPoint(p, A, B);

    /// <summary>Sine of the angle between the two lines, 0 to 1.</summary>
    public double SineTo(in Stroke other) => Math.Abs((_ux * other._uy) - (_uy * other._ux));

    /// <summary>Where the two lines cross: its distance from the nearer end of this one. Not for parallels.</summary>
    public double FromEnd(in Stroke other)
    {
        double from = other.Side(A), to = other.Side(B), at = _length * from / (from - to);
        return Math.Min(at, _length - at);
    }

    public double Length => _length;

    /// <summary>Distance to the left of the stroke's line.</summary>
    private double Side(Point2D p) => (_ux * (p.Y - A.Y)) - (_uy * (p.X - A.X));

    /// <summary>Between the nearest points of two lines, each given by its ends.</summary>
    public static double Distance(Point2D a, Point2D b, Point2D c, Point2D d)
    {
        Vector2D u = b - a, v = d - c;
        double turn = u.Cross(v);
        if (turn != 0)
        {
            double s = (c - a).Cross(v) / turn, t = (c - a).Cross(u) / turn;
            if (s is >= 0 and <= 1 && t is >= 0 and <= 1)
                return 0;
        }

        return Math.Min(Math.Min(FromPoint(a, c, d), FromPoint(b, c, d)), Math.Min(FromPoint(c, a, b), FromPoint(d, a, b)));
    }

    private static double FromPoint(Point2D p, Point2D a, Point2D b)
    {
        Vector2D along = b - a;
        double share = along == default ? 0 : Math.Clamp((p - a).Dot(along) / along.Dot(along), 0, 1);
        return p.DistanceTo(a + (along * share));
    }
}
