using System.Collections.Immutable;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Readings;
using LeverDraw.Specimens.Reconstruction;

namespace LeverDraw.Benchmarks.Specimens;

/// <summary>What is assumed of a size, and what the simulated survivors really are; millimetres.</summary>
/// <param name="Made">True spread as made; the estimator assumes 0.10.</param>
/// <param name="Wear">True mean wear, exponential; the estimator's usual is 0.20.</param>
internal sealed record TrialCase(string Name, double Made, double Wear, bool Witness = false, double Instrument = 0.02);

/// <summary>Many sets of n survivors of one outside size: how often the stated interval holds the design size, and how far off the estimates are.</summary>
internal static class EstimateTrial
{
    private const double Design = 3.30;

    private static readonly Measurand Pad = Measurands.Lever.First(m => m.Name == "pads.thickness") with
    {
        Habit = new SizeHabit(LeverFields.PadThickness, MadeBy.Cast, WearSide.Smaller, 0.20, "corners"),
    };

    /// <param name="Rule">Root-mean-square error of the rule's estimate; so of the naive ones.</param>
    public sealed record Outcome(double Coverage, double Width, double Rule, double Mean, double Largest);

    public static Outcome Run(TrialCase trial, int specimens, int sets, RandomSequence random)
    {
        int held = 0;
        double width = 0, rule = 0, mean = 0, largest = 0;
        for (int set = 0; set < sets; set++)
        {
            double bias = trial.Instrument * ((2 * random.Uniform()) - 1);
            double[] read = new double[specimens];
            for (int i = 0; i < specimens; i++)
            {
                double wear = trial.Witness || trial.Wear == 0 ? 0 : random.Exponential(trial.Wear);
                read[i] = Math.Round((Design + random.Normal(trial.Made) - wear + bias) * 100) / 100;
            }

            ImmutableArray<SpecimenValue> values = [.. read.Select(v => new SpecimenValue(string.Empty, v, !trial.Witness, 0.01 / Math.Sqrt(12), 0.02 / Math.Sqrt(3), 1))];
            SizeEstimate estimate = SizeEstimator.Of(Pad, values);
            held += estimate.From <= Design && Design <= estimate.To ? 1 : 0;
            width += (estimate.To - estimate.From) / sets;
            rule += Square(estimate.Value - Design) / sets;
            mean += Square(read.Average() - Design) / sets;
            largest += Square(read.Max() - Design) / sets;
        }

        return new Outcome((double)held / sets, width, Math.Sqrt(rule), Math.Sqrt(mean), Math.Sqrt(largest));
    }

    private static double Square(double x) => x * x;
}
