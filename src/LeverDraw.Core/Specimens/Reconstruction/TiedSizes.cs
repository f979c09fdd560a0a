using System.Collections.Immutable;
using LeverDraw.Profiles;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Statistics;

namespace LeverDraw.Specimens.Reconstruction;

/// <summary>One estimate of a group of tied sizes, before and after they were made to agree.</summary>
/// <param name="Residual">Estimate less adjusted, millimetres.</param>
/// <param name="Weighed">The residual over its estimate's own standard uncertainty.</param>
public sealed record TieResidual(string Name, double Estimated, double Adjusted, double Residual, double Weighed);

/// <summary>Sizes tied by geometry and adjusted together.</summary>
/// <param name="ChiSquare">Sum of the squares of the weighed residuals.</param>
/// <param name="Limit">What chi-square stays below in 95 % of such groups, with <paramref name="Freedom"/> degrees of freedom; infinite with none.</param>
public sealed record TieGroup(ImmutableArray<TieResidual> Residuals, double ChiSquare, int Freedom, double Limit)
{
    public bool Agrees => ChiSquare <= Limit;
}

/// <summary>Makes sizes that are tied by geometry (a width over all is its parts together) agree, by weighted least squares.</summary>
internal static class TiedSizes
{
    /// <param name="estimates">By name; changed to the adjusted ones, and those that only follow from others added.</param>
    /// <param name="taper">Rate of the taper, taken as known.</param>
    public static ImmutableArray<TieGroup> Adjust(Dictionary<string, SizeEstimate> estimates, ImmutableArray<Measurand> all, double taper)
    {
        var ties = all.Where(m => m.Derived is not null && estimates.ContainsKey(m.Name)).Select(m => m.Derived!).ToList();
        var groups = ImmutableArray.CreateBuilder<TieGroup>();
        while (ties.Count > 0)
        {
            List<DerivedSize> group = [ties[0]];
            ties.RemoveAt(0);
            while (ties.FirstOrDefault(t => group.Any(g => Unknowns(g).Intersect(Unknowns(t)).Any())) is { } joined)
            {
                group.Add(joined);
                ties.Remove(joined);
            }

            if (Group(group, estimates, all, taper) is { } adjusted)
                groups.Add(adjusted);
        }

        return groups.ToImmutable();
    }

    private static IEnumerable<string> Unknowns(DerivedSize tie) => tie.Fields.OfType<SizeField>().Select(f => f.Name);

    private static TieGroup? Group(List<DerivedSize> ties, Dictionary<string, SizeEstimate> estimates, ImmutableArray<Measurand> all, double taper)
    {
        string[] unknowns = [.. ties.SelectMany(Unknowns).Distinct().Where(n => estimates.ContainsKey(n) || !DerivedSizes.MayLack(all.First(m => m.Name == n).Field!))];
        string[] read = [.. unknowns.Where(estimates.ContainsKey), .. ties.Select(t => t.Name)];
        if (read.Length < unknowns.Length)
            return null;
        double[] start = [.. unknowns.Select(n => estimates.TryGetValue(n, out SizeEstimate? own) ? own.Value : (all.First(m => m.Name == n).Least + all.First(m => m.Name == n).Most) / 2)];
        LeastSquaresFit? fit = LeastSquares.Fit(start, x => [.. read.Select(n => (Model(n, x) - estimates[n].Value) / estimates[n].Deviation)]);
        if (fit is null)
            return null;
        TieResidual[] residuals = [.. read.Select(n => new TieResidual(n, estimates[n].Value, Model(n, fit.Values), estimates[n].Value - Model(n, fit.Values), (estimates[n].Value - Model(n, fit.Values)) / estimates[n].Deviation))];
        int specimens = read.Max(n => estimates[n].Specimens), count = read.Sum(n => estimates[n].Readings);
        // Readings that disagree are uncertain by more than they say, at least by so much that they would agree (Birge's ratio).
        double stretch = read.Length > unknowns.Length ? Math.Max(1, Math.Sqrt(fit.SquareSum / (read.Length - unknowns.Length))) : 1;
        for (int i = 0; i < unknowns.Length; i++)
        {
            double reach = 1.96 * stretch * fit.Deviations[i];
            if (estimates.ContainsKey(unknowns[i]) && read.Length == unknowns.Length)
                continue;
            estimates[unknowns[i]] = estimates.TryGetValue(unknowns[i], out SizeEstimate? own)
                ? own with { Value = fit.Values[i], From = fit.Values[i] - reach, To = fit.Values[i] + reach, IsAdjusted = true, Likeliest = null }
                : new SizeEstimate(all.First(m => m.Name == unknowns[i]), fit.Values[i], fit.Values[i] - reach, fit.Values[i] + reach, EstimateRule.Tied, specimens, count);
        }

        int freedom = read.Length - unknowns.Length;
        return new TieGroup([.. residuals], fit.SquareSum, freedom, freedom > 0 ? Quantiles.ChiSquare(freedom, 0.95) : double.PositiveInfinity);

        double Model(string name, double[] x)
        {
            if (Array.IndexOf(unknowns, name) is >= 0 and var at)
                return x[at];
            DerivedSize tie = ties.First(t => t.Name == name);
            return tie.From([.. tie.Fields.Select(f => f is TaperField ? taper : Array.IndexOf(unknowns, f.Name) is >= 0 and var i ? x[i] : 0)]);
        }
    }
}
