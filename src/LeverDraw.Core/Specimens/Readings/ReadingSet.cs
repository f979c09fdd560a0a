using System.Collections.Immutable;
using LeverDraw.Specimens.Measuring;

namespace LeverDraw.Specimens.Readings;

/// <summary>All readings of a file, in its order.</summary>
public sealed record ReadingSet(string Path, ImmutableArray<Reading> All)
{
    /// <summary>In the order they first come.</summary>
    public ImmutableArray<string> Specimens => [.. All.Select(r => r.Specimen).Distinct()];

    public bool Has(string part) => All.Any(r => r.Measurand.Part == part);

    /// <summary>One value per specimen of what counts; a specimen without one is left out.</summary>
    internal ImmutableArray<SpecimenValue> Of(Measurand measurand) =>
        [.. All.Where(r => r.Measurand == measurand && r.Counts).GroupBy(r => r.Specimen).Select(g => SpecimenValue.Of([.. g]))];
}
