using System.Collections.Immutable;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Readings;
using LeverDraw.Specimens.Statistics;

namespace LeverDraw.Specimens.Reconstruction;

/// <summary>From the values of several survivors to one size with its 95 % interval, by the rules of docs/adr/0010-survivors.md.</summary>
internal static class SizeEstimator
{
    /// <summary>Up to here the least worn value is taken, above it the second (trade notes).</summary>
    private const int MostForExtreme = 5;

    /// <summary>Up to here the second is (trade notes); of more it overshoots.</summary>
    private const int MostForSecond = 10;

    /// <summary>From here on the middle of the likelihood is nearer than the extreme where wear is slight.</summary>
    private const int LeastForLikeliest = 3;

    /// <summary>How many degrees of freedom the process spread counts for beside the specimens' own: known to about 13 % (own).</summary>
    private const int ProcessFreedom = 30;

    private const double Probability = 0.95;

    /// <summary>A step above this share of the spread as made is more than a little scatter (own; below, it adds 2 % to the variance).</summary>
    private const double WideStep = 0.5;

    /// <summary>What is left out on either side of a worn size's likelihood. Not knowing the wear makes that too wide when the wear is the usual one: so much holds 95 % then (by simulation, docs/survivors.md).</summary>
    private const double WornTail = 0.03;

    /// <param name="values">At least one; one per specimen.</param>
    public static SizeEstimate Of(Measurand measurand, ImmutableArray<SpecimenValue> values)
    {
        SpecimenValue[] unworn = [.. values.Where(v => !v.IsWorn)];
        SpecimenValue[] used = unworn.Length > 0 ? unworn : [.. values];
        return (unworn.Length > 0 ? Median(measurand, used) : LeastWorn(measurand, used)) with
        {
            IsAdjusted = used.Any(v => v.Ties == TieEffect.Adjusted),
            IsTied = used.All(v => v.Ties == TieEffect.Told),
        };
    }

    private static SizeEstimate Median(Measurand measurand, SpecimenValue[] used)
    {
        double[] sorted = [.. used.Select(v => v.Value).Order()];
        int n = sorted.Length;
        double value = (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
        double made = measurand.Spread(value);
        double own = used.Average(v => v.Own * v.Own), common = used.Max(v => v.Common);
        double mean = sorted.Average(), seen = sorted.Sum(v => (v - mean) * (v - mean));
        double freedom = ProcessFreedom + n - 1;
        double pooled = Math.Sqrt(((ProcessFreedom * ((made * made) + own)) + seen) / freedom);
        // The instrument's limits are taken as known.
        (double combined, double effective) = CombinedUncertainty.Of((MedianSpread.Of(n) * pooled, freedom), (common, double.PositiveInfinity));
        double reach = Quantiles.StudentTwoSided(effective, Probability) * combined, from = value - reach, to = value + reach;
        if (used.Average(v => v.Step) > WideStep * made)
            (from, to) = Stepped(used, value, made, common);
        return new SizeEstimate(measurand, value, from, to, measurand.Wear == WearSide.None ? EstimateRule.Median : EstimateRule.Witness, n, used.Sum(v => v.Readings));
    }

    /// <summary>Readings in wide steps jump from mark to mark, and their median with them: the interval is that of grouped data, and never ends short of the median.</summary>
    private static (double From, double To) Stepped(SpecimenValue[] used, double median, double made, double common)
    {
        double own = used.Average(v => Math.Max(0, (v.Own * v.Own) - (v.Step * v.Step / 12)));
        GridLaw sizes = SteppedPosterior.Of([.. used.Select(v => new SteppedReading(v.Value, v.Step))], Math.Sqrt((made * made) + own), Math.Sqrt(3) * common);
        return (Math.Min(sizes.Quantile((1 - Probability) / 2), median), Math.Max(sizes.Quantile((1 + Probability) / 2), median));
    }

    private static SizeEstimate LeastWorn(Measurand measurand, SpecimenValue[] used)
    {
        int sign = measurand.Wear == WearSide.Larger ? -1 : 1;
        double[] sorted = [.. used.Select(v => sign * v.Value).OrderDescending()];
        bool first = sorted.Length <= MostForExtreme;
        double extreme = sorted[first ? 0 : 1];
        double made = measurand.Spread(Math.Abs(extreme));
        double deviation = Math.Sqrt((made * made) + used.Average(v => v.Own * v.Own));
        WornPosterior sizes = new(sorted, deviation, measurand.UsualWear, used.Max(v => v.Common));
        double likeliest = sizes.Quantile(0.5);
        bool slight = sorted.Length >= LeastForLikeliest && measurand.UsualWear <= made;
        EstimateRule rule = slight || sorted.Length > MostForSecond ? EstimateRule.Likeliest : first ? EstimateRule.Extreme : EstimateRule.SecondExtreme;
        double value = rule == EstimateRule.Likeliest ? likeliest : extreme;
        // The interval is that of all readings together; it is never let end short of the value it stands beside.
        double from = Math.Min(sizes.Quantile(WornTail), value), to = Math.Max(sizes.Quantile(1 - WornTail), value);
        return new SizeEstimate(measurand, sign * value, sign > 0 ? from : -to, sign > 0 ? to : -from, rule, used.Length, used.Sum(v => v.Readings)) { Likeliest = sign * likeliest };
    }
}
