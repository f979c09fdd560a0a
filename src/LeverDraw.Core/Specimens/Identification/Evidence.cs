using System.Collections.Immutable;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Readings;

namespace LeverDraw.Specimens.Identification;

/// <summary>What one specimen's readings of one size or form come to.</summary>
/// <param name="Value">Null for a form.</param>
/// <param name="Word">Null for a size.</param>
internal sealed record Evidence(Measurand Measurand, SpecimenValue? Value, string? Word)
{
    /// <summary>Of one specimen's readings of one part; only what counts.</summary>
    public static ImmutableArray<Evidence> Of(ReadingSet readings, string specimen, string part) =>
        [.. readings.All.Where(r => r.Specimen == specimen && r.Measurand.Part == part && r.Counts).GroupBy(r => r.Measurand)
            .Select(g => g.Key.Kind is ReadingKind.Size or ReadingKind.Angle ? new Evidence(g.Key, SpecimenValue.Of([.. g]), null) : new Evidence(g.Key, null, g.Last().Word))];
}
