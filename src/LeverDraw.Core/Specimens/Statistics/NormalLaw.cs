namespace LeverDraw.Specimens.Statistics;

/// <summary>The normal law, and the complementary error function it rests on, to about 1e-14.</summary>
/// <remarks>Small arguments by the all-positive series of erf, large ones by the continued fraction of erfc (both in Abramowitz and Stegun, chapter 7; formulas from memory, checked by published values in the tests).</remarks>
internal static class NormalLaw
{
    /// <summary>Where the series hands over to the continued fraction.</summary>
    private const double Border = 2;

    private const double RootPi = 1.7724538509055160273;

    private const double RootTwo = 1.4142135623730950488;

    /// <summary>The density at <paramref name="z"/> standard deviations.</summary>
    public static double Density(double z) => Math.Exp(-z * z / 2) / (RootTwo * RootPi);

    /// <summary>The share below <paramref name="z"/> standard deviations.</summary>
    public static double Below(double z) => ErrorComplement(-z / RootTwo) / 2;

    /// <summary>ln of the density of a normal law with this standard deviation, at a distance from its middle.</summary>
    public static double LogDensity(double distance, double deviation)
    {
        double z = distance / deviation;
        return (-z * z / 2) - Math.Log(deviation * RootTwo * RootPi);
    }

    /// <summary>erfc.</summary>
    public static double ErrorComplement(double x) => x switch
    {
        < 0 => 2 - ErrorComplement(-x),
        < Border => 1 - Error(x),
        _ => Math.Exp(-x * x) * ScaledTail(x),
    };

    /// <summary>ln(exp(x²)·erfc(x)), without overflow for any x ≥ 0.</summary>
    public static double LogScaledComplement(double x) => x < Border ? (x * x) + Math.Log(1 - Error(x)) : Math.Log(ScaledTail(x));

    private static double Error(double x)
    {
        double term = x, sum = x;
        for (int n = 1; term > sum * 1e-17; n++)
        {
            term *= 2 * x * x / ((2 * n) + 1);
            sum += term;
        }

        return 2 / RootPi * Math.Exp(-x * x) * sum;
    }

    private static double ScaledTail(double x)
    {
        // From the far end; this many steps give full precision from the border on.
        double fraction = x;
        for (int k = 10 + (int)(130 / (x * x)); k > 0; k--)
            fraction = x + (k / 2.0 / fraction);
        return 1 / (RootPi * fraction);
    }
}
