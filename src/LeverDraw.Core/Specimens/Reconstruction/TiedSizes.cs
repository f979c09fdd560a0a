using System.Collections.Immutable;
using LeverDraw.Profiles;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Readings;
using LeverDraw.Specimens.Statistics;

namespace LeverDraw.Specimens.Reconstruction;

/// <summary>One reading of a group of tied sizes, before and after the group was made to agree.</summary>
/// <param name="Residual">Read less adjusted, millimetres.</param>
/// <param name="Weighed">The residual over the standard uncertainty it has within one part.</param>
public sealed record TieResidual(string Name, double Read, double Adjusted, double Residual, double Weighed);

/// <summary>Sizes of one specimen that are tied by geometry, adjusted together.</summary>
/// <param name="ChiSquare">Sum of the squares of the weighed residuals.</param>
/// <param name="Limit">What chi-square stays below in 95 % of such groups, with <paramref name="Freedom"/> degrees of freedom; infinite with none.</param>
public sealed record TieGroup(string Specimen, ImmutableArray<TieResidual> Residuals, double ChiSquare, int Freedom, double Limit)
{
    public bool Agrees => ChiSquare <= Limit;
}

/// <summary>Makes the sizes of a specimen that are tied by geometry (a width over all is its parts together) agree, by weighted least squares.</summary>
/// <remarks>Specimen by specimen, before any size is estimated: on one part the tie holds as it is, however the part was made and worn, and only reading parts the sizes from it. Estimates of several parts are no such readings: both ends of a hole have worn by the same wear.</remarks>
internal static class TiedSizes
{
    /// <param name="specimens">In the order they are to be told of.</param>
    /// <param name="values">Of each size read, one a specimen; the fields that ties tell something of are changed, or added.</param>
    /// <param name="taper">Rate of the taper, taken as known.</param>
    public static ImmutableArray<TieGroup> Adjust(ImmutableArray<string> specimens, Dictionary<string, ImmutableArray<SpecimenValue>> values, ImmutableArray<Measurand> all, double taper)
    {
        ImmutableDictionary<string, ImmutableArray<SpecimenValue>> read = values.ToImmutableDictionary();
        ImmutableArray<TieFit> fits =
            [.. specimens.SelectMany(s => Groups([.. all.Where(m => m.Derived is not null && Has(read, m.Name, s))]).Select(group => TieFit.Of(s, group, read, all, taper)).OfType<TieFit>())];
        foreach ((string name, SpecimenValue value) in fits.SelectMany(f => f.Told))
            values[name] = [.. values.GetValueOrDefault(name, []).Where(v => v.Specimen != value.Specimen), value];
        return [.. fits.Select(f => f.Group)];
    }

    private static bool Has(ImmutableDictionary<string, ImmutableArray<SpecimenValue>> read, string name, string specimen) => read.TryGetValue(name, out ImmutableArray<SpecimenValue> values) && values.Any(v => v.Specimen == specimen);

    /// <summary>Those that share a size stand together.</summary>
    private static IEnumerable<ImmutableArray<Measurand>> Groups(List<Measurand> ties)
    {
        while (ties.Count > 0)
        {
            List<Measurand> group = [ties[0]];
            ties.RemoveAt(0);
            while (ties.FirstOrDefault(t => group.Any(g => TieFit.Unknowns(g.Derived!).Intersect(TieFit.Unknowns(t.Derived!)).Any())) is { } joined)
            {
                group.Add(joined);
                ties.Remove(joined);
            }

            yield return [.. group];
        }
    }
}
