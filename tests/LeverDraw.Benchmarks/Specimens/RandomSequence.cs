using LeverDraw.Mechanism.Statistics;

namespace LeverDraw.Benchmarks.Specimens;

/// <summary>The seeded numbers of <see cref="CounterRandom"/>, one after the other.</summary>
internal sealed class RandomSequence(ulong seed)
{
    private readonly CounterRandom _source = new(seed);
    private ulong _next;

    /// <summary>Above 0, below 1.</summary>
    public double Even() => _source.Even(_next++);

    /// <summary>Normal, by Box and Muller; the second of each pair is thrown away.</summary>
    public double Normal(double deviation) => deviation * Math.Sqrt(-2 * Math.Log(Even())) * Math.Cos(2 * Math.PI * Even());

    public double Exponential(double mean) => -mean * Math.Log(Even());

    public int Below(int count) => Math.Min(count - 1, (int)(Even() * count));
}
