using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Specimens.Identification;

namespace LeverDraw.Benchmarks.Specimens;

/// <summary>The report docs/survivors.md, made anew: seeded, so that it comes out the same.</summary>
internal static class SurvivorReport
{
    private const int Sets = 2000, Specimens = 2000;

    private static readonly TrialCase[] Cases =
    [
        new("Worn: made 0.10, mean wear 0.20 (as assumed)", 0.10, 0.20),
        new("Worn: mean wear 0.05", 0.10, 0.05),
        new("Worn: mean wear 0.10", 0.10, 0.10),
        new("Worn: mean wear 0.40", 0.10, 0.40),
        new("Worn: made spread 0.05", 0.05, 0.20),
        new("Worn: made spread 0.20", 0.20, 0.20),
        new("Witness places", 0.10, 0, Witness: true),
        new("Witness places, made spread 0.05", 0.05, 0, Witness: true),
        new("Witness places, made spread 0.20", 0.20, 0, Witness: true),
    ];

    public static void Write(TextWriter to)
    {
        to.Write("""
            # Estimates from worn survivors, tried on simulated ones

            Made by `dotnet run --project tests/LeverDraw.Benchmarks -c Release -- survivors`, seeded, so that it comes out the same. The rules and their reasons are in [adr/0010-survivors.md](adr/0010-survivors.md).

            ## Which variant it is

            Levers of the five shipped variants, drawn at random; made, worn and measured with the spreads of the tables in `src/LeverDraw.Core/Specimens/Measuring/`; forms are misread in 2 of 100. Of the 19 sizes and forms in which the variants differ, all or some at random are read.

            | read | specimens | right one first | called | of these right | wrong called | cannot tell |
            | --- | --- | --- | --- | --- | --- | --- |

            """);
        ImmutableArray<Variant> variants = IdentifyTrial.Variants();
        foreach (int read in (int[])[19, 10, 6, 4, 3, 2, 1])
        {
            IdentifyTrial.Outcome o = IdentifyTrial.Run(variants, Specimens, read, new RandomSequence((ulong)(77 + read)));
            to.Write(string.Create(CultureInfo.InvariantCulture, $"| {(read == 19 ? "all" : read)} | {o.Specimens} | {100.0 * o.First / o.Specimens:0.0} % | {o.Called} | {o.Right} | {o.Wrong} | {o.Specimens - o.Called} |\n"));
        }

        to.Write(string.Create(CultureInfo.InvariantCulture, $"""

            ## How far an estimate is off

            An outside size of 3.30 mm, a caliper with an error up to 0.02 mm read to 0.01 mm, {Sets} sets of n survivors each. The estimator always assumes a spread as made of 0.10 mm and a usual mean wear of 0.20 mm, whatever the survivors really have: the later tables show what a wrong assumption costs. Errors are root-mean-square.

            """));
        foreach (TrialCase trial in Cases)
        {
            to.Write("\n### " + trial.Name + "\n\n");
            to.Write("| n | held by the 95 % interval | width, mm | error of the rule, mm | of the mean | of the largest |\n| --- | --- | --- | --- | --- | --- |\n");
            for (int n = 1; n <= 10; n++)
            {
                EstimateTrial.Outcome o = EstimateTrial.Run(trial, n, Sets, new RandomSequence((ulong)(n * 1000)));
                to.Write(string.Create(CultureInfo.InvariantCulture, $"| {n} | {o.Coverage * 100:0.0} % | {o.Width:0.00} | {o.Rule:0.000} | {o.Mean:0.000} | {o.Largest:0.000} |\n"));
            }
        }
    }
}
