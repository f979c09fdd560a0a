using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Parts;
using LeverDraw.Profiles;
using LeverDraw.Specimens.Identification;
using LeverDraw.Specimens.Readings;

namespace LeverDraw.Benchmarks.Specimens;

/// <summary>The report docs/survivors.md, made anew: seeded, so that it comes out the same.</summary>
internal static class SurvivorReport
{
    private const int Sets = 4000, FewerSets = 2000, WholeSets = 1000, Specimens = 2000;

    /// <summary>Used for this report only: what was chosen by simulation was chosen on others.</summary>
    private const ulong IdentifySeed = 1_410_000, SizeSeed = 1_520_000, WholeSeed = 1_630_000, WrongSeed = 1_740_000;

    private static readonly TrialConditions AsAssumed = new("as assumed");

    private static readonly TrialConditions[] Wrong =
    [
        new("wear a quarter", Wear: 0.25), new("wear a half", Wear: 0.5), AsAssumed, new("wear doubled", Wear: 2),
        new("spread as made halved", Made: 0.5), new("spread as made doubled", Made: 2), new("instrument's error doubled", Instrument: 2),
    ];

    private static readonly int[] Few = [1, 2, 3, 5, 10];

    public static void Write(TextWriter to)
    {
        ImmutableArray<Variant> variants = Variants();
        to.Write("""
            # Estimates from worn survivors, tried on simulated ones

            Made by `dotnet run --project tests/LeverDraw.Benchmarks -c Release -- survivors`, seeded, so that it comes out the same. The rules and their reasons are in [adr/0010-survivors.md](adr/0010-survivors.md).

            Simulated survivors are of the shipped variants: each size made with normal scatter, worn by an exponential amount one way, and read with its usual instrument, which has an even error of its own and a step; spreads, mean wear and instruments are those of the tables in `src/LeverDraw.Core/Specimens/Measuring/`. The estimates assume just that, so the first tables are the best there can be; the last show what it costs when survivors are not so. What was chosen by simulation (weights of the scales of wear, tail, degrees of freedom of the process) was chosen on other seeds than those used here.


            """);
        Identification(variants, to);
        Whole(variants, to);
        Sizes(variants, to);
        WrongAssumptions(variants, to);
    }

    private static ImmutableArray<Variant> Variants()
    {
        var inputs = Inputs.Load();
        return [.. Inputs.Names.Select(n => Variant.Of(ProfileReader.Read(n + ".toml", inputs, PartKinds.Fields).Value!)!)];
    }

    private static void Identification(ImmutableArray<Variant> variants, TextWriter to)
    {
        ImmutableArray<Variant> levers = [.. variants.Where(v => v.Part == PartKinds.Lever.Name)];
        int all = IdentifyTrial.Discriminating.Length;
        to.Write(Line($"""
            ## Which variant it is

            {Specimens} levers a row, drawn at random from the five; forms are misread in 2 of 100. Of the {all} sizes and forms in which the variants differ, all or some at random are read.

            | read | survivors | right one first | called | of these right | wrong called | cannot tell |
            | --- | --- | --- | --- | --- | --- | --- |

            """));
        foreach (int read in (int[])[all, 10, 6, 4, 3, 2, 1])
            to.Write(Row(read == all ? "all" : read.ToString(CultureInfo.InvariantCulture), AsAssumed, IdentifyTrial.Run(levers, Specimens, read, AsAssumed, new RandomSequence(IdentifySeed + (ulong)read))));
        for (int i = 0; i < Wrong.Length; i++)
        {
            foreach (int read in Wrong[i] == AsAssumed ? [] : (int[])[all, 4])
                to.Write(Row(read == all ? "all" : read.ToString(CultureInfo.InvariantCulture), Wrong[i], IdentifyTrial.Run(levers, Specimens, read, Wrong[i], new RandomSequence(IdentifySeed + (ulong)((100 * (i + 1)) + read)))));
        }
    }

    private static string Row(string read, TrialConditions conditions, IdentifyTrial.Outcome o) =>
        Line($"| {read} | {conditions.Name} | {Percent((double)o.First / o.Specimens)} | {o.Called} | {o.Right} | {o.Wrong} | {o.Specimens - o.Called} |\n");

    private static void Whole(ImmutableArray<Variant> variants, TextWriter to)
    {
        int[] counts = [.. Enumerable.Range(1, 10)];
        WholeTrial.Outcome[] fields = [.. counts.Select(n => Run(n, WholeTrial.Read.Fields))], form = [.. counts.Select(n => Run(n, WholeTrial.Read.Form))];
        to.Write(Line($"""

            ## Whole survivors

            {WholeSets} sets of n levers or pins a row, each set of one shipped variant drawn at random, reconstructed as `reconstruct` does it. Errors are root-mean-square, each in units of its own size's spread as made, so that no coarse size drowns the fine ones; every size of the profile counts alike. *Share*: the estimate's error over that of the naive mean; **half at most is the bar for five survivors.** What does not wear has a share of 1 at best, for there the mean is the best there is, and the median is taken only because it forgives a wrong reading.

            ### Every size of the profile read by itself

            | n | held | error of the estimate | of the likeliest | of the mean | of the least worn | share |
            | --- | --- | --- | --- | --- | --- | --- |

            """));
        foreach ((int n, WholeTrial.Outcome o) in counts.Zip(fields))
            to.Write(Errors(n, o.All));
        to.Write("\n### Of these, the sizes that wear\n\n| n | held | error of the estimate | of the likeliest | of the mean | of the least worn | share |\n| --- | --- | --- | --- | --- | --- | --- |\n");
        foreach ((int n, WholeTrial.Outcome o) in counts.Zip(fields))
            to.Write(Errors(n, o.Worn));
        to.Write("\n### Read as the form asks\n\nSome sizes are not read but follow from others: a tapered hole from its two ends, the head's height from the axis.\n\n| n | held, all | error | held, those that wear | error |\n| --- | --- | --- | --- | --- |\n");
        foreach ((int n, WholeTrial.Outcome o) in counts.Zip(form))
            to.Write(Line($"| {n} | {Percent(o.All.Coverage)} | {o.All.Rule:0.00} | {Percent(o.Worn.Coverage)} | {o.Worn.Rule:0.00} |\n"));

        WholeTrial.Outcome Run(int n, WholeTrial.Read read) => WholeTrial.Run(variants, n, WholeSets, read, AsAssumed, new RandomSequence(WholeSeed + (ulong)n + (read == WholeTrial.Read.Form ? 100u : 0)));

        static string Errors(int n, EstimateTrial.Outcome o) => Line($"| {n} | {Percent(o.Coverage)} | {o.Rule:0.00} | {o.Likeliest:0.00} | {o.Mean:0.00} | {o.LeastWorn:0.00} | {o.Rule / o.Mean:0.00} |\n");
    }

    private static void Sizes(ImmutableArray<Variant> variants, TextWriter to)
    {
        to.Write(Line($"""

            ## How far an estimate is off

            {Sets} sets of n survivors a row, the size drawn at random from the group. Errors are root-mean-square, millimetres (degrees for angles). *Held*: by the stated 95 % interval; a figure scatters by 0.3 %. *Likeliest*: the middle of the likelihood, which `reconstruct` shows beside the rule's value. *Share*: the estimate's error over that of the naive mean.

            """));
        foreach (SizeGroup group in SizeGroup.Of(variants))
        {
            to.Write("\n### " + group.Name + "\n\n| n | held | width | error of the estimate | of the likeliest | of the mean | of the least worn | share |\n| --- | --- | --- | --- | --- | --- | --- | --- |\n");
            for (int n = 1; n <= 10; n++)
            {
                EstimateTrial.Outcome o = EstimateTrial.Run(group, n, Sets, AsAssumed, new RandomSequence(SizeSeed + (ulong)n));
                to.Write(Line($"| {n} | {Percent(o.Coverage)} | {o.Width:0.000} | {o.Rule:0.000} | {o.Likeliest:0.000} | {o.Mean:0.000} | {o.LeastWorn:0.000} | {o.Rule / o.Mean:0.00} |\n"));
            }
        }
    }

    private static void WrongAssumptions(ImmutableArray<Variant> variants, TextWriter to)
    {
        to.Write(Line($"""

            ## When survivors are not as assumed

            The estimates keep assuming the tables; {FewerSets} sets a figure. Hole and pin come out like pads and tongue: their wear too is four times their spread. *Share at 5*: error of the estimate, and of the likeliest, over that of the naive mean, five survivors.

            """));
        foreach (SizeGroup group in SizeGroup.Of(variants).Where(g => !g.Name.StartsWith("Pi", StringComparison.Ordinal)))
        {
            to.Write("\n### " + group.Name + "\n\n| survivors | " + string.Join(" | ", Few.Select(n => "held, n = " + n.ToString(CultureInfo.InvariantCulture))) + " | share at 5 | likeliest's |\n|" + string.Concat(Enumerable.Repeat(" --- |", Few.Length + 3)) + "\n");
            for (int i = 0; i < Wrong.Length; i++)
            {
                TrialConditions conditions = Wrong[i];
                if (conditions.Wear != 1 && group.At != ReadAt.Worn)
                    continue;
                EstimateTrial.Outcome[] outcomes = [.. Few.Select(n => EstimateTrial.Run(group, n, FewerSets, conditions, new RandomSequence(WrongSeed + (ulong)((100 * i) + n))))];
                EstimateTrial.Outcome five = outcomes[Array.IndexOf(Few, 5)];
                string held = string.Join(" | ", outcomes.Select(o => Percent(o.Coverage)));
                to.Write(Line($"| {conditions.Name} | {held} | {five.Rule / five.Mean:0.00} | {five.Likeliest / five.Mean:0.00} |\n"));
            }
        }
    }

    private static string Percent(double share) => Line($"{share * 100:0.0} %");

    private static string Line(FormattableString text) => FormattableString.Invariant(text);
}
