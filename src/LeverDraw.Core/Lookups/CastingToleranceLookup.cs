using System.Globalization;
using LeverDraw.Diagnostics;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Lookups;

/// <summary>Casting tolerance of a size in a grade; the table gives total widths, which are halved for plus or minus.</summary>
public static class CastingToleranceLookup
{
    private static readonly LookupInput _size = new("SIZE", "Raw size of the casting");
    private static readonly LookupInput _grade = new("GRADE", "1 to 16: 12, DCTG12");

    public static Lookup Entry { get; } = new(
        "casting-tolerance", "Casting tolerance (DCTG) of a size in a grade", "casting-tolerance 45 12", [_size, _grade], Find);

    private static Checked<LookupAnswer> Find(LookupRequest request)
    {
        Length? size = request.Size(_size);
        int? grade = request.Whole(_grade, "DCTG");
        List<LookupRow> rows = [];
        if (size is { } nominal && grade is { } g && request.Take(CastingTolerances.TotalWidth(g, nominal), out Length total)
            && request.Take(CastingTolerances.PlusMinus(g, nominal), out Length half))
        {
            StandardSource source = CastingTolerances.Source;
            // Two sources agree to 400 mm, one goes on.
            Certainty howSure = nominal.Millimetres <= 400 ? Certainty.Solid : Certainty.Thin;
            rows.Add(LookupRow.From(source, howSure, "total width", LookupValue.Size(total), "as the table gives it"));
            rows.Add(LookupRow.From(source, howSure, "plus or minus", LookupValue.PlusMinus(half), "half the total width"));
            rows.Add(LookupRow.From(source, howSure, "limits of the raw size", LookupValue.Range(nominal - half, nominal + half)));
            int wall = CastingTolerances.WallGrade(g);
            if (CastingTolerances.PlusMinus(wall, nominal) is { IsGiven: true } walls)
                rows.Add(LookupRow.From(source, Certainty.Thin, "if it is a wall", LookupValue.PlusMinus(walls.Value), "DCTG " + Whole(wall) + ", one grade coarser"));
        }

        return request.Answer(() => new LookupAnswer("DCTG " + Whole(grade!.Value) + " on a raw size of " + ZoneRows.Both(size!.Value), [.. rows]));
    }

    private static string Whole(int n) => n.ToString(CultureInfo.InvariantCulture);
}
