using System.Collections.Immutable;

namespace LeverDraw.Specimens.Statistics;

/// <summary>The law of a worn size about its design size: a normal scatter from making and measuring, less (or plus) a wear that only goes one way.</summary>
/// <remarks>
/// Wear is exponential, as in the simulation of the trade notes, but its mean on one kind of plane is not known: it is taken as the usual mean times one of a few <see cref="Scales"/>. The mixture has a
/// long tail, so a much thinner pad is hardly evidence against a variant, while a thicker one is at once. Normal plus exponential: the density is λ/2·exp(λd + λ²σ²/2)·erfc((d + λσ²)/(σ√2)), d positive against the wear.
/// </remarks>
internal static class WornLaw
{
    /// <summary>Factors on the usual mean wear, and how likely each is beforehand (own choice; docs/adr/0010-survivors.md).</summary>
    public static ImmutableArray<(double Factor, double Weight)> Scales { get; } = [(0.25, 0.13), (0.5, 0.28), (1, 0.46), (2, 0.115), (4, 0.015)];

    /// <summary>ln of the density at a distance from the design size, positive against the wear.</summary>
    /// <param name="deviation">Of making and measuring together.</param>
    /// <param name="wear">Mean wear, above zero.</param>
    public static double LogDensity(double distance, double deviation, double wear)
    {
        double rate = 1 / wear;
        double z = (distance + (rate * deviation * deviation)) / (deviation * Math.Sqrt(2));
        return z >= 0
            ? Math.Log(rate / 2) - (distance * distance / (2 * deviation * deviation)) + NormalLaw.LogScaledComplement(z)
            : Math.Log(rate / 2) + (rate * distance) + (rate * rate * deviation * deviation / 2) + Math.Log(NormalLaw.ErrorComplement(z));
    }

    /// <summary>The same over all scales of wear.</summary>
    public static double LogMixed(double distance, double deviation, double usualWear)
    {
        double sum = 0;
        foreach ((double factor, double weight) in Scales)
            sum += weight * Math.Exp(LogDensity(distance, deviation, usualWear * factor));
        // Far out on the side without wear every term is nothing; the normal law's own logarithm still is a number.
        return sum > 1e-300 ? Math.Log(sum) : NormalLaw.LogDensity(distance, deviation) - 30;
    }
}
