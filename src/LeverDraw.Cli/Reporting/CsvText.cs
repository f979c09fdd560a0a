using System.Globalization;

namespace LeverDraw.Cli.Reporting;

/// <summary>Comma-separated values (RFC 4180), numbers with a point.</summary>
internal static class CsvText
{
    public static void Row(TextWriter to, params ReadOnlySpan<object?> cells)
    {
        for (int i = 0; i < cells.Length; i++)
        {
            if (i > 0)
                to.Write(',');
            to.Write(Cell(cells[i]));
        }

        to.Write('\n');
    }

    private static string Cell(object? cell)
    {
        string text = cell switch
        {
            null => "",
            string words => words,
            double number => Math.Round(number, 6).ToString(CultureInfo.InvariantCulture),
            int whole => whole.ToString(CultureInfo.InvariantCulture),
            bool flag => flag ? "yes" : "no",
            _ => throw new ArgumentException("A cell is text or a number.", nameof(cell)),
        };
        return text.AsSpan().IndexOfAny(",\"\n\r") < 0 ? text : "\"" + text.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";
    }
}
