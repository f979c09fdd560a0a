using System.Globalization;
using LeverDraw.Diagnostics;
using LeverDraw.Profiles;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>Collects what is wrong with a lever's sizes, each finding naming the fields at odds and placed at the first of them that the profile states.</summary>
internal sealed class LeverFindings(IFieldValues values)
{
    private readonly List<Diagnostic> _all = [];

    public IReadOnlyCollection<Diagnostic> All => _all;

    public bool HasErrors => _all.Exists(d => d.Severity == Severity.Error);

    public static string Mm(double millimetres) => string.Create(CultureInfo.InvariantCulture, $"{Math.Round(millimetres, 3) + 0.0:0.###} mm");

    public void Odds(string what, string hint, params ReadOnlySpan<FieldSpec> fields)
    {
        Diagnostic finding = DiagnosticCatalogue.FieldsAtOdds.AtWithHint(Place(fields), fields[0].Name, hint, Names(fields), what);
        // The two sides of a symmetric part fail alike.
        if (!_all.Contains(finding))
            _all.Add(finding);
    }

    /// <summary>Error when <paramref name="broken"/>; the text is only made then.</summary>
    public void OddsIf(bool broken, Func<string> what, string hint, params ReadOnlySpan<FieldSpec> fields)
    {
        if (broken)
            Odds(what(), hint, fields);
    }

    public void NoFillet(double radius, string between, string hint, params ReadOnlySpan<FieldSpec> fields) =>
        _all.Add(DiagnosticCatalogue.FilletImpossible.AtWithHint(Place(fields), fields[0].Name, hint, Names(fields), Mm(radius), between));

    public void Crosses(string outline, string place, params ReadOnlySpan<FieldSpec> fields) =>
        _all.Add(DiagnosticCatalogue.OutlineCrosses.At(Place(fields), fields[0].Name, Names(fields), outline, place));

    public void NoWall(double wall, string where, params ReadOnlySpan<FieldSpec> fields) =>
        _all.Add(DiagnosticCatalogue.NothingLeft.At(Place(fields), fields[0].Name, Names(fields), Mm(wall), where));

    public void ThinWall(double wall, double wanted, string where, params ReadOnlySpan<FieldSpec> fields) =>
        _all.Add(DiagnosticCatalogue.ThinWall.At(Place(fields), fields[0].Name, Names(fields), Mm(wall), where, Mm(wanted)));

    public void TooShort(double needed, double there, string hint, params ReadOnlySpan<FieldSpec> fields) =>
        _all.Add(DiagnosticCatalogue.TooShort.AtWithHint(Place(fields), fields[0].Name, hint, Names(fields), Mm(needed), Mm(there)));

    private static string Names(ReadOnlySpan<FieldSpec> fields) => FieldNames.Quoted(fields);

    private SourcePosition Place(ReadOnlySpan<FieldSpec> fields) => FieldNames.Place(values, fields);
}
