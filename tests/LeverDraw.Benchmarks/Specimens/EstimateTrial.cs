using System.Collections.Immutable;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Readings;
using LeverDraw.Specimens.Reconstruction;

namespace LeverDraw.Benchmarks.Specimens;

/// <summary>Many sets of n survivors: how often the stated interval holds the design size, and how far off the estimates are.</summary>
internal static class EstimateTrial
{
    /// <param name="Coverage">Share of sets whose interval holds the design size.</param>
    /// <param name="Width">Of the interval, on average.</param>
    /// <param name="Rule">Root-mean-square error of the estimate; so of the others.</param>
    /// <param name="Likeliest">Of the middle of the likelihood; the estimate's own where nothing is worn.</param>
    /// <param name="LeastWorn">Of the largest outside size, or the smallest inside size.</param>
    public sealed record Outcome(double Coverage, double Width, double Rule, double Likeliest, double Mean, double LeastWorn);

    /// <param name="specimens">How many survivors each set has; one instrument reads them all.</param>
    public static Outcome Run(SizeGroup group, int specimens, int sets, TrialConditions conditions, RandomSequence random)
    {
        int held = 0;
        double width = 0, rule = 0, likeliest = 0, mean = 0, least = 0;
        for (int set = 0; set < sets; set++)
        {
            (Measurand m, double design) = group.Sizes[random.Below(group.Sizes.Length)];
            double error = SimulatedSurvivor.Error(random);
            ImmutableArray<SpecimenValue> values =
                [.. Enumerable.Range(0, specimens).Select(_ => SpecimenValue.Of([SimulatedSurvivor.Read("x", m, design, group.At, error, conditions, random)]))];
            SizeEstimate estimate = SizeEstimator.Of(m, values);
            held += estimate.From <= design && design <= estimate.To ? 1 : 0;
            width += (estimate.To - estimate.From) / sets;
            rule += Square(estimate.Value - design) / sets;
            likeliest += Square((estimate.Likeliest ?? estimate.Value) - design) / sets;
            mean += Square(values.Average(v => v.Value) - design) / sets;
            least += Square((m.Wear == WearSide.Larger ? values.Min(v => v.Value) : values.Max(v => v.Value)) - design) / sets;
        }

        return new Outcome((double)held / sets, width, Math.Sqrt(rule), Math.Sqrt(likeliest), Math.Sqrt(mean), Math.Sqrt(least));
    }

    private static double Square(double x) => x * x;
}
