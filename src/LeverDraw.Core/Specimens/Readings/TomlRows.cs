using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Profiles;
using LeverDraw.Specimens.Measuring;

namespace LeverDraw.Specimens.Readings;

/// <summary>Rows of a TOML file: a table per specimen, an entry per field, quoted or not, <c>"pads.thickness" = { witness = "3.3 mm", worn = "3.0 mm; 2.9 mm", instrument = "caliper" }</c>.</summary>
internal static class TomlRows
{
    private static readonly ImmutableArray<string> Parts = ["value", "worn", "witness", "instrument", "altered", "note"];

    /// <summary>Specimen, and the two names of a field that stands without quotes.</summary>
    private const int DottedField = 3;

    public static IEnumerable<RawReading> Read(SourceMap source, FileFaults faults)
    {
        if (TomlReading.Read(source, faults, DottedField) is not { } document)
            return [];
        var rows = new List<RawReading>();
        foreach (RawEntry entry in document.Entries.Where(e => e.Value is not null))
        {
            string whole = string.Join('.', entry.Path);
            if (entry.Path.Length < 2 || Measurands.Find(whole) is not null)
                faults.AddWithHint(DiagnosticCatalogue.ReadingTable, entry.KeySpan, null, "Put it below the line [A], A being the specimen.", "'" + FieldReader.Shown(whole) + "' outside a specimen's table");
            else
                rows.AddRange(Rows(entry, source, faults));
        }

        return rows;
    }

    private static IEnumerable<RawReading> Rows(RawEntry entry, SourceMap source, FileFaults faults)
    {
        RawCell specimen = new(entry.Path[0], entry.KeySpan), field = new(string.Join('.', entry.Path.Skip(1)), entry.KeySpan), none = new(string.Empty, entry.KeySpan);
        if (entry.Value is not RawInline inline)
            return [new RawReading(specimen, field, Cell(entry.Value!, source), none, none, none, none, none)];
        var given = new Dictionary<string, RawCell>(StringComparer.Ordinal);
        foreach (RawEntry member in inline.Members.Where(m => m.Value is not null))
        {
            string name = string.Join('.', member.Path);
            if (!Parts.Contains(name) || !given.TryAdd(name, Cell(member.Value!, source)))
            {
                string? near = NearestName.Of(name, Parts);
                faults.AddWithHint(DiagnosticCatalogue.ReadingTable, member.KeySpan, field.Text, near is null || near == name ? null : "Did you mean '" + near + "'?", "'" + FieldReader.Shown(name) + "'");
            }
        }

        RawReading[] rows = [.. new[] { "value", "worn", "witness" }.Where(given.ContainsKey).Select(kind => new RawReading(
            specimen, field, given[kind], none, Get("instrument"), kind == "value" ? none : new RawCell(kind, given[kind].Span), Get("altered"), Get("note")))];
        if (rows.Length == 0)
            faults.Add(DiagnosticCatalogue.ReadingTable, inline.Span, field.Text, "A table without value, worn or witness");
        return rows;

        RawCell Get(string name) => given.GetValueOrDefault(name, none);
    }

    private static RawCell Cell(RawValue value, SourceMap source) => value switch
    {
        RawText text => new RawCell(text.Value, text.Span),
        RawFlag flag => new RawCell(flag.Value ? "yes" : "no", flag.Span),
        _ => new RawCell(source.Slice(value.Span), value.Span),
    };
}
