using System.Globalization;
using System.Text;
using LeverDraw.Units;

namespace LeverDraw.Profiles;

/// <summary>A kind's fields as a table, for the command line and for the docs.</summary>
public static class FieldTable
{
    private static readonly string[] Heads = ["field", "sign", "value", "default", "what it is"];

    /// <summary>Columns of plain text; the common fields first.</summary>
    public static string Text(PartFields kind, LengthUnit unit)
    {
        List<string[]> rows = [Heads, .. kind.WithCommon.Select(f => Row(f, unit))];
        int[] widths = [.. Enumerable.Range(0, Heads.Length).Select(c => rows.Max(r => new StringInfo(r[c]).LengthInTextElements))];
        StringBuilder text = new();
        foreach (string[] row in rows)
        {
            StringBuilder line = new();
            for (int c = 0; c < row.Length; c++)
                line.Append(row[c]).Append(' ', widths[c] - new StringInfo(row[c]).LengthInTextElements + 2);
            text.Append(line.ToString().TrimEnd()).Append('\n');
        }
        return text.ToString();
    }

    /// <summary>The kind's own fields as a Markdown table.</summary>
    public static string Markdown(IEnumerable<FieldSpec> fields, LengthUnit unit)
    {
        StringBuilder text = new();
        text.Append("| ").AppendJoin(" | ", Heads).Append(" |\n|").Append(string.Concat(Enumerable.Repeat("---|", Heads.Length))).Append('\n');
        foreach (FieldSpec field in fields)
        {
            string[] row = Row(field, unit);
            row[0] = "`" + row[0] + "`";
            text.Append("| ").AppendJoin(" | ", row.Select(c => c.Replace("|", "\\|", StringComparison.Ordinal))).Append(" |\n");
        }
        return text.ToString();
    }

    private static string[] Row(FieldSpec field, LengthUnit unit) =>
    [
        field.Name,
        field.Symbol ?? "",
        FieldWords.Allowed(field, unit) + (FieldWords.Condition(field) is { } condition ? "; " + condition : ""),
        field.IsOptional ? FieldWords.Default(field, unit) ?? "none" : "required",
        field.Help,
    ];
}
