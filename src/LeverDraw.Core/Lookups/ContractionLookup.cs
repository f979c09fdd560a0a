using LeverDraw.Diagnostics;
using LeverDraw.Standards;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Lookups;

/// <summary>Contraction of a metal: the spread, the value to start from, every reading behind them.</summary>
public static class ContractionLookup
{
    private static readonly LookupInput _metal = new("METAL", "Name or part of it: brass, grey iron", SeveralWords: true);
    private static readonly LookupInput _size = new("--size", "A size of the casting, to give that of the pattern", Needed: false);

    public static Lookup Entry { get; } = new(
        "contraction", "Contraction of a metal: default, range and every reading", "contraction grey iron", [_metal, _size], Find);

    private static Checked<LookupAnswer> Find(LookupRequest request)
    {
        Length? size = request.Size(_size);
        IReadOnlyList<Contraction> metals = request.Named(_metal, "contractions", Contractions.All, c => c.Metal);
        return request.Answer(() => new LookupAnswer(
            "Contraction: " + string.Join(", ", metals.Select(m => m.Metal)), [.. metals.SelectMany(m => Rows(m, size, metals.Count > 1))]));
    }

    private static IEnumerable<LookupRow> Rows(Contraction metal, Length? size, bool several)
    {
        string of = several ? metal.Metal + ", " : "";
        StandardSource source = Contractions.Source;
        yield return LookupRow.From(source, metal.Certainty, of + "default", LookupValue.PerLength(metal.Usual, metal.Usual), OtherForms(metal.Usual) + "; to start from, your foundry's own replaces it");
        yield return LookupRow.From(
            source, metal.Certainty, of + "range", LookupValue.PerLength(metal.Lowest, metal.Highest),
            string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{metal.Sources} distinct {(metal.Sources == 1 ? "source" : "sources")}"));
        if (size is { } casting)
        {
            yield return LookupRow.From(source, metal.Certainty, of + "pattern, by default", LookupValue.Size(casting * Contractions.PatternFactor(metal.Usual)), "contraction only, no stock, no draft");
            yield return LookupRow.From(
                source, metal.Certainty, of + "pattern, by range",
                LookupValue.Range(casting * Contractions.PatternFactor(metal.Lowest), casting * Contractions.PatternFactor(metal.Highest)));
            string bySize = metal.Metal == "carbon steel" ? "cast steel" : metal.Metal;
            if (ContractionBySize.Of(bySize, casting) is { IsGiven: true } figure)
                yield return LookupRow.From(ContractionBySize.Source, of + "by pattern size", LookupValue.PerLength(figure.Value, figure.Value));
        }

        foreach (ContractionReading reading in ContractionReadings.Behind(metal.Metal))
        {
            yield return LookupRow.From(
                ContractionReadings.Source, reading.Kind == "from memory" ? Certainty.FromMemory : Certainty.Thin, of + "reading, " + reading.Metal,
                LookupValue.PerLength(reading.Lowest / 1000, reading.Highest / 1000), reading.Kind + ": " + reading.AsGiven);
        }
    }

    /// <summary>The same in per cent and as one part in so many.</summary>
    private static string OtherForms(double contraction) =>
        ContractionText.Percent(ContractionRate.Of(contraction)) + ", " + ContractionText.OneIn(ContractionRate.Of(contraction));
}
