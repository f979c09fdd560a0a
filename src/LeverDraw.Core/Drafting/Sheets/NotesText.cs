using LeverDraw.Drafting.Lettering;

namespace LeverDraw.Drafting.Sheets;

/// <summary>Notes with their words measured once, to be wrapped to several widths. All widths in heights of the lettering.</summary>
internal sealed class NotesText
{
    /// <summary>More than a blank with both its gaps ever takes.</summary>
    private const double MostBlank = 1.2;

    private readonly (string Text, Word[] Words)[] _notes;

    public NotesText(IReadOnlyList<string> notes)
    {
        _notes = new (string, Word[])[notes.Count];
        for (int i = 0; i < _notes.Length; i++)
        {
            string text = string.Join(' ', notes[i].Split(' ', StringSplitOptions.RemoveEmptyEntries));
            _notes[i] = (text, Measured(text));
        }
    }

    /// <summary>Each note's lines for a width.</summary>
    public NotesLines Wrapped(double width)
    {
        var lines = new List<NoteLine>(3 * _notes.Length);
        var most = new List<double>(3 * _notes.Length);
        for (int note = 0; note < _notes.Length; note++)
        {
            (string text, Word[] words) = _notes[note];
            int start = 0, end = 0;
            double atMost = 0;
            foreach (Word word in words)
            {
                double before = atMost;
                atMost += word.Width + MostBlank;
                // A line is measured only where its words by themselves do not show that it fits.
                if (end > start && atMost > width && (atMost = StrokeLettering.RatioOf(text.AsSpan(start, word.End - start))) > width)
                {
                    lines.Add(new NoteLine(note, start, end));
                    most.Add(before);
                    start = word.Start;
                    atMost = word.Width;
                }

                end = word.End;
            }

            lines.Add(new NoteLine(note, start, end));
            most.Add(atMost);
        }

        return new NotesLines(lines, _notes.Length, Widest(lines, most));
    }

    /// <summary>Of lines no wider than these; only those are measured that may be the widest.</summary>
    private double Widest(List<NoteLine> lines, List<double> most)
    {
        double widest = 0;
        for (int first = most.IndexOf(most.DefaultIfEmpty().Max()), i = first; i >= 0 && i < first + lines.Count; i++)
        {
            NoteLine line = lines[i % lines.Count];
            if (most[i % lines.Count] > widest)
                widest = Math.Max(widest, StrokeLettering.RatioOf(_notes[line.Note].Text.AsSpan(line.Start, line.End - line.Start)));
        }

        return widest;
    }

    public string TextOf(NoteLine line) => _notes[line.Note].Text[line.Start..line.End];

    private static Word[] Measured(string text)
    {
        var words = new List<Word>();
        for (int at = 0; at < text.Length;)
        {
            int end = EndOf(text, at);
            words.Add(new Word(at, end, StrokeLettering.RatioOf(text.AsSpan(at, end - at))));
            at = end + 1;
        }

        return [.. words];
    }

    /// <summary>Where the line may be broken next: not between two limits, nor inside the second unit's brackets or between two words in round ones, nor before a unit, which alone starts in lower case, a per cent sign, or a diameter, which goes with the name before it.</summary>
    private static int EndOf(string text, int at)
    {
        for (int blank = text.IndexOf(' ', at); blank >= 0; blank = text.IndexOf(' ', blank + 1))
        {
            bool inBrackets = text.LastIndexOf('[', blank) > text.LastIndexOf(']', blank);
            if (!inBrackets && !IsBetweenTwoBracketedWords(text, blank) && text[blank - 1] != '/' && text[blank + 1] != '/' && !char.IsAsciiLetterLower(text[blank + 1]) && text[blank + 1] is not ('%' or '⌀'))
                return blank;
        }

        return text.Length;
    }

    /// <summary>Two words alone in round brackets, such as a grade's letters and number, stay together.</summary>
    private static bool IsBetweenTwoBracketedWords(string text, int blank)
    {
        int open = text.LastIndexOf('(', blank), close = text.IndexOf(')', blank);
        return open >= 0 && close >= 0 && text.AsSpan(open, close - open).Count(' ') == 1 && text.IndexOf(')', open) == close;
    }

    private readonly record struct Word(int Start, int End, double Width);
}

/// <summary>A line of a note: the part of its text from a start to before an end.</summary>
internal readonly record struct NoteLine(int Note, int Start, int End);

/// <param name="Notes">How many notes the lines are of.</param>
/// <param name="Widest">Of the lines, in heights of the lettering.</param>
internal sealed record NotesLines(IReadOnlyList<NoteLine> Lines, int Notes, double Widest);
