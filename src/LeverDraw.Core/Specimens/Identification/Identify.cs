using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Parts;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Readings;

namespace LeverDraw.Specimens.Identification;

/// <summary>Which variant each specimen is, by its readings.</summary>
public static class Identify
{
    /// <summary>The share of the belief from which a variant is called.</summary>
    internal const double Sure = 0.95;

    /// <summary>The probability from which a feature is called altered.</summary>
    private const double StrangeFrom = 0.5;

    /// <param name="variants">Shipped and the user's own, of all kinds.</param>
    /// <param name="searched">Where they were looked for, for the message when there are none.</param>
    public static Checked<Identification> Run(ReadingSet readings, ImmutableArray<Variant> variants, string searched)
    {
        List<Diagnostic> told = [];
        foreach (string part in new[] { PartKinds.Lever.Name, PartKinds.Pin.Name })
        {
            if (readings.Has(part) && !variants.Any(v => v.Part == part))
                told.Add(DiagnosticCatalogue.NoVariants.At(null, null, part, searched));
        }

        return Checked<Identification>.From(told, () =>
        {
            ImmutableArray<PartFinding> parts =
            [
                .. readings.Specimens.SelectMany(s => new[] { PartKinds.Lever.Name, PartKinds.Pin.Name }
                    .Select(part => (Part: part, Evidence: Evidence.Of(readings, s, part))).Where(e => !e.Evidence.IsEmpty)
                    .Select(e => Part(s, e.Part, e.Evidence, [.. variants.Where(v => v.Part == e.Part)]))),
            ];
            return new Identification(parts, [.. readings.Specimens.SelectMany(s => Mixed(s, parts, readings, variants))]);
        });
    }

    /// <param name="askFurther">False leaves the further readings out, which take the longest to find.</param>
    internal static PartFinding Part(string specimen, string part, ImmutableArray<Evidence> evidence, ImmutableArray<Variant> variants, bool askFurther = true)
    {
        ImmutableArray<Candidate> candidates = Ranking.Of(evidence, variants);
        Verdict verdict = candidates[0].Share < Sure ? Verdict.CannotTell : candidates[0].Variant is null ? Verdict.Unknown : Verdict.Identified;
        IEnumerable<Measurand> unread = Measurands.All.Where(m => m.Part == part && !evidence.Any(e => e.Measurand == m));
        return new PartFinding(
            specimen, part, verdict, candidates,
            verdict == Verdict.Identified ? [.. Strange(evidence, candidates[0].Variant!, variants)] : [],
            askFurther ? NextReading.Best(candidates, unread) : [],
            evidence.Length);
    }

    private static IEnumerable<StrangeFeature> Strange(ImmutableArray<Evidence> evidence, Variant best, ImmutableArray<Variant> variants)
    {
        foreach (IGrouping<string, Evidence> feature in evidence.GroupBy(e => e.Measurand.Feature))
        {
            double share = Ranking.AlteredShare(feature, best, variants);
            if (share < StrangeFrom)
                continue;
            Variant? fits = variants.Where(v => v != best && Ranking.AlteredShare(feature, v, variants) < 0.5).MaxBy(v => feature.Sum(e => Likelihood.Log(e, v)));
            yield return new StrangeFeature(feature.Key, share, fits);
        }
    }

    private static IEnumerable<MixedParts> Mixed(string specimen, ImmutableArray<PartFinding> parts, ReadingSet readings, ImmutableArray<Variant> variants)
    {
        PartFinding? lever = parts.FirstOrDefault(p => p.Specimen == specimen && p.Part == PartKinds.Lever.Name), pin = parts.FirstOrDefault(p => p.Specimen == specimen && p.Part == PartKinds.Pin.Name);
        if (lever is { Verdict: Verdict.Identified } && pin is { Verdict: Verdict.Identified } && lever.Best.PinNumber.Length > 0 && lever.Best.PinNumber != pin.Best.Number)
        {
            Evidence[] hole = [.. Evidence.Of(readings, specimen, lever.Part).Where(e => e.Measurand.Feature == "hole")];
            Variant? donor = variants.FirstOrDefault(v => v.Part == lever.Part && v.PinNumber == pin.Best.Number);
            bool drilled = hole.Length > 0 && donor is not null && hole.Sum(e => Likelihood.Log(e, donor)) > hole.Sum(e => Likelihood.Log(e, lever.Best));
            yield return new MixedParts(specimen, lever.Best, pin.Best, lever.Best.PinNumber, drilled);
        }
    }
}
