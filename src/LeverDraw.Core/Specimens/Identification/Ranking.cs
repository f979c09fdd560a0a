using System.Collections.Immutable;
using LeverDraw.Specimens.Measuring;

namespace LeverDraw.Specimens.Identification;

/// <summary>One variant's share of the belief.</summary>
/// <param name="Variant">Null: none of the variants there are.</param>
/// <param name="Share">0 to 1.</param>
public sealed record Candidate(Variant? Variant, double Share);

/// <summary>The variants of one part, most likely first, by what one specimen shows.</summary>
/// <remarks>
/// Every variant is as likely beforehand as any other; that it is none of them has a small share. A feature (head, hole, tongue …) is taken as altered or exchanged in one part of thirty, and its readings
/// then say nothing: so a drilled-out hole alone cannot outvote the rest of a lever. Both figures are our own (docs/adr/0010-survivors.md).
/// </remarks>
internal static class Ranking
{
    /// <summary>Beforehand, that a part is of no known variant.</summary>
    private const double Unknown = 0.02;

    /// <summary>Beforehand, that a feature was altered without being marked so.</summary>
    private const double Altered = 1.0 / 30;

    /// <param name="variants">Of the part, at least one.</param>
    public static ImmutableArray<Candidate> Of(ImmutableArray<Evidence> evidence, ImmutableArray<Variant> variants)
    {
        double[] logs = [.. variants.Select(v => Math.Log((1 - Unknown) / variants.Length) + Log(evidence, v, variants)), Math.Log(Unknown) + evidence.Sum(e => Likelihood.LogAny(e.Measurand))];
        double most = logs.Max();
        double sum = logs.Sum(l => Math.Exp(l - most));
        return [.. logs.Select((l, i) => new Candidate(i < variants.Length ? variants[i] : null, Math.Exp(l - most) / sum)).OrderByDescending(c => c.Share)];
    }

    /// <summary>The probability that a feature was altered, if the part is of the variant.</summary>
    public static double AlteredShare(IEnumerable<Evidence> feature, Variant variant, ImmutableArray<Variant> variants)
    {
        (double sound, double any) = Both(feature, variant, variants);
        return 1 / (1 + Math.Exp(sound - any));
    }

    private static double Log(ImmutableArray<Evidence> evidence, Variant variant, ImmutableArray<Variant> variants) =>
        evidence.GroupBy(e => e.Measurand.Feature).Sum(feature =>
        {
            (double sound, double any) = Both(feature, variant, variants);
            double most = Math.Max(sound, any);
            return most + Math.Log(Math.Exp(sound - most) + Math.Exp(any - most));
        });

    private static (double Sound, double Any) Both(IEnumerable<Evidence> feature, Variant variant, ImmutableArray<Variant> variants)
    {
        double any = feature.Sum(e => Likelihood.LogAny(e.Measurand));
        Variant[] others = [.. variants.Where(v => v != variant)];
        // A hole is mostly drilled out to suit another variant's pin; other features are changed anyhow.
        if (feature.First().Measurand.Feature == "hole" && others.Length > 0)
            any = Math.Log((Math.Exp(any) + others.Average(o => Math.Exp(feature.Sum(e => Likelihood.Log(e, o))))) / 2);
        return (Math.Log(1 - Altered) + feature.Sum(e => Likelihood.Log(e, variant)), Math.Log(Altered) + any);
    }
}
