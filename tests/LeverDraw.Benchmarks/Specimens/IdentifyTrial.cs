using System.Collections.Immutable;
using LeverDraw.Specimens.Identification;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Readings;

namespace LeverDraw.Benchmarks.Specimens;

/// <summary>Simulated levers of known variants: how often the right one is told.</summary>
internal static class IdentifyTrial
{
    /// <summary>How often a form is called by a wrong name.</summary>
    private const double Misread = 0.02;

    /// <summary>The sizes and forms in which the shipped levers differ.</summary>
    public static ImmutableArray<string> Discriminating { get; } =
    [
        "head.width", "head.height", "head.depth", "hole.diameter", "hole.taper", "arms.form", "arms.thickness", "arms.width", "fork.gap", "fork.crotch_radius", "pads.thickness", "pads.length",
        "pads.crown_radius", "pads.end", "tongue.form", "tongue.width", "tongue.thickness", "boss.sides", "mark.place",
    ];

    /// <param name="First">How often the first was the right one.</param>
    /// <param name="Called">How often one variant was called.</param>
    /// <param name="Right">How often the right one was called.</param>
    /// <param name="Wrong">How often a wrong one, or none of them, was called.</param>
    public sealed record Outcome(int Specimens, int First, int Called, int Right, int Wrong);

    /// <param name="levers">Variants of the lever.</param>
    /// <param name="read">How many of the discriminating sizes and forms are read, taken at random; all when more.</param>
    public static Outcome Run(ImmutableArray<Variant> levers, int specimens, int read, TrialConditions conditions, RandomSequence random)
    {
        int first = 0, called = 0, right = 0;
        for (int i = 0; i < specimens; i++)
        {
            Variant truth = levers[random.Below(levers.Length)];
            ImmutableArray<Evidence> evidence = [.. Discriminating.OrderBy(_ => random.Even()).Take(read).Select(n => Seen(Measurands.Find(n)!, truth, conditions, random)).OfType<Evidence>()];
            if (evidence.IsEmpty)
            {
                i--;
                continue;
            }

            PartFinding found = Identify.Part("x", truth.Part, evidence, levers, askFurther: false);
            bool good = found.Candidates[0].Variant == truth, calls = found.Verdict != Verdict.CannotTell;
            first += good ? 1 : 0;
            called += calls ? 1 : 0;
            right += calls && good ? 1 : 0;
        }

        return new Outcome(specimens, first, called, right, called - right);
    }

    private static Evidence? Seen(Measurand m, Variant truth, TrialConditions conditions, RandomSequence random)
    {
        if (truth.Words.TryGetValue(m.Name, out string? word))
        {
            string[] others = m.Kind == ReadingKind.Taper ? [word == "parallel" ? "tapered" : "parallel"] : [.. m.Words.Where(w => w != word)];
            return new Evidence(m, null, others.Length > 0 && random.Even() < Misread ? others[random.Below(others.Length)] : word);
        }

        return truth.Sizes.TryGetValue(m.Name, out double size)
            ? new Evidence(m, SpecimenValue.Of([SimulatedSurvivor.Read("x", m, size, ReadAt.Worn, SimulatedSurvivor.Error(random), conditions, random)]), null)
            : null;
    }
}
