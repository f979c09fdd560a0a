using System.Collections.Immutable;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Lettering.Shapes;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Lettering;

public class GlyphTableTests
{
    private static GlyphTable Table => GlyphTable.Instance;

    [Fact]
    public void Table_HoldsEveryCharacterPromised()
    {
        const string Promised =
            "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789"
            + ".,:;!?'\"()[]{}/\\-–—_+=<>%&#@*^~|`⌀°±×−µ≤≥≈√→←↑↓▷⏥⏤⊥∥∠⌖◎⌯↗□⌒⌴⌵↧ØΩαβγψφΔ"
            + "ÀÁÂÃÄÅÆÇÈÉÊËÌÍÎÏÐÑÒÓÔÕÖØÙÚÛÜÝÞßàáâãäåæçèéêëìíîïðñòóôõöøùúûüýþÿ"
            + "ĀāĂăĄąĆćĈĉĊċČčĎďĐđĒēĔĕĖėĘęĚěĜĝĞğĠġĢģĤĥĦħĨĩĪīĬĭĮįİıĴĵĶķĸĹĺĻļĽľŁłŃńŅņŇňŊŋŌōŎŏŐőŒœ"
            + "ŔŕŖŗŘřŚśŜŝŞşŠšŢţŤťŦŧŨũŪūŬŭŮůŰűŲųŴŵŶŷŸŹźŻżŽž";
        Assert.Equal(string.Empty, string.Concat(Promised.Where(c => Table.Find(c) is null)));
    }

    [Fact]
    public void EveryGlyph_InkLiesInItsCellAndNearTheLine()
    {
        foreach (char character in Table.Characters)
        {
            Glyph glyph = Table.Find(character)!;
            Assert.False(glyph.Lines.IsEmpty, $"{character} has no ink");
            Assert.True(glyph.Left <= glyph.Lines.MinX - 0.05 + 1e-12 && glyph.Right >= glyph.Lines.MaxX + 0.05 - 1e-12, $"{character} leaves its cell");
            Assert.True(glyph.Lines.MaxY <= 1.45 && glyph.Lines.MinY >= -0.3 - 1e-12, $"{character} is {glyph.Lines}");
        }
    }

    [Fact]
    public void EveryStroke_IsAChainWithoutGaps()
    {
        foreach (char character in Table.Characters)
        {
            foreach (ImmutableArray<Edge> stroke in Table.Find(character)!.Shape.Strokes)
            {
                for (int i = 1; i < stroke.Length; i++)
                    Assert.True(stroke[i].Start.DistanceTo(stroke[i - 1].End) < 1e-9, FormattableString.Invariant($"{character}, edge {i}"));
                Assert.All(stroke, edge => Assert.True(edge.Length > 1e-3, $"{character} has an edge without length"));
            }
        }
    }

    /// <summary>T, K and B promise no corner where they begin; D promises nothing. Letters made only of them run smoothly all along.</summary>
    [Theory]
    [InlineData("0CDGJOSUacoeflsφσ)(")]
    public void RoundLetters_HaveNoCornerBesideAnArc(string letters)
    {
        foreach (char letter in letters)
        {
            int arcs = 0;
            foreach (ImmutableArray<Edge> stroke in Table.Find(letter)!.Shape.Strokes)
            {
                for (int i = 1; i < stroke.Length; i++)
                {
                    if (stroke[i - 1] is LineEdge && stroke[i] is LineEdge || IsDeclaredCorner(letter, stroke[i - 1], stroke[i]))
                        continue;
                    arcs++;
                    Vector2D before = stroke[i - 1].TangentAt(1);
                    Vector2D after = stroke[i].TangentAt(0);
                    Assert.True((before - after).Length < 1e-9, FormattableString.Invariant($"{letter}, edge {i}"));
                }
            }

            Assert.True(arcs > 0, $"{letter} was not checked");
        }
    }

    [Fact]
    public void CapitalsAndFigures_AreTenUnitsHigh_SmallLettersSeven()
    {
        foreach (char c in "ABCDEFGHIJKLMNOPRSTUVWXYZ0123456789")
        {
            Assert.Equal(1.0, Table.Find(c)!.Lines.MaxY, 9);
            Assert.Equal(0.0, Table.Find(c)!.Lines.MinY, 9);
        }

        foreach (char c in "acemnorsuvwxz")
        {
            Assert.Equal(0.7, Table.Find(c)!.Lines.MaxY, 9);
            Assert.Equal(0.0, Table.Find(c)!.Lines.MinY, 9);
        }

        foreach (char c in "gjpqy")
            Assert.Equal(-0.3, Table.Find(c)!.Lines.MinY, 9);
    }

    [Fact]
    public void Figures_TakeTheSameRoom()
    {
        foreach (char c in "0123456789")
            Assert.Equal(0.6, Table.Find(c)!.Width, 9);
    }

    /// <summary>No two may be read as each other: somewhere the one's ink is far from the other's, both laid with their left edges together.</summary>
    [Theory]
    [InlineData("0O")]
    [InlineData("1l")]
    [InlineData("1I")]
    [InlineData("lI")]
    [InlineData("I|")]
    [InlineData("5S")]
    [InlineData("8B")]
    [InlineData("38")]
    [InlineData("17")]
    [InlineData("69")]
    [InlineData("68")]
    [InlineData("89")]
    [InlineData("56")]
    [InlineData("2Z")]
    [InlineData("⌀Ø")]
    [InlineData("0D")]
    [InlineData("6b")]
    [InlineData("aα")]
    public void LookAlikes_DifferByMoreThanAPenWidth(string pair)
    {
        Glyph one = Table.Find(pair[0])!;
        Glyph two = Table.Find(pair[1])!;
        double distance = Math.Max(FarthestFrom(one, two), FarthestFrom(two, one));
        Assert.True(distance > 0.1, FormattableString.Invariant($"{pair}: only {distance:F3} h apart"));
    }

    [Fact]
    public void Diacritics_ComposedLetter_KeepsTheLetterAndAddsInk()
    {
        foreach (Diacritic diacritic in Diacritics.All)
        {
            for (int i = 0; i < diacritic.Letters.Length; i += 2)
            {
                Glyph plain = Table.Find(diacritic.Letters[i])!;
                Glyph marked = Table.Find(diacritic.Letters[i + 1])!;
                Assert.Equal(plain.Shape.Strokes, marked.Shape.Strokes.Take(plain.Shape.Strokes.Length));
                Assert.True(marked.Shape.Strokes.Length > plain.Shape.Strokes.Length);
            }
        }
    }

    private static bool IsDeclaredCorner(char letter, Edge before, Edge after) =>
        letter is 'e' or 'G' && (before is LineEdge || after is LineEdge) && before.TangentAt(1).Dot(after.TangentAt(0)) < 0.5;

    private static double FarthestFrom(Glyph one, Glyph two)
    {
        Vector2D move = new(two.Lines.MinX - one.Lines.MinX, 0);
        Point2D[] others = [.. Points(two)];
        return Points(one).Max(p => others.Min(q => q.DistanceTo(p + move)));
    }

    private static IEnumerable<Point2D> Points(Glyph glyph) =>
        from stroke in glyph.Shape.Strokes
        from edge in stroke
        from step in Enumerable.Range(0, 41)
        select edge.PointAt(step / 40.0);
}
