using System.Collections.Immutable;
using LeverDraw.Drafting.Lettering.Shapes;

namespace LeverDraw.Drafting.Lettering;

/// <summary>Every letter, built once on first use: an array for the first characters, a map for the rest.</summary>
internal sealed class GlyphTable
{
    /// <summary>Basic Latin to Latin Extended-B's start.</summary>
    private const int DirectSize = 0x250;

    private readonly Glyph?[] direct = new Glyph?[DirectSize];

    // Never changed after the constructor.
    private readonly Dictionary<char, Glyph> others = [];
    private readonly Dictionary<int, Glyph> pairs = [];
    private readonly Dictionary<char, (Glyph Glyph, MarkPlace Place)> marks = [];

    private GlyphTable()
    {
        Dictionary<char, Glyph> all = [];
        foreach (string sheet in Sheets())
        {
            foreach ((char character, string path) in LetterSheet.Read(sheet))
                all.Add(character, Glyph.FromPath(character.ToString(), path));
        }

        foreach (char digit in "0123456789")
            all[digit] = InDigitCell(all[digit]);

        foreach (Diacritic diacritic in Diacritics.All)
        {
            Glyph mark = Glyph.FromPath(diacritic.Combining.ToString(), diacritic.Path);
            marks.Add(diacritic.Combining, (mark, diacritic.Place));
            for (int i = 0; i < diacritic.Letters.Length; i += 2)
            {
                char letter = diacritic.Letters[i + 1];
                Glyph marked = AccentedGlyph.Make(letter.ToString(), all[diacritic.Letters[i]], mark, diacritic.Place);
                all.Add(letter, marked);
                pairs.Add(PairKey(WithDot(diacritic.Letters[i]), diacritic.Combining), marked);
            }
        }

        foreach ((char character, Glyph glyph) in all)
        {
            if (character < DirectSize)
                direct[character] = glyph;
            else
                others.Add(character, glyph);
        }

        Characters = [.. all.Keys];
    }

    public static GlyphTable Instance { get; } = new();

    /// <summary>A crossed box: plain to see that a character is missing.</summary>
    public static Glyph Substitute { get; } = Glyph.FromPath("\uFFFD", "M 0 0 L 6 0 L 6 10 L 0 10 L 0 0 L 6 10 M 0 10 L 6 0");

    /// <summary>Every character with a shape, combining marks and blanks not counted.</summary>
    public ImmutableArray<char> Characters { get; }

    public Glyph? Find(char character)
    {
        if (character < DirectSize)
            return direct[character];
        return others.TryGetValue(character, out Glyph? glyph) ? glyph : null;
    }

    /// <summary>The one shape of a letter and the combining mark after it, or null.</summary>
    public Glyph? FindPair(char letter, char mark) =>
        pairs.TryGetValue(PairKey(letter, mark), out Glyph? glyph) ? glyph : null;

    /// <summary>A combining mark by itself, for letters without a shape of their own with it.</summary>
    public bool TryFindMark(char character, out (Glyph Glyph, MarkPlace Place) mark) => marks.TryGetValue(character, out mark);

    private static int PairKey(char letter, char mark) => (letter << 16) | mark;

    private static string[] Sheets() =>
    [
        Digits.Paths,
        CapitalsAToM.Paths,
        CapitalsNToZ.Paths,
        SmallAToM.Paths,
        SmallNToZ.Paths,
        Punctuation.Paths,
        MathSigns.Paths,
        DrawingSigns.Paths,
        ToleranceSigns.Paths,
        Greek.Paths,
        ExtraLetters.Paths,
    ];

    /// <summary>i and j lose their dot under a mark, but are written with it.</summary>
    private static char WithDot(char letter) => letter switch
    {
        'ı' => 'i',
        'ȷ' => 'j',
        _ => letter,
    };

    private static Glyph InDigitCell(Glyph digit)
    {
        double width = (Digits.CellWidth / Standards.Iso3098Lettering.HeightInStrokes) + LetteringMetrics.StrokeRatio;
        double spare = (width - digit.Width) / 2;
        return digit with { Left = digit.Left - spare, Right = digit.Right + spare };
    }
}
