namespace LeverDraw.Cli.Reporting;

/// <summary>Plain columns under each other, two blanks apart; a column that is empty in every line is left out.</summary>
/// <remarks>For answers that are read again by eye and by grep; a table with rules is <see cref="TerminalTable"/>.</remarks>
internal static class Columns
{
    private const string Gap = "  ";

    /// <param name="lines">All of one length.</param>
    /// <param name="numbers">Columns set to the right, counted from 0.</param>
    public static IEnumerable<string> Of(IReadOnlyList<IReadOnlyList<string>> lines, params int[] numbers)
    {
        if (lines.Count == 0)
            return [];
        int[] widths = [.. lines[0].Select((_, i) => lines.Max(line => line[i].Length))];
        return lines.Select(line => string.Join(Gap, line
            .Select((cell, i) => numbers.Contains(i) ? cell.PadLeft(widths[i]) : cell.PadRight(widths[i]))
            .Where((_, i) => widths[i] > 0)).TrimEnd());
    }
}
