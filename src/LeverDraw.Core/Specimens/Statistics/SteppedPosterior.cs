using System.Collections.Immutable;

namespace LeverDraw.Specimens.Statistics;

/// <summary>A reading that only says between which two marks a size lies.</summary>
/// <param name="Value">The middle between them.</param>
/// <param name="Step">From mark to mark; 0 for one without marks.</param>
internal readonly record struct SteppedReading(double Value, double Step);

/// <summary>What readings in steps as wide as their sizes scatter say of the design size: grouped data, each reading's likelihood the share of the normal law between its two marks.</summary>
/// <remarks>A flat prior on the size. The error that all share is even between its limits (GUM 4.3.7), so the law is smeared evenly; a normal law of the same deviation would be far too wide where it outweighs the rest.</remarks>
internal static class SteppedPosterior
{
    private const int Steps = 240;

    /// <summary>Below this share of the deviation a step does nothing: the normal law's density then is the share over the step to 2 in 10 000 within six deviations (by series, (step/deviation)²·(z² − 1)/24).</summary>
    private const double FineStep = 0.01;

    /// <summary>The spread as made is known to some 13 %: three points that have the first moments of a normal law of that deviation about its logarithm (Gauss and Hermite's, from memory).</summary>
    private static readonly ImmutableArray<(double Factor, double Weight)> Scales = [(0.8, 1.0 / 6), (1, 2.0 / 3), (1.25, 1.0 / 6)];

    /// <param name="deviation">Of one size about the design size, without the step.</param>
    /// <param name="limit">Of the error that all readings share, either way.</param>
    public static GridLaw Of(IReadOnlyList<SteppedReading> readings, double deviation, double limit)
    {
        double margin = (6 * deviation) + limit, from = readings.Min(r => r.Value - r.Step) - margin;
        double step = (readings.Max(r => r.Value + r.Step) + margin - from) / Steps;
        (double Log, double Weight)[][] logs = [.. Scales.Select(s => Logs(readings, deviation * s.Factor, from, step).Select(l => (l, s.Weight)).ToArray())];
        double most = logs.Max(l => l.Max(x => x.Log));
        double[] density = [.. Enumerable.Range(0, Steps + 1).Select(i => logs.Sum(l => l[i].Weight * Math.Exp(l[i].Log - most)))];
        return new GridLaw(from, step, Smeared(density, limit / step));
    }

    private static IEnumerable<double> Logs(IReadOnlyList<SteppedReading> readings, double deviation, double from, double step) =>
        Enumerable.Range(0, Steps + 1).Select(i => readings.Sum(r => Log(r.Value - (from + (i * step)), r.Step, deviation)));

    /// <summary>ln of the share between the marks over the step: so that it goes over into the density, and readings with and without steps weigh alike.</summary>
    private static double Log(double distance, double step, double deviation) => step < FineStep * deviation
        ? NormalLaw.LogDensity(distance, deviation)
        : Math.Log(Math.Max(1e-300, Between(distance, step / 2, deviation)) / step);

    /// <summary>By the tail on the far side, so that small shares are not lost as a difference of two near one.</summary>
    private static double Between(double distance, double half, double deviation)
    {
        double far = Math.Abs(distance);
        return NormalLaw.Below((half - far) / deviation) - NormalLaw.Below((-half - far) / deviation);
    }

    private static double[] Smeared(double[] density, double reach)
    {
        int whole = (int)reach;
        double rest = reach - whole;
        return [.. Enumerable.Range(0, density.Length).Select(i => Enumerable.Range(-whole, (2 * whole) + 1).Sum(k => At(i + k)) + (rest * (At(i - whole - 1) + At(i + whole + 1))))];

        double At(int i) => i >= 0 && i < density.Length ? density[i] : 0;
    }
}
