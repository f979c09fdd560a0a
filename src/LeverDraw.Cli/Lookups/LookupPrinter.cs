using System.Globalization;
using LeverDraw.Cli.Reporting;
using LeverDraw.Lookups;
using LeverDraw.Standards;

namespace LeverDraw.Cli.Lookups;

/// <summary>An answer as text: a line per value in columns, then the tables it came from.</summary>
internal static class LookupPrinter
{
    private const int Widest = 110;

    public static void Print(TextWriter to, LookupAnswer answer, bool colour)
    {
        to.WriteLine(answer.Title);
        to.WriteLine();
        StandardSource[] sources = [.. answer.Sources];
        string[][] cells = [.. answer.Rows.Select(row => Cells(row, sources))];
        foreach (string line in Columns.Of(cells))
            to.WriteLine("  " + line);
        to.WriteLine();
        for (int i = 0; i < sources.Length; i++)
        {
            foreach (string line in Wrapped("  " + Reference(i) + " " + Named(sources[i])))
                to.WriteLine(Paint.Quiet(line, colour));
        }
    }

    private static IEnumerable<string> Wrapped(string text)
    {
        while (text.Length > Widest && text.LastIndexOf(' ', Widest) is var at and > 8)
        {
            yield return text[..at];
            text = "      " + text[(at + 1)..];
        }

        yield return text;
    }

    private static string[] Cells(LookupRow row, StandardSource[] sources) =>
    [
        row.Name,
        row.Value.Text,
        row.Value.InchText,
        StandardsDocument.Word(row.HowSure),
        string.Join(' ', row.Sources.Select(s => Reference(Array.IndexOf(sources, s)))),
        row.Note,
    ];

    private static string Reference(int index) => string.Create(CultureInfo.InvariantCulture, $"[{index + 1}]");

    private static string Named(StandardSource source) =>
        source.Name + (source.Table.Length == 0 ? "" : ", " + source.Table) + ": " + source.Subject.ToLowerInvariant()[..1] + source.Subject[1..]
        + ". As a whole " + StandardsDocument.Word(source.Certainty) + ": " + source.Note + ".";
}
