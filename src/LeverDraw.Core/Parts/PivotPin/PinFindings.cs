using System.Globalization;
using LeverDraw.Diagnostics;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts.PivotPin;

/// <summary>Collects what is wrong with a pin's sizes.</summary>
internal sealed class PinFindings(IFieldValues values)
{
    private readonly List<Diagnostic> _all = [];

    public IReadOnlyCollection<Diagnostic> All => _all;

    public static string Mm(Length length) => string.Create(CultureInfo.InvariantCulture, $"{Math.Round(length.Millimetres, 3) + 0.0:0.###} mm");

    public void Odds(string what, string hint, params ReadOnlySpan<FieldSpec> fields) =>
        _all.Add(DiagnosticCatalogue.FieldsAtOdds.AtWithHint(FieldNames.Place(values, fields), fields[0].Name, hint, FieldNames.Quoted(fields), what));

    public void RunsOut(Length small, params ReadOnlySpan<FieldSpec> fields) =>
        _all.Add(DiagnosticCatalogue.TaperRunsOut.At(FieldNames.Place(values, fields), fields[0].Name, FieldNames.Quoted(fields), Mm(small)));

    public void TooShort(Length needed, Length there, params ReadOnlySpan<FieldSpec> fields) =>
        _all.Add(DiagnosticCatalogue.TooShort.At(FieldNames.Place(values, fields), fields[0].Name, FieldNames.Quoted(fields), Mm(needed), Mm(there)));
}
