namespace LeverDraw.Benchmarks.Specimens;

/// <summary>Seeded numbers from a counter (the splitmix64 finaliser): the same on every system, and any place of the sequence without the ones before.</summary>
internal sealed class CounterRandom(ulong seed)
{
    private ulong _counter;

    /// <summary>Above 0, below 1.</summary>
    public double Uniform()
    {
        ulong z = seed + (++_counter * 0x9E3779B97F4A7C15UL);
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return ((z ^ (z >> 31)) + 0.5) / 18446744073709551616.0;
    }

    /// <summary>Normal, by Box and Muller.</summary>
    public double Normal(double deviation) => deviation * Math.Sqrt(-2 * Math.Log(Uniform())) * Math.Cos(2 * Math.PI * Uniform());

    public double Exponential(double mean) => -mean * Math.Log(Uniform());

    public int Below(int count) => Math.Min(count - 1, (int)(Uniform() * count));
}
