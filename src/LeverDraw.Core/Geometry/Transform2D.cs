namespace LeverDraw.Geometry;

/// <summary>A similarity of the plane: mirror in the y axis if asked, then turn, then scale, then move. Keeps lines lines and arcs arcs.</summary>
/// <param name="Scale">Above zero.</param>
/// <param name="Rotation">Radians, counter-clockwise.</param>
public readonly record struct Transform2D(double Scale, double Rotation, bool Mirrored, Vector2D Translation)
{
    /// <summary>Not to be set by itself: its sine and cosine, kept beside it, would be left behind.</summary>
    public double Rotation { get; } = Rotation;

    private readonly double _sin = Rotation == 0 ? 0 : Math.Sin(Rotation);
    private readonly double _cos = Rotation == 0 ? 1 : Math.Cos(Rotation);

    public static Transform2D Identity => new(1, 0, false, default);

    public static Transform2D Move(double x, double y) => new(1, 0, false, new Vector2D(x, y));

    public static Transform2D Turn(double radians) => new(1, radians, false, default);

    public static Transform2D Enlarge(double factor) => new(factor, 0, false, default);

    /// <summary>x becomes −x.</summary>
    public static Transform2D MirrorX => new(1, 0, true, default);

    public Vector2D Apply(Vector2D v)
    {
        double x = Mirrored ? -v.X : v.X;
        if (Rotation == 0)
            return new Vector2D(x * Scale, v.Y * Scale);
        return new Vector2D(((x * _cos) - (v.Y * _sin)) * Scale, ((x * _sin) + (v.Y * _cos)) * Scale);
    }

    public Point2D Apply(Point2D p) => Point2D.Origin + Apply(p - Point2D.Origin) + Translation;

    /// <summary>The direction angle that a direction of <paramref name="radians"/> has afterwards.</summary>
    public double ApplyToDirection(double radians) => (Mirrored ? Math.PI - radians : radians) + Rotation;

    /// <summary>First this, then <paramref name="next"/>.</summary>
    public Transform2D Then(Transform2D next) =>
        new(
            Scale * next.Scale,
            next.Mirrored ? next.Rotation - Rotation : next.Rotation + Rotation,
            Mirrored ^ next.Mirrored,
            next.Apply(Translation) + next.Translation);
}
