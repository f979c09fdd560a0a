using System.Globalization;
using System.Numerics;

namespace LeverDraw.Writers;

/// <summary>The only place that turns numbers into output: ASCII digits and a point, no exponent, never −0, the same under every culture.</summary>
/// <remarks>All methods write into a buffer of at least <see cref="MaxBytes"/> and return how many bytes they wrote; nothing is allocated.</remarks>
public static class PaperNumber
{
    public const int MaxBytes = 32;

    /// <summary>Decimals of a paper coordinate: 0.0001 mm, which no plotter resolves and no sine's last bit reaches.</summary>
    private const int PaperDecimals = 4;

    /// <summary>Decimals of a DXF real: joints then stay far below the 1e-6 mm at which readers call an outline open.</summary>
    private const int ExactDecimals = 10;

    /// <summary>Larger than any sheet or part; beyond it the scaled integer could overflow.</summary>
    private const double Largest = 1e8;

    /// <summary>A share of the last place. 1/32 inch is 0.79375 mm, exactly on a rounding edge: whatever a system's sines do to the last bit, such a value must round away from zero.</summary>
    private const double EdgeBias = 1e-5;

    /// <summary>Paper millimetres, rounded once to 0.0001 mm, trailing zeros left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite or beyond 1e8.</exception>
    public static int Paper(double millimetres, Span<byte> to) => PaperSteps(Steps(millimetres), to);

    /// <summary>How many steps of 0.0001 mm, the nearest whole number.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite or beyond 1e8.</exception>
    public static long Steps(double millimetres)
    {
        double scaled = Checked(millimetres) * 1e4;
        // Cut off half a place further out: rounded away from zero.
        return (long)(scaled + Math.CopySign(0.5 + EdgeBias, scaled));
    }

    /// <summary>Steps of 0.0001 mm as millimetres, trailing zeros left out.</summary>
    public static int PaperSteps(long steps, Span<byte> to) => Fixed(steps, PaperDecimals, 0, to);

    /// <summary>A DXF real: at most ten decimals and at least one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite or beyond 1e8.</exception>
    public static int Exact(double value, Span<byte> to) =>
        Fixed((long)Math.Round(Checked(value) * 1e10, MidpointRounding.AwayFromZero), ExactDecimals, 1, to);

    /// <summary>The value that <see cref="Exact"/> writes, as a reader gets it back.</summary>
    public static double RoundedExact(double value) => Math.Round(Checked(value) * 1e10, MidpointRounding.AwayFromZero) / 1e10;

    /// <summary>Every digit of a value, so that parsing gives it back; below 1e-5 fifteen of them.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite or beyond 1e8.</exception>
    public static int Full(double value, Span<byte> to)
    {
        double v = Checked(value) + 0.0;
        // Only below 1e-4 does the shortest form need an exponent; a decimal has none.
        bool written = Math.Abs(v) is >= 1e-4 or 0
            ? v.TryFormat(to, out int count, default, CultureInfo.InvariantCulture)
            : ((decimal)v).TryFormat(to, out count, default, CultureInfo.InvariantCulture);
        return written ? count : throw new ArgumentException("The buffer is too small.", nameof(to));
    }

    public static int Integer(long value, Span<byte> to) => Fixed(value, 0, 0, to);

    /// <summary>Upper-case hexadecimal without a prefix.</summary>
    public static int Hex(long value, Span<byte> to) =>
        value.TryFormat(to, out int count, "X", CultureInfo.InvariantCulture)
            ? count
            : throw new ArgumentException("The buffer is too small.", nameof(to));

    private static double Checked(double value) =>
        Math.Abs(value) < Largest
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), "Not a finite number of a drawing's size.");

    /// <summary>An integer with its point <paramref name="decimals"/> places from the right, without zeros at its end beyond <paramref name="keep"/> decimals.</summary>
    private static int Fixed(long scaled, int decimals, int keep, Span<byte> to)
    {
        int sign = 0;
        if (scaled < 0)
        {
            to[0] = (byte)'-';
            sign = 1;
        }

        ulong size = scaled < 0 ? (ulong)-scaled : (ulong)scaled;
        // Any paper coordinate goes into the shorter word, which is divided in half the time.
        return sign + (size <= uint.MaxValue ? Fixed((uint)size, decimals, keep, to[sign..]) : Fixed(size, decimals, keep, to[sign..]));
    }

    private static int Fixed<T>(T size, int decimals, int keep, Span<byte> to)
        where T : struct, IBinaryInteger<T>, IUnsignedNumber<T>
    {
        T ten = T.CreateTruncating(10);
        for (T shorter = size / ten; decimals > keep && shorter * ten == size; shorter = size / ten)
        {
            size = shorter;
            decimals--;
        }

        int digits = 1;
        for (T rest = size; rest >= ten; rest /= ten)
            digits++;
        digits = Math.Max(digits, decimals + 1);
        int length = decimals > 0 ? digits + 1 : digits;
        int at = length;
        for (int place = 0; place < digits; place++)
        {
            if (place == decimals && place > 0)
                to[--at] = (byte)'.';
            T rest = size / ten;
            to[--at] = (byte)('0' + byte.CreateTruncating(size - (rest * ten)));
            size = rest;
        }

        return length;
    }
}
