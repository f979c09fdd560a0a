using System.Globalization;
using LeverDraw.Cli.Json;
using LeverDraw.Specimens.Identification;

namespace LeverDraw.Cli.Specimens;

/// <summary>Findings of <c>identify</c> as text and as JSON.</summary>
internal static class IdentifyPrinter
{
    private const int MostFurther = 3;

    /// <summary>Odds beyond this are not told to a figure: the model's own faults are larger.</summary>
    private const double MostOdds = 1000;

    public static void Text(Identification found, TextWriter to)
    {
        foreach (PartFinding part in found.Parts)
        {
            to.WriteLine($"{part.Specimen}, {part.Part}: {Verdict(part)}");
            foreach (StrangeFeature strange in part.Strange)
                to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  altered or exchanged ({strange.AlteredShare * 100:0} %): {strange.Feature}") + (strange.Fits is { } fits ? $", which fits '{fits.Name}'" : ", which fits no variant there is"));
            if (part.Further.Length > 0)
                to.WriteLine("  would tell more: " + string.Join(", ", part.Further.Take(MostFurther).Select(f => string.Create(CultureInfo.InvariantCulture, $"{f.Measurand.Name} ({f.Bits:0.00} bit)"))));
        }

        foreach (MixedParts mixed in found.Mixed)
            to.WriteLine($"{mixed.Specimen}: mixed parts: lever '{mixed.Lever.Name}' belongs with pin {mixed.Belongs}, this pin is '{mixed.Pin.Name}'" + (mixed.HoleFitsPin ? "; its hole was drilled out for it" : string.Empty));
    }

    private static string Verdict(PartFinding part)
    {
        string readings = string.Create(CultureInfo.InvariantCulture, $" ({part.Readings} {(part.Readings == 1 ? "size" : "sizes and forms")} read)");
        Candidate[] ranked = [.. part.Candidates];
        string second = ranked.Length > 1 && ranked[1].Share > 1 / MostOdds ? "; runner-up " + Name(ranked[1]) : string.Empty;
        return part.Verdict switch
        {
            LeverDraw.Specimens.Identification.Verdict.Identified => Name(ranked[0]) + ", odds " + Odds(part.Odds) + second + readings,
            LeverDraw.Specimens.Identification.Verdict.Unknown => "none of the known variants, odds " + Odds(part.Odds) + second + readings,
            _ => "cannot tell: " + string.Join(", ", part.Open.Select(c => string.Create(CultureInfo.InvariantCulture, $"{Name(c)} {c.Share * 100:0} %"))) + readings,
        };
    }

    private static string Name(Candidate candidate) => candidate.Variant is { } variant ? "'" + variant.Name + "'" : "none of the known variants";

    private static string Odds(double odds) => odds > MostOdds ? "over 1000 to 1" : string.Create(CultureInfo.InvariantCulture, $"{odds:0} to 1");

    public static PartFindingShape Shape(PartFinding part) => new(
        part.Specimen, part.Part, part.Verdict switch
        {
            LeverDraw.Specimens.Identification.Verdict.Identified => "identified",
            LeverDraw.Specimens.Identification.Verdict.Unknown => "unknown",
            _ => "cannot-tell",
        },
        part.Readings, double.IsFinite(part.Odds) ? part.Odds : null,
        [.. part.Candidates.Select(c => new CandidateShape(c.Variant?.Name, c.Variant?.Path, c.Share))],
        [.. part.Strange.Select(s => new StrangeShape(s.Feature, s.AlteredShare, s.Fits?.Name))],
        [.. part.Further.Select(f => new FurtherShape(f.Measurand.Name, f.Bits))]);
}
