namespace LeverDraw.Geometry;

/// <summary>A displacement in the plane, millimetres (or a direction, without unit, when of length one).</summary>
public readonly record struct Vector2D(double X, double Y)
{
    public double Length => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>The direction's angle from +x, counter-clockwise, in (−π, π].</summary>
    public double Angle => Math.Atan2(Y, X);

    /// <summary>Turned a quarter turn to the left.</summary>
    public Vector2D Left => new(-Y, X);

    public static Vector2D operator +(Vector2D a, Vector2D b) => new(a.X + b.X, a.Y + b.Y);

    public static Vector2D operator -(Vector2D a, Vector2D b) => new(a.X - b.X, a.Y - b.Y);

    public static Vector2D operator -(Vector2D a) => new(-a.X, -a.Y);

    public static Vector2D operator *(Vector2D a, double k) => new(a.X * k, a.Y * k);

    public static Vector2D operator *(double k, Vector2D a) => a * k;

    public static Vector2D FromAngle(double radians)
    {
        // Most lettering lies level.
        if (radians == 0)
            return new Vector2D(1, 0);
        (double sin, double cos) = Math.SinCos(radians);
        return new Vector2D(cos, sin);
    }

    public double Dot(Vector2D other) => (X * other.X) + (Y * other.Y);

    /// <summary>Positive when <paramref name="other"/> lies to the left.</summary>
    public double Cross(Vector2D other) => (X * other.Y) - (Y * other.X);

    // The made-up text of a record would print Left, and its Left, without end.
    public override string ToString() => FormattableString.Invariant($"({X}, {Y})");

    /// <summary>The same direction with length one; the zero vector stays zero.</summary>
    public Vector2D Unit()
    {
        double length = Length;
        return length == 0 ? default : new Vector2D(X / length, Y / length);
    }
}
