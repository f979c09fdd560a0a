using System.Collections.Immutable;

namespace LeverDraw.Standards;

/// <summary>One published list of colours for a pattern's faces.</summary>
/// <param name="Name">By which a sheet names it.</param>
/// <param name="Colours">What a face is, with its letter on our sheets (empty for none), and its colour.</param>
public sealed record PatternColourScheme(string Word, string Name, ImmutableArray<(string Letter, string Face, string Colour)> Colours);

/// <summary>Colours of patterns. No list is universal: red means machined in one and left as cast in the other.</summary>
public static class PatternColours
{
    public static StandardSource Source { get; } = new(
        "Colours of patterns", "Course pages", "", "", Certainty.Thin,
        "one page for each list, a third says that no list is universal; EN 12890 and BS 467 have lists of their own, not seen");

    public static ImmutableArray<PatternColourScheme> All { get; } =
    [
        new("cast-black", "SCHEME \"CAST BLACK\"",
        [
            ("M", "MACHINED", "RED"), ("C", "CORE PRINT", "YELLOW"), ("L", "LOOSE PIECE, SEAT", "RED ON YELLOW, STRIPES"), ("", "LEFT AS CAST", "BLACK"),
        ]),
        new("cast-red", "SCHEME \"CAST RED\"",
        [
            ("M", "MACHINED", "YELLOW"), ("C", "CORE PRINT", "BLACK"), ("L", "LOOSE PIECE, SEAT", "GREEN"), ("", "LEFT AS CAST", "RED"),
        ]),
    ];

    public static PatternColourScheme? Find(string word) => All.FirstOrDefault(s => s.Word == word);
}
