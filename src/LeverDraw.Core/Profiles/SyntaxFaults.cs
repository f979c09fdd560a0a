using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Units;

namespace LeverDraw.Profiles;

/// <summary>Puts the TOML package's syntax faults into the user's terms: one fault for a line, and the usual slips by name.</summary>
internal static class SyntaxFaults
{
    private const int LongestQuoted = 60;
    private const int MostRead = 10_000;

    /// <summary>How many lines further a fault may still come of an unclosed quote.</summary>
    private const int Wake = 3;

    private const string UnclosedQuote = "the text is not closed with a quote";

    /// <summary>Tells the faults and gives the lines that have one.</summary>
    public static HashSet<int> Tell(SourceMap source, IEnumerable<(TextSpan Span, string Message)> messages, FileFaults faults)
    {
        HashSet<int> lines = [];
        int unclosed = -Wake;
        // The package tells the faults of its lexer apart from those of its parser; noise may have a million.
        foreach ((TextSpan span, string message) in messages.Take(MostRead).OrderBy(m => m.Span.Start))
        {
            int line = source.LineAt(span.Start);
            if (!lines.Add(line))
                continue;
            if (!faults.IsFull && TellSlip(source, source.Line(line), faults))
                continue;
            string reason = Reason(message);
            // A quote never closed throws the lines after it too; only the first is the user's doing.
            bool follows = line - unclosed <= Wake;
            if (follows || reason == UnclosedQuote)
                unclosed = line;
            if (!follows)
                faults.Add(DiagnosticCatalogue.BadSyntax, span, null, reason);
        }
        return lines;
    }

    /// <summary>The names of the fields that lines seem to give, read line by line and so not thrown by a quote that is never closed.</summary>
    public static ImmutableHashSet<string> Mentioned(SourceMap source)
    {
        ImmutableHashSet<string>.Builder names = ImmutableHashSet.CreateBuilder<string>(StringComparer.Ordinal);
        string table = "";
        foreach (ReadOnlySpan<char> line in source.Text.AsSpan().EnumerateLines())
        {
            ReadOnlySpan<char> text = line.TrimStart();
            bool header = text.StartsWith('[');
            string word = FirstWord(header ? text.TrimStart("[ ") : text);
            if (header)
                table = word + ".";
            else if (word.Length > 0)
                names.Add(table + word);
        }
        return names.ToImmutable();
    }

    private static string FirstWord(ReadOnlySpan<char> text)
    {
        int length = 0;
        while (length < text.Length && length < LongestQuoted && (char.IsAsciiLetterOrDigit(text[length]) || text[length] is '_' or '-' or '.'))
            length++;
        return text[..length].ToString();
    }

    private static bool TellSlip(SourceMap source, TextSpan line, FileFaults faults)
    {
        string text = source.Slice(new TextSpan(line.Start, Math.Min(line.Length, 200)));
        int equals = text.IndexOf('=', StringComparison.Ordinal);
        if (equals < 1)
            return false;
        string after = text[(equals + 1)..];
        int comment = after.IndexOf('#', StringComparison.Ordinal);
        string value = (comment >= 0 ? after[..comment] : after).Trim();
        if (value.Length is 0 or > LongestQuoted || value.AsSpan().IndexOfAny("\"'{}[]=\\") >= 0 && !LooksLikeSize(value))
            return false;
        TextSpan at = new(line.Start + equals + 1 + after.IndexOf(value, StringComparison.Ordinal), value.Length);
        if (value.Contains(',', StringComparison.Ordinal))
        {
            string point = value.Replace(',', '.');
            if (!LooksLikeSize(point))
                return false;
            faults.Add(DiagnosticCatalogue.CommaDecimal, at, null, value, LengthText.Parse(point, LengthUnit.Inch).StatesUnit ? "\"" + point + "\"" : point);
            return true;
        }
        if (!LooksLikeSize(value) && !char.IsLetter(value[0]))
            return false;
        faults.Add(DiagnosticCatalogue.NeedsQuotes, at, null, value, value.Contains('"', StringComparison.Ordinal) ? "'" + value + "'" : "\"" + value + "\"");
        return true;
    }

    private static bool LooksLikeSize(string value) =>
        LengthText.Parse(value, LengthUnit.Inch).Ok || AngleText.Parse(value).Ok || TaperText.Parse(value).Ok;

    private static string Reason(string message) => message switch
    {
        _ when Says(message, "Expecting `=`") => "'=' is missing after the key",
        _ when Says(message, "escape") => "the text has a '\\' that begins no known escape; write '\\\\' for one",
        _ when Says(message, "parse integer") => "the whole number is too large",
        _ when Says(message, "date time") => "the date or time does not exist",
        _ when Says(message, "inline table") => "the braces hold something else than 'key = value' pairs, or are not closed",
        _ when Says(message, "for a value") => "the value is missing or not readable",
        _ when Says(message, "token `newline`") => "something stands after the value",
        _ when Says(message, "end of file") || Says(message, "string") => UnclosedQuote,
        _ when Says(message, "close") || Says(message, "bracket") => "a bracket is not closed",
        _ => "there is a character that does not belong here",
    };

    private static bool Says(string message, string words) => message.Contains(words, StringComparison.OrdinalIgnoreCase);
}
