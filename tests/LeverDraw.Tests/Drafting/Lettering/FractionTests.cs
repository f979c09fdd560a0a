using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Lettering;

public class FractionTests
{
    [Theory]
    [InlineData("9/16")]
    [InlineData("1 3/16")]
    [InlineData("9/16\"")]
    [InlineData("⌀9/16")]
    [InlineData("R3/8")]
    [InlineData("SR3/8")]
    [InlineData("(5/8)")]
    [InlineData("1/2 × 3/4")]
    [InlineData("7/8, drilled")]
    [InlineData("under 7/8.")]
    [InlineData("½")]
    [InlineData("1½")]
    public void Compose_FractionAsToken_IsStacked(string text) => Assert.True(IsStacked(text));

    [Theory]
    [InlineData("H7/f7")]
    [InlineData("0/0")]
    [InlineData("03/04")]
    [InlineData("1/2/3")]
    [InlineData("3/8-16")]
    [InlineData("1.5/2")]
    [InlineData("1/2.5")]
    [InlineData("1234/5")]
    [InlineData("M3/4")]
    [InlineData("BAR3/4")]
    [InlineData("3/4in")]
    [InlineData("+0.1/-0.2")]
    [InlineData("/2")]
    [InlineData("1/")]
    public void Compose_OtherSlash_StaysOnTheLine(string text) => Assert.False(IsStacked(text));

    [Fact]
    public void Compose_StackingOff_StaysOnTheLine() =>
        Assert.All(StrokeLettering.Compose("1/2", default, 10, stackFractions: false).Glyphs, glyph => Assert.Equal(10, glyph.Scale));

    [Theory]
    [InlineData("9/16")]
    [InlineData("15/64")]
    [InlineData("127/128")]
    public void Compose_Fraction_IsAtMostOneAndAHalfHighWithNumeralsOfTwoThirds(string text)
    {
        PlotText plot = StrokeLettering.Compose(text, default, 10);
        Assert.InRange(InkBox.Local(plot).Height, 10, 15);
        Assert.All(plot.Glyphs.Where(glyph => glyph.Scale != 10), glyph => Assert.InRange(glyph.Scale, 6, 7));
        Assert.Equal(plot.Width, InkBox.Local(plot).MaxX, 0.7);
        Assert.Equal(text, plot.Text);
    }

    /// <summary>The bar keeps clear of both numerals by at least half a pen width of white, so it never reads as a 1.</summary>
    [Theory]
    [InlineData("9/16")]
    [InlineData("7/8")]
    [InlineData("1/4")]
    [InlineData("5/32")]
    [InlineData("2/3")]
    public void Compose_Fraction_BarStandsClear(string text)
    {
        PlotText plot = StrokeLettering.Compose(text, default, 10);
        PlotGlyph bar = Assert.Single(plot.Glyphs, glyph => ReferenceEquals(glyph.Shape, StackedFraction.Bar.Shape));
        Point2D[] barPoints = [.. Points(bar)];
        foreach (PlotGlyph numeral in plot.Glyphs.Where(glyph => !ReferenceEquals(glyph, bar)))
            Assert.True(Points(numeral).Min(p => barPoints.Min(q => q.DistanceTo(p))) > 1.5, $"{numeral.Shape.Character} touches the bar");
    }

    [Fact]
    public void Compose_MixedNumber_GapIsBetweenLetterAndWordGap()
    {
        double width = StrokeLettering.WidthOf("1 3/16", 10);
        double gap = width - StrokeLettering.WidthOf("1", 10) - StrokeLettering.WidthOf("3/16", 10);
        Assert.InRange(gap, 2.5, 5.5);
    }

    private static bool IsStacked(string text) =>
        StrokeLettering.Compose(text, default, 10).Glyphs.Any(glyph => ReferenceEquals(glyph.Shape, StackedFraction.Bar.Shape));

    private static IEnumerable<Point2D> Points(PlotGlyph glyph) =>
        from stroke in glyph.Shape.Strokes
        from edge in stroke
        from step in Enumerable.Range(0, 101)
        let p = edge.PointAt(step / 100.0)
        select new Point2D(glyph.OffsetX + (p.X * glyph.Scale), glyph.OffsetY + (p.Y * glyph.Scale));
}
