using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>What a straight piece of ink is, as far as placing is concerned.</summary>
public enum StrokeKind : byte
{
    /// <summary>Part of the view: outlines, hidden edges.</summary>
    Feature,

    /// <summary>Centre lines and section lining: may be crossed freely by lines, not by lettering.</summary>
    Light,
    DimensionLine,
    ExtensionLine,
    Leader,
}

/// <summary>A straight piece of ink, for collision tests. Arcs come as short chords.</summary>
public readonly record struct Stroke(Point2D A, Point2D B, StrokeKind Kind)
{
    public Box2D Bounds => Box2D.Empty.Including(A).Including(B);

    /// <summary>True when the two cross at a point inside both (sharing an end is not a crossing).</summary>
    public bool Crosses(in Stroke other)
    {
        double d1 = Side(A, B, other.A);
        double d2 = Side(A, B, other.B);
        if (d1 * d2 >= 0)
            return false;
        double d3 = Side(other.A, other.B, A);
        double d4 = Side(other.A, other.B, B);
        return d3 * d4 < 0;
    }

    /// <summary>True when the two run along each other, nearer than <paramref name="distance"/>, over more than a point.</summary>
    public bool RunsAlong(in Stroke other, double distance)
    {
        Vector2D u = (B - A).Unit();
        Vector2D w = (other.B - other.A).Unit();
        if (Math.Abs(u.Cross(w)) > 1e-3 || Math.Abs(u.Cross(other.A - A)) > distance)
            return false;
        double length = (B - A).Length;
        double s = u.Dot(other.A - A);
        double t = u.Dot(other.B - A);
        return Math.Max(s, t) > 0.3 && Math.Min(s, t) < length - 0.3;
    }

    private static double Side(Point2D a, Point2D b, Point2D p) => (b - a).Cross(p - a);
}
