using LeverDraw.Cli.Reporting;
using LeverDraw.Comparison;
using LeverDraw.Units;

namespace LeverDraw.Cli.Comparing;

/// <summary>A comparison as comma-separated values: one table, the rows' kind in the first column.</summary>
internal static class CompareCsv
{
    public static void Print(TextWriter to, CompareResult result, LengthUnit unit)
    {
        bool two = result.Two is not null;
        CsvText.Row(to, ["rows", "name", "sign", .. result.Input.Variants.Select((v, i) => CompareLetters.Of(i) + " " + v.ShortName), "unit", .. two ? (string[])["delta mm", "delta in", "delta"] : [], "matters", "why"]);
        foreach ((string kind, IEnumerable<ComparedRow> rows) in ((string, IEnumerable<ComparedRow>)[])[("differs", result.Sizes), ("whole lever", result.Figures), ("overlay", result.Two?.Overlay ?? [])])
        {
            foreach (ComparedRow row in rows)
                CsvText.Row(to, [kind, row.Name, row.Symbol, .. ValueText.Of(row, unit).Select(Number), ValueText.UnitOf(row, unit), .. two ? Deltas(row, unit) : [], CompareLetters.Matters(row), row.Why]);
        }
    }

    private static string[] Deltas(ComparedRow row, LengthUnit unit) => row.Delta is null
        ? ["", "", Number(ValueText.Delta(row, unit, shown: true))]
        : [Delta(row, LengthUnit.Millimetre, unit), Delta(row, LengthUnit.Inch, unit), ""];

    private static string Delta(ComparedRow row, LengthUnit unit, LengthUnit shown) => Number(ValueText.Delta(row, unit, unit == shown));

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
}
