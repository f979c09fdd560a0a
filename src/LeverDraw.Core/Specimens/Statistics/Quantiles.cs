namespace LeverDraw.Specimens.Statistics;

/// <summary>Quantiles of Student's t and chi-square, by halving on their distribution functions.</summary>
/// <remarks>Regularised incomplete beta by its continued fraction, incomplete gamma by series or continued fraction, ln Γ by Lanczos' sum (all textbook forms, from memory; checked against published tables in the tests).</remarks>
internal static class Quantiles
{
    private const int MostSteps = 500;

    private const double Least = 1e-300;

    /// <summary>The factor k for which |t| ≤ k has this probability.</summary>
    /// <param name="freedom">Degrees of freedom, above zero, whole or not; infinite is the normal law.</param>
    /// <param name="probability">Two-sided, between 0 and 1.</param>
    public static double StudentTwoSided(double freedom, double probability) =>
        Halve(t => double.IsPositiveInfinity(freedom) ? 1 - NormalLaw.ErrorComplement(t / Math.Sqrt(2)) : 1 - Beta(freedom / 2, 0.5, freedom / (freedom + (t * t))), probability);

    /// <summary>The value that chi-square stays below with this probability.</summary>
    /// <param name="freedom">Degrees of freedom, above zero.</param>
    public static double ChiSquare(double freedom, double probability) => Halve(x => ChiSquareBelow(freedom, x), probability);

    /// <summary>The probability that chi-square is below <paramref name="x"/>.</summary>
    public static double ChiSquareBelow(double freedom, double x) => x <= 0 ? 0 : LowerGamma(freedom / 2, x / 2);

    private static double Halve(Func<double, double> below, double probability)
    {
        if (probability is not (> 0 and < 1))
            throw new ArgumentOutOfRangeException(nameof(probability), "A probability between 0 and 1 is wanted.");
        double from = 0, to = 1;
        while (below(to) < probability)
            to *= 2;
        for (int i = 0; i < 200 && to - from > 1e-14 * to; i++)
        {
            double middle = (from + to) / 2;
            if (below(middle) < probability)
                from = middle;
            else
                to = middle;
        }

        return (from + to) / 2;
    }

    private static double LogGamma(double x)
    {
        ReadOnlySpan<double> terms = [76.18009172947146, -86.50532032941677, 24.01409824083091, -1.231739572450155, 0.1208650973866179e-2, -0.5395239384953e-5];
        double sum = 1.000000000190015, at = x;
        foreach (double term in terms)
            sum += term / ++at;
        double shifted = x + 5.5;
        return ((x + 0.5) * Math.Log(shifted)) - shifted + Math.Log(2.5066282746310005 * sum / x);
    }

    /// <summary>I_x(a, b).</summary>
    private static double Beta(double a, double b, double x)
    {
        if (x <= 0 || x >= 1)
            return x <= 0 ? 0 : 1;
        // The fraction converges fast below the mean only; above it, the mirror image is taken.
        if (x > (a + 1) / (a + b + 2))
            return 1 - Beta(b, a, 1 - x);
        double front = Math.Exp(LogGamma(a + b) - LogGamma(a) - LogGamma(b) + (a * Math.Log(x)) + (b * Math.Log(1 - x)));
        double c = 1, d = 1 / NotZero(1 - ((a + b) * x / (a + 1))), h = d;
        for (int m = 1; m <= MostSteps; m++)
        {
            double even = m * (b - m) * x / ((a + (2 * m) - 1) * (a + (2 * m)));
            d = 1 / NotZero(1 + (even * d));
            c = NotZero(1 + (even / c));
            h *= d * c;
            double odd = -(a + m) * (a + b + m) * x / ((a + (2 * m)) * (a + (2 * m) + 1));
            d = 1 / NotZero(1 + (odd * d));
            c = NotZero(1 + (odd / c));
            h *= d * c;
            if (Math.Abs((d * c) - 1) < 1e-15)
                break;
        }

        return front * h / a;
    }

    /// <summary>P(a, x).</summary>
    private static double LowerGamma(double a, double x)
    {
        double front = Math.Exp((a * Math.Log(x)) - x - LogGamma(a));
        if (x < a + 1)
        {
            double term = 1 / a, sum = term;
            for (int n = 1; n <= MostSteps && term > sum * 1e-16; n++)
                sum += term *= x / (a + n);
            return front * sum;
        }

        double b = x + 1 - a, c = 1 / Least, d = 1 / b, h = d;
        for (int i = 1; i <= MostSteps; i++)
        {
            double step = -i * (i - a);
            b += 2;
            d = 1 / NotZero((step * d) + b);
            c = NotZero(b + (step / c));
            h *= d * c;
            if (Math.Abs((d * c) - 1) < 1e-15)
                break;
        }

        return 1 - (front * h);
    }

    private static double NotZero(double x) => Math.Abs(x) < Least ? Least : x;
}
