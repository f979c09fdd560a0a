namespace LeverDraw.Units;

/// <summary>A plane angle, held in radians; always finite, never reduced to one turn. The default value is zero.</summary>
public readonly record struct Angle : IComparable<Angle>
{
    private Angle(double radians) => Radians = radians;

    public double Radians { get; }

    public double Degrees => Radians * (180.0 / Math.PI);

    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Angle FromRadians(double radians) =>
        double.IsFinite(radians)
            ? new Angle(radians + 0.0)
            : throw new ArgumentOutOfRangeException(nameof(radians), "An angle must be finite.");

    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Angle FromDegrees(double degrees) => FromRadians(degrees * (Math.PI / 180.0));

    public int CompareTo(Angle other) => Radians.CompareTo(other.Radians);
}
