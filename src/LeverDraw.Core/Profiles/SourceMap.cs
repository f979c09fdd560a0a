using System.Text;
using LeverDraw.Diagnostics;

namespace LeverDraw.Profiles;

/// <summary>A profile's text with its name, and where its lines begin.</summary>
internal sealed class SourceMap
{
    private readonly List<int> lineStarts = [0];

    public SourceMap(string file, string text)
    {
        File = file;
        Text = text;
        for (int i = 0; i < text.Length; i++)
            if (text[i] == '\n')
                lineStarts.Add(i + 1);
    }

    public string File { get; }

    public string Text { get; }

    public int LineCount => lineStarts.Count;

    /// <summary>Counts from 1.</summary>
    public int LineAt(int offset)
    {
        int found = lineStarts.BinarySearch(Math.Clamp(offset, 0, Text.Length));
        return found >= 0 ? found + 1 : ~found;
    }

    /// <summary>The text of a line without its end.</summary>
    public TextSpan Line(int line)
    {
        int start = lineStarts[line - 1];
        int end = line < lineStarts.Count ? lineStarts[line] - 1 : Text.Length;
        if (end > start && Text[end - 1] == '\r')
            end--;
        return new TextSpan(start, end - start);
    }

    public string Slice(TextSpan span) => Text.Substring(span.Start, span.Length);

    /// <summary>The place of a span; the part on its first line when it runs on. At least one character wide.</summary>
    public SourcePosition Position(TextSpan span)
    {
        int line = LineAt(span.Start);
        TextSpan whole = Line(line);
        int lineEnd = whole.Start + whole.Length;
        int start = Math.Clamp(span.Start, whole.Start, lineEnd);
        int end = Math.Clamp(span.Start + span.Length, start, lineEnd);
        return new SourcePosition(File, line, Runes(whole.Start, start) + 1, Math.Max(1, Runes(start, end)));
    }

    private int Runes(int from, int to)
    {
        int count = 0;
        foreach (Rune _ in Text.AsSpan(from, to - from).EnumerateRunes())
            count++;
        return count;
    }
}
