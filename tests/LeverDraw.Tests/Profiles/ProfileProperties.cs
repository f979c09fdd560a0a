using System.Text;
using CsCheck;
using LeverDraw.Diagnostics;
using LeverDraw.Profiles;

namespace LeverDraw.Tests.Profiles;

public class ProfileProperties
{
    private const string Full = TestKind.Good + """
        width = { size = "5.2 mm", fit = 'h9' }  # é 😀
        form = "curved"
        sagitta = "1/16 in"
        web = true
        [tongue]
        sweep = "1° 11' 37\""
        [hole]
        diameter = { min = 3.0, max = 3.1 }
        taper = "1:48"
        [sheet]
        date = 2024-05-31
        title = "Lever"

        """;

    private static readonly string[] Scraps =
        ["", "[", "]", "{", "}", "=", "\"", "'", "\"\"\"", "\n", "\r\n", "#", ".", ",", "-", "1e9", "nan", "\\u0000", "\\", "é", "😀", "\0", "\u202e", "[[", "extends = \"a.toml\"\n", "2024-", " mm", "\t"];

    private static readonly Gen<(int At, int Cut, string Put)[]> Edits =
        Gen.Select(Gen.Int[0, Full.Length], Gen.Int[0, 12], Gen.OneOf(Gen.Int[0, Scraps.Length - 1].Select(i => Scraps[i]), Gen.String[Gen.Char, 0, 4])).Array[1, 6];

    [Fact]
    public void Full_IsGood() => TestKind.ReadGood(Full);

    [Fact]
    public void Read_MutatedProfile_NeverThrowsAndPointsIntoTheFile() =>
        Edits.Sample(edits =>
        {
            string text = edits.Aggregate(Full, (t, e) =>
            {
                int at = Math.Min(e.At, t.Length);
                return t[..at] + e.Put + t[Math.Min(t.Length, at + e.Cut)..];
            });
            AssertInside(TestKind.Read(text), text);
        }, iter: 3_000);

    [Fact]
    public void Read_MutatedBytes_NeverThrows() =>
        Gen.Select(Gen.Int[0, Full.Length - 1], Gen.Byte).Array[1, 8].Sample(edits =>
        {
            byte[] bytes = Encoding.UTF8.GetBytes(Full);
            foreach ((int at, byte value) in edits)
                bytes[at] = value;
            _ = TestKind.ReadBytes(bytes).Diagnostics;
        }, iter: 2_000);

    private static void AssertInside(Checked<Profile> result, string text)
    {
        // Lone halves of a surrogate pair became U+FFFD on the way to bytes; that changes no count.
        string[] lines = text.Split('\n');
        foreach (Diagnostic fault in result.Diagnostics)
        {
            SourcePosition place = fault.Position!.Value;
            if (place.Line == 0)
                continue;
            Assert.InRange(place.Line, 1, lines.Length);
            int runes = lines[place.Line - 1].TrimEnd('\r').EnumerateRunes().Count();
            Assert.InRange(place.Column, 1, runes + 1);
            Assert.InRange(place.Width, 1, Math.Max(1, runes - place.Column + 1));
            _ = DiagnosticText.Lines(fault, text);
        }
    }
}
