using System.Globalization;
using LeverDraw.Diagnostics;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Lookups;

/// <summary>Stock left for machining by the shop tables.</summary>
public static class StockLookup
{
    private static readonly LookupInput _size = new("SIZE", "Largest size of the casting");
    private static readonly LookupInput _metal = new("METAL", "Name or part of it: cast iron, non-ferrous", SeveralWords: true);

    private static readonly (FinishFace Face, string Name)[] _faces =
        [(FinishFace.Bore, "bore"), (FinishFace.Surface, "surface"), (FinishFace.Cope, "cope (top) face")];

    public static Lookup Entry { get; } = new(
        "stock", "Stock for machining per face, by the shop tables", "stock \"3 in\" non-ferrous", [_size, _metal], Find);

    private static Checked<LookupAnswer> Find(LookupRequest request)
    {
        Length? size = request.Size(_size);
        IReadOnlyList<string> metals = request.Named(
            _metal, "stocks for machining", FinishAllowances.Metals.Concat(OtherFinishAllowances.All.Select(a => a.Metal)).Distinct(StringComparer.Ordinal), m => m);
        LookupRow[] rows = size is { } s ? [.. metals.SelectMany(m => Rows(m, s))] : [];
        if (size is not null && metals.Count > 0 && rows.Length == 0)
            _ = request.Take(FinishAllowances.Stock(metals[0], FinishFace.Surface, size.Value), out _);
        return request.Answer(() => new LookupAnswer("Stock on a casting of " + ZoneRows.Both(size!.Value), [.. rows]));
    }

    private static IEnumerable<LookupRow> Rows(string metal, Length size)
    {
        foreach ((FinishFace face, string name) in _faces)
        {
            if (FinishAllowances.Metals.Contains(metal) && FinishAllowances.Stock(metal, face, size) is { IsGiven: true } stock)
                yield return LookupRow.From(FinishAllowances.Source, metal + ", " + name, LookupValue.Size(stock.Value), "draft not in it");
        }

        foreach (OtherFinishAllowance other in OtherFinishAllowances.All.Where(a => a.Metal == metal))
        {
            bool bySize = other.Basis == StockBasis.SizeInches;
            // A nanometre of grace, as everywhere at the border of a step.
            if (bySize && (size.Inches <= other.Over || size.Inches > other.UpTo + 1e-7))
                continue;
            yield return LookupRow.From(
                OtherFinishAllowances.Source, other.Certainty, metal + (bySize ? ", any face" : ", by mass"), LookupValue.Range(other.Least, other.Most),
                bySize ? "another table" : string.Create(CultureInfo.InvariantCulture, $"over {other.Over} kg") + (double.IsFinite(other.UpTo) ? string.Create(CultureInfo.InvariantCulture, $" up to {other.UpTo} kg") : ""));
        }
    }
}
