using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Parts;
using LeverDraw.Profiles;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Readings;
using LeverDraw.Units;

namespace LeverDraw.Specimens.Reconstruction;

/// <summary>A form or mark as most specimens have it.</summary>
/// <param name="Agreeing">How many of <paramref name="Specimens"/> have it.</param>
public sealed record SeenForm(Measurand Measurand, string Word, int Agreeing, int Specimens);

/// <summary>An estimate with the sensible sizes inside its interval.</summary>
public sealed record ReconstructedSize(SizeEstimate Estimate, ImmutableArray<SensibleSize> Sensible);

/// <summary>What contraction a known size of the pattern shows: (pattern − casting) / casting, and its 95 % ends.</summary>
public sealed record ShownContraction(string Name, Length Pattern, double Rate, double From, double To);

/// <summary>A part's sizes as survivors show them.</summary>
/// <param name="Taper">Of hole or pin.</param>
/// <param name="Missing">Fields a profile must have that no reading gives.</param>
public sealed record Reconstruction(
    PartKind Kind, ImmutableArray<string> Specimens, ImmutableArray<ReconstructedSize> Sizes, ImmutableArray<SeenForm> Forms, Taper Taper, ImmutableArray<TieGroup> Ties, ImmutableArray<FieldSpec> Missing);

/// <summary>From readings of survivors of one variant to its design sizes.</summary>
public static class Reconstruct
{
    /// <param name="specimens">Those of one variant; empty for all.</param>
    /// <param name="without">Features known to be altered on a specimen, such as <c>hole</c> of C.</param>
    public static Checked<Reconstruction> Run(ReadingSet readings, PartKind kind, ImmutableArray<string> specimens, ImmutableArray<(string Specimen, string Feature)> without)
    {
        ReadingSet own = readings with { All = [.. readings.All.Where(r => r.Measurand.Part == kind.Name && (specimens.IsEmpty || specimens.Contains(r.Specimen)) && !without.Contains((r.Specimen, r.Measurand.Feature)))] };
        if (!own.All.Any(r => r.Counts && r.Word is null))
            return Checked<Reconstruction>.Bad([DiagnosticCatalogue.NothingToReconstruct.At(SourcePosition.WholeFile(readings.Path), null, kind.Name)]);
        ImmutableArray<Measurand> all = [.. Measurands.All.Where(m => m.Part == kind.Name)];
        ImmutableArray<SeenForm> forms = [.. all.Select(m => Form(own, m)).OfType<SeenForm>()];
        Taper taper = TaperOf(own, forms);
        var values = new Dictionary<string, ImmutableArray<SpecimenValue>>(StringComparer.Ordinal);
        foreach (Measurand measurand in all.Where(m => m.Kind is ReadingKind.Size or ReadingKind.Angle))
        {
            if (own.Of(measurand) is { IsEmpty: false } read)
                values[measurand.Name] = read;
        }

        ImmutableArray<TieGroup> ties = TiedSizes.Adjust(own.Specimens, values, all, taper.Rate);
        var estimates = all.Where(m => values.ContainsKey(m.Name)).ToDictionary(m => m.Name, m => SizeEstimator.Of(m, values[m.Name]), StringComparer.Ordinal);
        ImmutableArray<FieldSpec> missing = [.. kind.Fields.Fields.Where(f => !f.IsOptional && f.OnlyWhen is null && f is (SizeField or AngleField) && !estimates.ContainsKey(f.Name))];
        List<Diagnostic> told =
        [
            .. ties.Where(t => !t.Agrees).Select(t => DiagnosticCatalogue.SizesDisagree.At(SourcePosition.WholeFile(readings.Path), t.Residuals[0].Name, string.Join(", ", t.Residuals.Select(r => "'" + r.Name + "'")), t.Specimen, Math.Round(t.ChiSquare, 1), Math.Round(t.Limit, 1))),
            .. missing.Select(f => DiagnosticCatalogue.FieldNotRead.At(SourcePosition.WholeFile(readings.Path), f.Name, f.Name, f.Help)),
        ];
        return Checked<Reconstruction>.Good(
            new Reconstruction(
                kind, own.Specimens,
                [.. all.Where(m => estimates.ContainsKey(m.Name)).Select(m => estimates[m.Name]).Select(e => new ReconstructedSize(e, SensibleSizes.Within(e.Measurand, e.From, e.To)))],
                forms, taper, ties, missing),
            told);
    }

    /// <summary>By GUM 5.1: the rate's spread is the size's over the size.</summary>
    /// <returns>Null when the size was not reconstructed.</returns>
    public static ShownContraction? Contraction(Reconstruction found, string name, Length pattern)
    {
        if (found.Sizes.FirstOrDefault(s => s.Estimate.Measurand.Name == name)?.Estimate is not { Measurand.Kind: ReadingKind.Size } casting)
            return null;
        double p = pattern.Millimetres;
        return new ShownContraction(name, pattern, (p / casting.Value) - 1, (p / casting.To) - 1, (p / casting.From) - 1);
    }

    private static SeenForm? Form(ReadingSet own, Measurand measurand)
    {
        if (measurand.Kind is not (ReadingKind.Word or ReadingKind.Taper))
            return null;
        string[] words = [.. own.All.Where(r => r.Measurand == measurand && r.Counts).GroupBy(r => r.Specimen).Select(g => g.Last().Word!)];
        return words.Length == 0 ? null : words.GroupBy(w => w).OrderByDescending(g => g.Count()).Select(g => new SeenForm(measurand, g.Key, g.Count(), words.Length)).First();
    }

    /// <summary>As read, if it was; else the inch series' taper, which a hand cannot tell from the metric one.</summary>
    private static Taper TaperOf(ReadingSet own, ImmutableArray<SeenForm> forms)
    {
        if (forms.FirstOrDefault(f => f.Measurand.Kind == ReadingKind.Taper) is { Word: "parallel" })
            return Taper.Parallel;
        Reading? stated = own.All.LastOrDefault(r => r.Measurand.Kind == ReadingKind.Taper && r.Counts && r.Value > 0);
        return stated is null ? Taper.InchPins : Taper.OneIn(1 / stated.Value);
    }
}
