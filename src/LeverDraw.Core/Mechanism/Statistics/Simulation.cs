namespace LeverDraw.Mechanism.Statistics;

/// <summary>One size between its limits, as plain numbers of any unit.</summary>
public readonly record struct DrawnSize(double Least, double Most)
{
    public double Middle => (Least + Most) / 2;

    public double Half => (Most - Least) / 2;
}

/// <summary>A number and the interval that holds the true one with 95 % confidence, as far as chance in drawing goes.</summary>
public readonly record struct Estimate(double Value, double Low, double High);

/// <summary>What many random draws gave.</summary>
/// <param name="LowEnd">A fortieth of the draws lie below; <paramref name="HighEnd"/>: a fortieth above.</param>
/// <param name="Over">Share of the draws over the limit asked about; null when none was.</param>
/// <param name="Binding">Share of the draws whose sizes do not go together.</param>
public sealed record SimulationResult(
    long Draws, ulong Seed, SizeSpread Spread, Estimate Mean, double StandardDeviation, Estimate LowEnd, Estimate HighEnd, Estimate? Over, Estimate Binding);

/// <summary>Draws sizes at random between their limits, many times (GUM Supplement 1, propagation of distributions).</summary>
public static class Simulation
{
    /// <summary>Normal quantile that holds 95 % both ways.</summary>
    private const double Two = 1.959964;

    private const int Bins = 1 << 16;

    private const double Tail = 0.025;

    /// <param name="expected">Where the result is sure to lie but for one draw in millions; only fineness of the ends depends on it.</param>
    public static SimulationResult Run<TResult>(
        TResult model, ReadOnlySpan<DrawnSize> sizes, SizeSpread spread, long draws, ulong seed, DrawnSize expected, double? limit = null)
        where TResult : struct, IDrawnResult
    {
        if (draws < 2)
            throw new ArgumentOutOfRangeException(nameof(draws), "At least two draws are needed.");
        int count = sizes.Length, pairs = (count + 1) / 2;
        double[] middle = new double[count], scale = new double[count];
        for (int i = 0; i < count; i++)
        {
            middle[i] = sizes[i].Middle;
            scale[i] = spread == SizeSpread.Normal ? sizes[i].Half / 3 : sizes[i].Half;
        }

        var random = new CounterRandom(seed);
        Span<double> drawn = stackalloc double[count];
        int[] histogram = new int[Bins + 2];
        double width = Math.Max(expected.Half * 2, 1e-12) / Bins, shift = expected.Middle;
        double sum = 0, squares = 0;
        long over = 0, binding = 0;
        for (long draw = 0; draw < draws; draw++)
        {
            ulong first = (ulong)draw * (ulong)pairs;
            for (int pair = 0; pair < pairs; pair++)
            {
                ulong at = first + (ulong)pair;
                (double a, double b) = spread == SizeSpread.Normal ? random.NormalPair(at) : ((2 * random.Even(2 * at)) - 1, (2 * random.Even((2 * at) + 1)) - 1);
                int i = 2 * pair;
                drawn[i] = middle[i] + (scale[i] * a);
                if (i + 1 < count)
                    drawn[i + 1] = middle[i + 1] + (scale[i + 1] * b);
            }

            double value = model.Of(drawn, out bool binds);
            double off = value - shift;
            sum += off;
            squares += off * off;
            if (binds)
                binding++;
            if (value > limit)
                over++;
            histogram[1 + (int)Math.Clamp((value - expected.Least) / width, -1, Bins)]++;
        }

        double mean = sum / draws, deviation = Math.Sqrt(Math.Max(0, (squares - (sum * mean)) / (draws - 1)));
        double error = Two * deviation / Math.Sqrt(draws);
        return new SimulationResult(
            draws, seed, spread,
            new Estimate(mean + shift, mean + shift - error, mean + shift + error),
            deviation,
            Quantile(Tail), Quantile(1 - Tail),
            limit is null ? null : Share(over, draws), Share(binding, draws));

        // By ranks: the q-quantile lies between the draws of rank n·q ± 1.96·√(n·q·(1 − q)), whatever the distribution.
        Estimate Quantile(double q)
        {
            double rank = draws * q, aside = Two * Math.Sqrt(draws * q * (1 - q));
            return new Estimate(Ranked(rank), Ranked(rank - aside), Ranked(rank + aside));
        }

        double Ranked(double rank)
        {
            double below = 0;
            for (int bin = 0; bin < histogram.Length; bin++)
            {
                if (below + histogram[bin] > rank)
                    return expected.Least + (width * (bin - 1 + ((Math.Max(rank, 0) - below) / histogram[bin])));
                below += histogram[bin];
            }

            return expected.Most;
        }
    }

    /// <summary>Wilson's interval, which stays inside 0 and 1.</summary>
    private static Estimate Share(long hits, long draws)
    {
        double n = draws, p = hits / n, z = Two * Two / n;
        double middle = (p + (z / 2)) / (1 + z), half = Two * Math.Sqrt((p * (1 - p) / n) + (z / (4 * n))) / (1 + z);
        return new Estimate(p, hits == 0 ? 0 : middle - half, hits == draws ? 1 : middle + half);
    }
}
