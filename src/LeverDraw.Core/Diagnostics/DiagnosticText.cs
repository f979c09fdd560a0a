using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace LeverDraw.Diagnostics;

/// <summary>A diagnostic as lines of plain text: the headline, the line of the file with carets below the fault, the next step.</summary>
public static class DiagnosticText
{
    private const int WidestLine = 100;

    /// <param name="source">The text of the file the diagnostic stands in; null leaves line and carets out.</param>
    public static ImmutableArray<string> Lines(Diagnostic diagnostic, string? source)
    {
        ImmutableArray<string>.Builder lines = ImmutableArray.CreateBuilder<string>();
        lines.Add(Headline(diagnostic));
        if (source is not null && diagnostic.Position is { Line: > 0 } place && LineOf(source, place.Line) is { } line)
        {
            (string shown, string carets) = Window(line, place.Column, place.Width);
            string number = place.Line.ToString(CultureInfo.InvariantCulture);
            lines.Add("  " + number + " | " + shown);
            lines.Add("  " + new string(' ', number.Length) + " | " + carets);
        }
        if (diagnostic.Suggestion.Length > 0)
            lines.Add("  " + diagnostic.Suggestion);
        return lines.ToImmutable();
    }

    /// <summary><c>file:line:column: error LD203: message</c>; the place is left out as far as it is not known.</summary>
    public static string Headline(Diagnostic diagnostic)
    {
        StringBuilder text = new();
        if (diagnostic.Position is { } place)
        {
            text.Append(Visible(place.File));
            if (place.Line > 0)
                text.Append(CultureInfo.InvariantCulture, $":{place.Line}:{place.Column}");
            text.Append(": ");
        }
        return text.Append(Word(diagnostic.Severity)).Append(' ').Append(diagnostic.Code).Append(": ")
            .Append(Visible(diagnostic.Message)).ToString();
    }

    public static string Word(Severity severity) => severity switch
    {
        Severity.Note => "note",
        Severity.Warning => "warning",
        _ => "error",
    };

    private static string? LineOf(string source, int line)
    {
        int start = 0;
        for (int n = 1; n < line; n++)
        {
            start = source.IndexOf('\n', start) + 1;
            if (start == 0)
                return null;
        }
        int end = source.IndexOf('\n', start);
        return (end < 0 ? source[start..] : source[start..end]).TrimEnd('\r');
    }

    // A line may be a megabyte long; only the part round the fault is shown.
    private static (string Shown, string Carets) Window(string line, int column, int width)
    {
        Rune[] runes = [.. line.EnumerateRunes()];
        int at = Math.Clamp(column - 1, 0, runes.Length);
        int from = runes.Length <= WidestLine ? 0 : Math.Clamp(at - (WidestLine / 2), 0, runes.Length - WidestLine);
        int to = Math.Min(runes.Length, from + WidestLine);
        StringBuilder shown = new(from > 0 ? "…" : "");
        for (int i = from; i < to; i++)
            shown.Append(VisibleRune(runes[i]));
        if (to < runes.Length)
            shown.Append('…');
        int carets = Math.Clamp(width, 1, Math.Max(1, to - at));
        return (shown.ToString(), new string(' ', at - from + (from > 0 ? 1 : 0)) + new string('^', carets));
    }

    // A control character, or one that turns the writing direction, must not reach a terminal.
    private static string Visible(string text)
    {
        StringBuilder shown = new();
        foreach (Rune rune in text.EnumerateRunes())
            shown.Append(VisibleRune(rune));
        return shown.ToString();
    }

    private static string VisibleRune(Rune rune) => Rune.GetUnicodeCategory(rune) switch
    {
        _ when rune.Value == '\t' => " ",
        UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => "\uFFFD",
        _ => rune.ToString(),
    };
}
