using LeverDraw.Diagnostics;
using LeverDraw.Standards;

namespace LeverDraw.Lookups;

/// <summary>The machining allowance grades usual for a metal and process.</summary>
public static class MachiningGradesLookup
{
    private static readonly LookupInput _metal = new("METAL", "Name or part of it: copper alloys, grey iron", SeveralWords: true);

    public static Lookup Entry { get; } = new(
        "machining-grades", "Machining allowance grades (RMAG) to take, by metal and process", "machining-grades grey iron", [_metal], Find);

    private static Checked<LookupAnswer> Find(LookupRequest request)
    {
        IReadOnlyList<MachiningAllowanceBand> bands = request.Named(_metal, "machining allowance grades", MachiningAllowanceGrades.All, b => b.Metal);
        return request.Answer(() => new LookupAnswer(
            "Machining allowance grades: " + string.Join(", ", bands.Select(b => b.Metal).Distinct()),
            [.. bands.Select(b => LookupRow.From(MachiningAllowanceGrades.Source, b.Certainty, b.Metal + ", " + b.Process, LookupValue.Word(Band(b))))]));
    }

    private static string Band(MachiningAllowanceBand b) => b.FinestGrade == b.CoarsestGrade ? b.FinestGrade.ToString() : b.FinestGrade + " to " + b.CoarsestGrade;
}
