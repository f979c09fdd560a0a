using System.Collections.Immutable;
using System.Text;
using LeverDraw.Diagnostics;
using LeverDraw.Profiles;

namespace LeverDraw.Specimens.Readings;

/// <summary>Rows of comma-separated values (RFC 4180; a semicolon or a tab does as well when the heads have it), one row a line, <c>#</c> begins a comment.</summary>
internal static class CsvRows
{
    private static readonly ImmutableArray<string> Columns = ["specimen", "field", "value", "unit", "instrument", "where", "altered", "note"];

    private static readonly ImmutableArray<string> Needed = ["specimen", "field", "value"];

    public static IEnumerable<RawReading> Read(SourceMap source, FileFaults faults)
    {
        string[]? heads = null;
        char separator = ',';
        var rows = new List<RawReading>();
        for (int line = 1; line <= source.LineCount; line++)
        {
            TextSpan span = source.Line(line);
            string text = source.Slice(span);
            if (string.IsNullOrWhiteSpace(text) || text.TrimStart().StartsWith('#'))
                continue;
            if (heads is null)
                separator = Separator(text);
            if (Cells(text, span.Start, separator, faults) is not { } cells)
                continue;
            if (heads is null)
            {
                heads = Heads(cells, span, faults);
                if (heads is null)
                    return [];
            }
            else if (cells.Count != heads.Length)
                faults.Add(DiagnosticCatalogue.ReadingCells, span, null, cells.Count, heads.Length);
            else
                rows.Add(Row(heads, cells, span));
        }

        return rows;
    }

    private static char Separator(string heads) => heads.Contains(';', StringComparison.Ordinal) ? ';' : heads.Contains('\t', StringComparison.Ordinal) ? '\t' : ',';

    private static string[]? Heads(List<RawCell> cells, TextSpan line, FileFaults faults)
    {
        bool good = true;
        string[] heads = [.. cells.Select(c => c.Text.Trim().ToLowerInvariant())];
        foreach (RawCell cell in cells.Where(c => !Columns.Contains(c.Text.Trim().ToLowerInvariant())))
        {
            string? near = NearestName.Of(cell.Text.Trim(), Columns);
            faults.AddWithHint(DiagnosticCatalogue.ReadingColumnUnknown, cell.Span, null, near is null ? null : "Did you mean '" + near + "'?", FieldReader.Shown(cell.Text), string.Join(", ", Columns));
            good = false;
        }

        foreach (string missing in Needed.Where(n => !heads.Contains(n)))
        {
            faults.Add(DiagnosticCatalogue.ReadingColumnMissing, line, null, missing, string.Join(", ", Columns));
            good = false;
        }

        return good ? heads : null;
    }

    private static RawReading Row(string[] heads, List<RawCell> cells, TextSpan line)
    {
        return new RawReading(At("specimen"), At("field"), At("value"), At("unit"), At("instrument"), At("where"), At("altered"), At("note"));
        RawCell At(string head) => Array.IndexOf(heads, head) is >= 0 and var at ? cells[at] : new RawCell(string.Empty, line);
    }

    private static List<RawCell>? Cells(string line, int start, char separator, FileFaults faults)
    {
        var cells = new List<RawCell>();
        int at = 0;
        while (true)
        {
            int from = at;
            while (at < line.Length && line[at] == ' ')
                at++;
            if (at < line.Length && line[at] == '"')
            {
                if (Quoted(line, ref at) is not { } text)
                {
                    faults.Add(DiagnosticCatalogue.ReadingQuote, new TextSpan(start + at, line.Length - at), null);
                    return null;
                }

                cells.Add(new RawCell(text, new TextSpan(start + from, at - from)));
                while (at < line.Length && line[at] != separator)
                    at++;
            }
            else
            {
                while (at < line.Length && line[at] != separator)
                    at++;
                string text = line[from..at];
                string trimmed = text.Trim();
                cells.Add(new RawCell(trimmed, new TextSpan(start + from + text.IndexOf(trimmed, StringComparison.Ordinal), trimmed.Length)));
            }

            if (at >= line.Length)
                return cells;
            at++;
        }
    }

    /// <summary>Leaves <paramref name="at"/> behind the closing quote; at the opening one when there is none.</summary>
    private static string? Quoted(string line, ref int at)
    {
        StringBuilder text = new();
        for (int i = at + 1; i < line.Length; i++)
        {
            if (line[i] != '"')
                text.Append(line[i]);
            else if (i + 1 < line.Length && line[i + 1] == '"')
                text.Append(line[i++]);
            else
            {
                at = i + 1;
                return text.ToString();
            }
        }

        return null;
    }
}
