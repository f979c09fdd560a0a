using System.Collections.Immutable;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Readings;

namespace LeverDraw.Specimens.Identification;

/// <summary>What a further reading is expected to tell: bits of the doubt between variants that it takes away on average.</summary>
public sealed record FurtherReading(Measurand Measurand, double Bits);

/// <summary>Expected information: the doubt (entropy) of the candidates, less what is left of it on average over all values the reading may have.</summary>
internal static class NextReading
{
    private const int Steps = 400;

    /// <summary>Less than this is not worth a reading.</summary>
    private const double LeastBits = 0.01;

    public static ImmutableArray<FurtherReading> Best(ImmutableArray<Candidate> candidates, IEnumerable<Measurand> unread)
    {
        Candidate[] live = [.. candidates.Where(c => c.Variant is not null && c.Share > 1e-4)];
        double whole = live.Sum(c => c.Share);
        if (live.Length < 2)
            return [];
        (Variant Variant, double Share)[] weighed = [.. live.Select(c => (c.Variant!, c.Share / whole))];
        return [.. unread.Select(m => new FurtherReading(m, Bits(m, weighed))).Where(f => f.Bits >= LeastBits).OrderByDescending(f => f.Bits)];
    }

    private static double Bits(Measurand measurand, (Variant Variant, double Share)[] variants)
    {
        double before = Entropy([.. variants.Select(v => v.Share)]);
        return before - Outcomes(measurand, variants).Sum(outcome =>
        {
            double[] joint = [.. variants.Select(v => v.Share * Math.Exp(Likelihood.Log(outcome.Seen, v.Variant)) * outcome.Width)];
            double sum = joint.Sum();
            return sum < 1e-12 ? 0 : sum * Entropy([.. joint.Select(j => j / sum)]);
        });
    }

    private static IEnumerable<(Evidence Seen, double Width)> Outcomes(Measurand measurand, (Variant Variant, double Share)[] variants)
    {
        if (measurand.Kind is ReadingKind.Word or ReadingKind.Taper)
            return variants.Where(v => v.Variant.Words.ContainsKey(measurand.Name)).Select(v => v.Variant.Words[measurand.Name]).Distinct().Select(w => (new Evidence(measurand, null, w), 1.0));
        double[] sizes = [.. variants.Where(v => v.Variant.Sizes.ContainsKey(measurand.Name)).Select(v => v.Variant.Sizes[measurand.Name])];
        if (sizes.Length == 0)
            return [];
        double reach = (5 * measurand.Spread(sizes.Max())) + 0.1, wear = 12 * measurand.UsualWear;
        double from = sizes.Min() - reach - (measurand.Wear == WearSide.Smaller ? wear : 0), to = sizes.Max() + reach + (measurand.Wear == WearSide.Larger ? wear : 0);
        double width = (to - from) / Steps;
        bool angle = measurand.Kind == ReadingKind.Angle;
        Instrument with = angle ? Instruments.Protractor : Instruments.Caliper;
        return Enumerable.Range(0, Steps).Select(i => (new Evidence(measurand, new SpecimenValue(
            string.Empty, from + ((i + 0.5) * width), measurand.Wear != WearSide.None, with.Rounding(angle), with.Common(angle, sizes[0]), 1), null), width));
    }

    private static double Entropy(double[] shares) => -shares.Sum(p => p > 0 ? p * Math.Log2(p) : 0);
}
