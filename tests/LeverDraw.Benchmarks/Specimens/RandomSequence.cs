using LeverDraw.Mechanism.Statistics;

namespace LeverDraw.Benchmarks.Specimens;

/// <summary>The seeded numbers of <see cref="CounterRandom"/> one after the other.</summary>
internal sealed class RandomSequence(ulong seed)
{
    private readonly CounterRandom _random = new(seed);
    private ulong _next;

    /// <summary>Above 0, below 1.</summary>
    public double Uniform() => _random.Even(_next++);

    /// <summary>Normal, by Box and Muller.</summary>
    public double Normal(double deviation) => deviation * Math.Sqrt(-2 * Math.Log(Uniform())) * Math.Cos(2 * Math.PI * Uniform());

    public double Exponential(double mean) => -mean * Math.Log(Uniform());

    public int Below(int count) => Math.Min(count - 1, (int)(Uniform() * count));
}
