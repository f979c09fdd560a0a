using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Profiles;
using LeverDraw.Parts;
using LeverDraw.Specimens.Identification;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Readings;

namespace LeverDraw.Benchmarks.Specimens;

/// <summary>Simulated survivors of the shipped levers, worn and measured as the trade notes say: scatter as made, exponential wear, a caliper with an error of its own read to 0.01 mm, forms misread now and then.</summary>
internal static class IdentifyTrial
{
    /// <summary>The sizes and forms in which the shipped levers differ.</summary>
    private static readonly ImmutableArray<string> Discriminating =
    [
        "head.width", "head.height", "head.depth", "hole.diameter", "hole.taper", "arms.form", "arms.thickness", "arms.width", "fork.gap", "fork.crotch_radius", "pads.thickness", "pads.length",
        "pads.crown_radius", "pads.end", "tongue.form", "tongue.width", "tongue.thickness", "boss.sides", "mark.place",
    ];

    /// <param name="Called">How often one variant was called.</param>
    /// <param name="Right">How often the first was the right one.</param>
    /// <param name="Wrong">How often a wrong one was called.</param>
    public sealed record Outcome(int Specimens, int First, int Called, int Right, int Wrong);

    public static ImmutableArray<Variant> Variants()
    {
        var inputs = Inputs.Load();
        return [.. Inputs.Names.Where(n => n.StartsWith("levers/", StringComparison.Ordinal)).Select(n => Variant.Of(ProfileReader.Read(n + ".toml", inputs, PartKinds.Fields).Value!)!)];
    }

    /// <param name="read">How many of the discriminating sizes and forms are read, taken at random; all when more.</param>
    public static Outcome Run(ImmutableArray<Variant> variants, int specimens, int read, RandomSequence random)
    {
        int first = 0, called = 0, right = 0, wrong = 0;
        for (int i = 0; i < specimens; i++)
        {
            Variant truth = variants[random.Below(variants.Length)];
            ImmutableArray<Evidence> evidence = [.. Discriminating.OrderBy(_ => random.Uniform()).Take(read).Select(n => Measurands.Find(n)!).Select(m => Seen(m, truth, random)).OfType<Evidence>()];
            if (evidence.IsEmpty)
            {
                i--;
                continue;
            }

            PartFinding found = Identify.Part("x", "lever", evidence, variants, askFurther: false);
            bool good = found.Candidates[0].Variant == truth;
            first += good ? 1 : 0;
            if (found.Verdict == Verdict.CannotTell)
                continue;
            called++;
            right += good ? 1 : 0;
            wrong += good ? 0 : 1;
        }

        return new Outcome(specimens, first, called, right, wrong);
    }

    private static Evidence? Seen(Measurand m, Variant truth, RandomSequence random)
    {
        if (truth.Words.TryGetValue(m.Name, out string? word))
        {
            string[] others = m.Kind == ReadingKind.Taper ? [word == "parallel" ? "tapered" : "parallel"] : [.. m.Words.Where(w => w != word)];
            return new Evidence(m, null, others.Length > 0 && random.Uniform() < 0.02 ? others[random.Below(others.Length)] : word);
        }

        if (!truth.Sizes.TryGetValue(m.Name, out double size))
            return null;
        double made = random.Normal(m.Spread(size)), wear = m.Wear == WearSide.None ? 0 : random.Exponential(m.UsualWear) * (m.Wear == WearSide.Smaller ? -1 : 1);
        Instrument with = m.Name.EndsWith("radius", StringComparison.Ordinal) ? Instruments.RadiusGauge : m.Feature == "hole" ? Instruments.PinGauge : Instruments.Caliper;
        double error = Math.Sqrt(3) * with.Common(false, size) * ((2 * random.Uniform()) - 1), step = with.Step.Millimetres;
        double value = Math.Round((size + made + wear + error) / step) * step;
        return new Evidence(m, SpecimenValue.Of([new Reading("x", m, value, null, with, ReadAt.Unsaid, false, string.Empty, SourcePosition.WholeFile("x"))]), null);
    }
}
