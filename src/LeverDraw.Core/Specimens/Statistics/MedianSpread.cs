using System.Collections.Immutable;

namespace LeverDraw.Specimens.Statistics;

/// <summary>How much wider a median of normal readings scatters than one reading: its standard deviation over the readings' own.</summary>
internal static class MedianSpread
{
    /// <summary>Variance of the median of n unit normal readings, n = 1 to 10: 1/(n·efficiency), efficiencies 1, 1, .743, .838, .697, .776, .679, .743, .669, .723 (order statistics of the normal law, Dixon and Massey; from memory, simulated in the tests).</summary>
    private static readonly ImmutableArray<double> Efficiencies = [1, 1, 0.743, 0.838, 0.697, 0.776, 0.679, 0.743, 0.669, 0.723];

    public static double Of(int count) => Math.Sqrt(1 / (count * (count <= Efficiencies.Length ? Efficiencies[count - 1] : 2 / Math.PI)));
}
