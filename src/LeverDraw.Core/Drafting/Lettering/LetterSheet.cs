using System.Globalization;

namespace LeverDraw.Drafting.Lettering;

/// <summary>Reads a file of letters: a line for each, the character, a blank, its <see cref="GlyphPath"/>. A character that is easily mistaken for another one in the source is given as four hexadecimal digits.</summary>
internal static class LetterSheet
{
    public static IEnumerable<(char Character, string Path)> Read(string sheet)
    {
        foreach (string line in sheet.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            int blank = line.IndexOf(' ', StringComparison.Ordinal);
            char character = blank == 1
                ? line[0]
                : (char)ushort.Parse(line.AsSpan(0, blank), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
            yield return (character, line[(blank + 1)..]);
        }
    }
}
