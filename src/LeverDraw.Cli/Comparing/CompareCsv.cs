using LeverDraw.Comparison;
using LeverDraw.Units;

namespace LeverDraw.Cli.Comparing;

/// <summary>A comparison as comma-separated values (RFC 4180, lines ending in a line feed): one table, the rows' kind in the first column.</summary>
internal static class CompareCsv
{
    public static void Print(TextWriter to, CompareInput input, IEnumerable<ComparedRow> sizes, IEnumerable<ComparedRow> figures, LeverComparison? two, LengthUnit unit)
    {
        Line(to, ["rows", "name", "sign", .. input.Variants.Select((v, i) => CompareLetters.Of(i) + " " + v.ShortName), "unit", .. two is null ? (string[])[] : ["delta mm", "delta in", "delta"], "matters", "why"]);
        foreach ((string kind, IEnumerable<ComparedRow> rows) in ((string, IEnumerable<ComparedRow>)[])[("differs", sizes), ("whole lever", figures), ("overlay", two?.Overlay ?? [])])
        {
            foreach (ComparedRow row in rows)
                Line(to, [kind, row.Name, row.Symbol ?? "", .. ValueText.Of(row, unit).Select(Number), CompareLetters.Unit(row, unit), .. two is null ? (string[])[] : Deltas(row), CompareLetters.Matters(row), row.Why]);
        }
    }

    private static string[] Deltas(ComparedRow row) => row.Delta is null
        ? ["", "", Number(ValueText.Delta(row, LengthUnit.Millimetre))]
        : [Number(ValueText.Delta(row, LengthUnit.Millimetre)), Number(ValueText.Delta(row, LengthUnit.Inch)), ""];

    /// <summary>As spreadsheets read it: a plain minus, a zero before the point, nothing for what is not there.</summary>
    private static string Number(string text)
    {
        if (text == ValueText.None)
            return "";
        string plain = text.Replace('−', '-');
        return plain switch
        {
            ['.', >= '0' and <= '9', ..] => "0" + plain,
            ['-', '.', ..] => "-0" + plain[1..],
            ['+', '.', ..] => "+0" + plain[1..],
            _ => plain,
        };
    }

    private static void Line(TextWriter to, IEnumerable<string> cells) => to.Write(string.Join(',', cells.Select(Quoted)) + "\n");

    private static string Quoted(string cell) =>
        cell.AsSpan().IndexOfAny(",\"\n") >= 0 ? "\"" + cell.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"" : cell;
}
