namespace LeverDraw.Specimens.Statistics;

/// <summary>What several worn readings of one size say of its design size, the scale of wear not being known: all values that fit at every scale, each by its likelihood.</summary>
/// <remarks>A flat prior on the size; the scale of wear is common to the readings and summed over <see cref="WornLaw.Scales"/>. Readings are positive against the wear (negate a size that wear makes larger).</remarks>
internal sealed class WornPosterior
{
    private const int Steps = 400;

    private readonly double _from, _step;
    private readonly GridLaw _law;

    /// <param name="common">Standard deviation of an error that all readings share (one instrument); it widens the result afterwards.</param>
    public WornPosterior(IReadOnlyList<double> readings, double deviation, double usualWear, double common)
    {
        double largest = readings.Max();
        _from = largest - (5 * deviation);
        _step = ((10 * deviation) + (20 * usualWear)) / Steps;
        double[] logs = new double[Steps + 1];
        double[][] byScale = [.. WornLaw.Scales.Select(s => LogLikelihoods(readings, deviation, usualWear * s.Factor))];
        double most = double.NegativeInfinity;
        for (int i = 0; i <= Steps; i++)
        {
            double top = byScale.Max(s => s[i]);
            logs[i] = top + Math.Log(WornLaw.Scales.Select((s, k) => s.Weight * Math.Exp(byScale[k][i] - top)).Sum());
            most = Math.Max(most, logs[i]);
        }

        double[] density = [.. logs.Select(l => Math.Exp(l - most))];
        if (common > 0)
            density = Smeared(density, common / _step);
        _law = new GridLaw(_from, _step, density);
    }

    /// <summary>The value that the size stays below with this probability.</summary>
    public double Quantile(double probability) => _law.Quantile(probability);

    private double[] LogLikelihoods(IReadOnlyList<double> readings, double deviation, double wear)
    {
        double[] all = new double[Steps + 1];
        for (int i = 0; i <= Steps; i++)
            foreach (double reading in readings)
                all[i] += WornLaw.LogDensity(reading - (_from + (i * _step)), deviation, wear);
        return all;
    }

    private static double[] Smeared(double[] density, double steps)
    {
        int reach = (int)Math.Ceiling(4 * steps);
        double[] kernel = [.. Enumerable.Range(-reach, (2 * reach) + 1).Select(k => Math.Exp(-k * k / (2 * steps * steps)))];
        double[] smeared = new double[density.Length];
        for (int i = 0; i < density.Length; i++)
            for (int k = -reach; k <= reach; k++)
                smeared[i] += kernel[k + reach] * density[Math.Clamp(i + k, 0, density.Length - 1)];
        return smeared;
    }
}
