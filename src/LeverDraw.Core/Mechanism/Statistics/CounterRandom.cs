namespace LeverDraw.Mechanism.Statistics;

/// <summary>Random numbers that are a function of a seed and a running number alone: the same on every system, in any order, on any number of threads.</summary>
/// <remarks>The number is multiplied by the odd constant nearest to 2⁶⁴/φ and stirred by two rounds of shift and multiply (the mixing function of David Stafford, variant 13, from memory).</remarks>
public readonly record struct CounterRandom(ulong Seed)
{
    private const ulong Golden = 0x9E3779B97F4A7C15;

    private const double Unit = 1.0 / (1UL << 53);

    public ulong Bits(ulong index)
    {
        ulong x = Seed + ((index + 1) * Golden);
        x = (x ^ (x >> 30)) * 0xBF58476D1CE4E5B9;
        x = (x ^ (x >> 27)) * 0x94D049BB133111EB;
        return x ^ (x >> 31);
    }

    /// <summary>Even over the open interval from 0 to 1; 53 bits.</summary>
    public double Even(ulong index) => ((Bits(index) >> 11) + 0.5) * Unit;

    /// <summary>Two independent numbers of the standard normal distribution (Box and Muller, 1958), from running numbers 2·pair and 2·pair + 1.</summary>
    public (double First, double Second) NormalPair(ulong pair)
    {
        double radius = Math.Sqrt(-2 * Math.Log(Even(2 * pair)));
        (double sin, double cos) = Math.SinCos(2 * Math.PI * Even((2 * pair) + 1));
        return (radius * cos, radius * sin);
    }
}
