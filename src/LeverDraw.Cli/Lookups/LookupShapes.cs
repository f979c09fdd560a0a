using LeverDraw.Cli.Json;
using LeverDraw.Diagnostics;
using LeverDraw.Lookups;
using LeverDraw.Standards;

namespace LeverDraw.Cli.Lookups;

/// <summary>An answer as <c>--json</c> shows it.</summary>
internal static class LookupShapes
{
    public static LookupShape Of(Lookup lookup, Checked<LookupAnswer> answer)
    {
        StandardSource[] sources = answer.Ok ? [.. answer.Value.Sources] : [];
        return new LookupShape(
            answer.Ok,
            lookup.Name,
            answer.Value?.Title,
            answer.Ok ? [.. answer.Value.Rows.Select(row => Of(row, sources))] : [],
            [.. sources.Select(s => new SourceShape(s.Subject, s.Document, s.Edition, s.Table, StandardsDocument.Word(s.Certainty), s.Note))],
            [.. answer.Diagnostics.Select(ShapesJson.Of)]);
    }

    private static LookupValueShape Of(LookupRow row, StandardSource[] sources) => new(
        row.Name,
        row.Value.Text,
        row.Value.Numbers,
        row.Value.Unit,
        row.Value.InchText,
        row.Value.InchNumbers,
        row.Value.InchUnit,
        StandardsDocument.Word(row.HowSure),
        [.. row.Sources.Select(s => Array.IndexOf(sources, s))],
        row.Note);
}
