using System.Collections.Immutable;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Tolerancing;

/// <summary>The hole that holds a parallel pin by its fit.</summary>
/// <param name="Zone">On the pin's nominal size.</param>
/// <param name="LeastGrip">Interference on diameter of the largest hole and the smallest pin; never negative.</param>
public sealed record LugHole(ToleranceZone Zone, SizeLimits Limits, Length LeastGrip, Length MostGrip)
{
    /// <summary>Reamers' usual grade, from the loosest fit to the tightest.</summary>
    private static readonly ImmutableArray<DeviationLetter> _letters =
        [DeviationLetter.H, DeviationLetter.K, DeviationLetter.M, DeviationLetter.N, DeviationLetter.P, DeviationLetter.R, DeviationLetter.S];

    private const int Grade = 7;

    /// <summary>The loosest zone of grade 7 of ISO 286 in which every pin grips and none splits the lug (own rule; common practice, no source).</summary>
    /// <returns>Null when there is none: the hole is to be agreed.</returns>
    public static LugHole? For(Length nominal, SizeLimits pin)
    {
        foreach (DeviationLetter letter in _letters)
        {
            ToleranceZone zone = ToleranceZone.Hole(letter, Grade);
            if (Iso286.Limits(zone, nominal) is not { IsGiven: true } hole)
                continue;
            FitLimits fit = new(hole.Value, pin);
            if (fit.Kind == FitKind.Interference)
                return -fit.MinClearance <= TaperPinFitting.MostInterference ? new LugHole(zone, hole.Value, -fit.MaxClearance, -fit.MinClearance) : null;
        }

        return null;
    }
}
