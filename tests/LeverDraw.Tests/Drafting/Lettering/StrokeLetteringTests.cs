using System.Collections.Immutable;
using System.Text;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Lettering;

public class StrokeLetteringTests
{
    /// <summary>I is one stroke, 1 d wide; gaps 2 d and 6 d (ISO 3098-1 type B, reference 10g).</summary>
    [Theory]
    [InlineData("", 0)]
    [InlineData("I", 1)]
    [InlineData("II", 4)]
    [InlineData("I I", 8)]
    [InlineData("II II", 14)]
    [InlineData("I ", 1)]
    [InlineData("00", 14)]
    [InlineData("11", 14)]
    [InlineData("I\u00A0I", 8)]
    [InlineData("I\u200BI", 4)]
    public void WidthOf_KnownStrings_IsSumOfInkAndGaps(string text, double expectedStrokes) =>
        Assert.Equal(expectedStrokes, StrokeLettering.WidthOf(text, 10), 9);

    [Fact]
    public void WidthOf_OpenPair_HalvesTheGap() =>
        Assert.Equal(StrokeLettering.WidthOf("L", 10) + 1 + StrokeLettering.WidthOf("T", 10), StrokeLettering.WidthOf("LT", 10), 9);

    [Fact]
    public void Compose_FirstLettersInk_BeginsAtTheAnchor()
    {
        PlotText text = StrokeLettering.Compose("Hg", new Point2D(30, 40), 5);
        Box2D box = InkBox.OnPaper(text);
        Assert.Equal(30, box.MinX, 9);
        Assert.Equal(30 + text.Width, box.MaxX, 9);
        Assert.Equal(40 - 1.75, box.MinY, 9);
        Assert.Equal(45.25, box.MaxY, 9);
    }

    [Fact]
    public void Compose_SameLetterTwice_SharesTheShape()
    {
        PlotText text = StrokeLettering.Compose("00", default, 3.5);
        PlotText other = StrokeLettering.Compose("0", default, 7);
        Assert.Same(text.Glyphs[0].Shape, text.Glyphs[1].Shape);
        Assert.Same(text.Glyphs[0].Shape, other.Glyphs[0].Shape);
    }

    [Fact]
    public void Corners_QuarterTurn_AreTheTurnedBox()
    {
        PlotText text = StrokeLettering.Compose("HH", new Point2D(10, 20), 10, Math.PI / 2);
        ImmutableArray<Point2D> corners = InkBox.Corners(text);
        double width = text.Width;
        AssertNear(new Point2D(10.5, 20), corners[0]);
        AssertNear(new Point2D(10.5, 20 + width), corners[1]);
        AssertNear(new Point2D(-0.5, 20 + width), corners[2]);
        AssertNear(new Point2D(-0.5, 20), corners[3]);
    }

    [Fact]
    public void InkBox_AccentAndDescender_AreInside()
    {
        Box2D plain = InkBox.Local(StrokeLettering.Compose("A", default, 10));
        Box2D accented = InkBox.Local(StrokeLettering.Compose("Ág", default, 10));
        Assert.True(accented.MaxY > plain.MaxY + 2);
        Assert.Equal(-3.5, accented.MinY, 9);
        Assert.True(InkBox.Local(StrokeLettering.Compose("  ", default, 10)).IsEmpty);
        Assert.Empty(InkBox.Corners(StrokeLettering.Compose(string.Empty, default, 10)));
    }

    [Theory]
    [InlineData("漢", 1)]
    [InlineData("😀", 1)]
    [InlineData("a😀b", 3)]
    public void Compose_Unknown_DrawsOneBoxPerCharacter(string text, int glyphs)
    {
        PlotText plot = StrokeLettering.Compose(text, default, 10);
        Assert.Equal(glyphs, plot.Glyphs.Length);
        Assert.Contains(plot.Glyphs, glyph => ReferenceEquals(glyph.Shape, GlyphTable.Substitute.Shape));
        Assert.Equal(text, plot.Text);
    }

    [Fact]
    public void Compose_HalfOfASurrogatePair_DrawsABox()
    {
        Assert.Single(StrokeLettering.Compose(new string('\uD83D', 1), default, 10).Glyphs);
        Assert.Equal(2, StrokeLettering.Compose(new string(['\uDE00', 'x']), default, 10).Glyphs.Length);
        Assert.Equal(2, StrokeLettering.Compose(new string(['\uD83D', 'x']), default, 10).Glyphs.Length);
        Assert.False(StrokeLettering.Supports('\uD83D'));
    }

    [Fact]
    public void Supports_KnownAndUnknown_TellsThemApart()
    {
        Assert.True(StrokeLettering.Supports('⌀'));
        Assert.True(StrokeLettering.Supports(' '));
        Assert.True(StrokeLettering.Supports('½'));
        Assert.True(StrokeLettering.Supports('\u0301'));
        Assert.False(StrokeLettering.Supports('漢'));
        Assert.False(StrokeLettering.Supports(new Rune(0x1F600)));
        Assert.Equal("漢😀", string.Concat(StrokeLettering.Unsupported("a漢b😀漢 ⌀½")));
    }

    [Theory]
    [InlineData("e\u0301", "é")]
    [InlineData("i\u0308", "ï")]
    [InlineData("A\u030Angstro\u0308m", "Ångström")]
    public void Compose_CombiningMark_IsTheComposedLetter(string apart, string composed)
    {
        PlotText one = StrokeLettering.Compose(apart, default, 3.5);
        PlotText two = StrokeLettering.Compose(composed, default, 3.5);
        Assert.True(two.Glyphs.SequenceEqual(one.Glyphs));
        Assert.Equal(two.Width, one.Width);
    }

    [Fact]
    public void Compose_MarkWithoutItsOwnShape_StandsOverTheLetter()
    {
        PlotText plain = StrokeLettering.Compose("xI", default, 10);
        PlotText marked = StrokeLettering.Compose("x\u0301I", default, 10);
        Assert.Equal(plain.Width, marked.Width, 9);
        Assert.Equal(3, marked.Glyphs.Length);
        Assert.Equal(2.3 + 0.5, marked.Glyphs[1].OffsetX, 9);
    }

    [Fact]
    public void Compose_NotPositiveHeight_Throws() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StrokeLettering.Compose("a", default, 0));

    [Fact]
    public void Compose_ThousandLetters_IsWellUnderTwoMilliseconds()
    {
        string text = string.Concat(Enumerable.Repeat("Lever ⌀6.35 ", 84))[..1000];
        for (int i = 0; i < 300; i++)
            StrokeLettering.Compose(text, default, 3.5);
        double best = Enumerable.Range(0, 50).Min(_ =>
        {
            long start = System.Diagnostics.Stopwatch.GetTimestamp();
            StrokeLettering.Compose(text, default, 3.5);
            return System.Diagnostics.Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        });
        Assert.True(best < 2, FormattableString.Invariant($"{best} ms"));
    }

    private static void AssertNear(Point2D expected, Point2D actual) =>
        Assert.True(expected.DistanceTo(actual) < 1e-9, FormattableString.Invariant($"{expected} expected, {actual} found"));
}
