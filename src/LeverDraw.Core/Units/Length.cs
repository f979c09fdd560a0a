namespace LeverDraw.Units;

/// <summary>A length, held in millimetres; always finite. Range: any finite double; the default value is zero.</summary>
/// <remarks>One inch is exactly 25.4 mm (international inch, 1959); that factor stands here and nowhere else.</remarks>
public readonly record struct Length : IComparable<Length>
{
    /// <summary>Millimetres in one inch, exact by definition.</summary>
    public const double MillimetresPerInch = 25.4;

    private Length(double millimetres) => Millimetres = millimetres;

    public static Length Zero => default;

    public double Millimetres { get; }

    public double Inches => Millimetres / MillimetresPerInch;

    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Length FromMillimetres(double millimetres) =>
        double.IsFinite(millimetres)
            ? new Length(millimetres + 0.0)
            : throw new ArgumentOutOfRangeException(nameof(millimetres), "A length must be finite.");

    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Length FromInches(double inches) => FromMillimetres(inches * MillimetresPerInch);

    public static Length operator +(Length a, Length b) => FromMillimetres(a.Millimetres + b.Millimetres);

    public static Length operator -(Length a, Length b) => FromMillimetres(a.Millimetres - b.Millimetres);

    public static Length operator -(Length a) => FromMillimetres(-a.Millimetres);

    public static Length operator *(Length a, double factor) => FromMillimetres(a.Millimetres * factor);

    public static Length operator *(double factor, Length a) => a * factor;

    public static Length operator /(Length a, double divisor) => FromMillimetres(a.Millimetres / divisor);

    public static double operator /(Length a, Length b) => a.Millimetres / b.Millimetres;

    public static bool operator <(Length a, Length b) => a.Millimetres < b.Millimetres;

    public static bool operator >(Length a, Length b) => a.Millimetres > b.Millimetres;

    public static bool operator <=(Length a, Length b) => a.Millimetres <= b.Millimetres;

    public static bool operator >=(Length a, Length b) => a.Millimetres >= b.Millimetres;

    public static Length Min(Length a, Length b) => a <= b ? a : b;

    public static Length Max(Length a, Length b) => a >= b ? a : b;

    public int CompareTo(Length other) => Millimetres.CompareTo(other.Millimetres);
}
