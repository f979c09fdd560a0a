using System.Globalization;
using LeverDraw.Diagnostics;
using LeverDraw.Standards;

namespace LeverDraw.Lookups;

/// <summary>The casting tolerance grades a metal and process hold.</summary>
public static class CastingGradesLookup
{
    private static readonly LookupInput _metal = new("METAL", "Name or part of it: copper alloys, grey iron", SeveralWords: true);

    public static Lookup Entry { get; } = new(
        "casting-grades", "Casting tolerance grades (DCTG) to expect, by metal and process", "casting-grades copper alloys", [_metal], Find);

    private static Checked<LookupAnswer> Find(LookupRequest request)
    {
        IReadOnlyList<CastingGradeBand> bands = request.Named(_metal, "casting grades", CastingGradesByProcess.All, b => b.Metal);
        return request.Answer(() => new LookupAnswer("Casting tolerance grades: " + string.Join(", ", bands.Select(b => b.Metal).Distinct()),
        [
            .. bands.Select(b => LookupRow.From(
                CastingGradesByProcess.Source, b.Certainty, b.Metal + ", " + b.Process, LookupValue.Amount(b.FinestGrade, b.CoarsestGrade, ""), Series(b.Series))),
            LookupRow.From(CastingGradesByProcess.Source, Certainty.Thin, "short series, small sizes", LookupValue.Word("finer"), Finer()),
        ]));
    }

    private static string Series(CastingSeries series) => series switch
    {
        CastingSeries.Short => "short series",
        CastingSeries.Long => "long series",
        _ => "series not said",
    };

    private static string Finer() => string.Join(", ", new[] { 10.0, 16, 25 }.Select(mm => string.Create(
        CultureInfo.InvariantCulture, $"{CastingGradesByProcess.GradesFinerWhenSmall(Units.Length.FromMillimetres(mm))} up to {mm} mm"))) + "; number of grades";
}
