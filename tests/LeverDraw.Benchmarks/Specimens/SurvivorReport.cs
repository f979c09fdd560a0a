using System.Globalization;

namespace LeverDraw.Benchmarks.Specimens;

/// <summary>The report docs/survivors.md, made anew: seeded, so that it comes out the same.</summary>
internal static class SurvivorReport
{
    private const int Sets = 2000;

    private static readonly TrialCase[] Cases =
    [
        new("worn, as the trade notes have it", 0.10, 0.20),
        new("worn, mean wear 0.05", 0.10, 0.05),
        new("worn, mean wear 0.10", 0.10, 0.10),
        new("worn, mean wear 0.40", 0.10, 0.40),
        new("worn, made spread 0.05", 0.05, 0.20),
        new("worn, made spread 0.20", 0.20, 0.20),
        new("witness places", 0.10, 0, Witness: true),
        new("witness places, made spread 0.05", 0.05, 0, Witness: true),
        new("witness places, made spread 0.20", 0.20, 0, Witness: true),
    ];

    public static void Write(TextWriter to)
    {
        foreach (TrialCase trial in Cases)
        {
            to.WriteLine("\n### " + trial.Name + "\n");
            to.WriteLine("| n | held by the 95 % interval | width, mm | error of the rule, mm | of the mean | of the largest |\n| --- | --- | --- | --- | --- | --- |");
            for (int n = 1; n <= 10; n++)
            {
                EstimateTrial.Outcome o = EstimateTrial.Run(trial, n, Sets, new CounterRandom((ulong)(n * 1000)));
                to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {n} | {o.Coverage * 100:0.0} % | {o.Width:0.00} | {o.Rule:0.000} | {o.Mean:0.000} | {o.Largest:0.000} |"));
            }
        }
    }
}
