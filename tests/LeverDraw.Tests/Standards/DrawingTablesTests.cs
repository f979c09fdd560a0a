using CsCheck;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Tests.Standards;

public sealed class DrawingTablesTests
{
    // The scales are from memory of ISO 5455.
    [Theory]
    [InlineData(60, "50:1")]
    [InlineData(2, "2:1")]
    [InlineData(4.999, "2:1")]
    [InlineData(5, "5:1")]
    [InlineData(1.999, "1:1")]
    [InlineData(0.999, "1:2")]
    [InlineData(0.5, "1:2")]
    [InlineData(0.2, "1:5")]
    [InlineData(0.199, "1:10")]
    [InlineData(0.0001, "1:10000")]
    public void LargestNotAbove_Factor_GivesThePreferredScale_FromMemory(double factor, string text) =>
        Assert.Equal(text, DrawingScales.LargestNotAbove(factor).Value.Text);

    [Fact]
    public void LargestNotAbove_ScaleFromRoundedSizes_IsStillThatScale()
    {
        // 277 mm of paper over 138.5 mm is 2 but for the last bit.
        Assert.Equal("2:1", DrawingScales.LargestNotAbove(Math.BitDecrement(2.0)).Value.Text);
        Assert.Equal("1:5", DrawingScales.LargestNotAbove(0.6 / 3).Value.Text);
    }

    [Theory]
    [InlineData(0.00009)]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void LargestNotAbove_NoScaleSoSmall_IsRefused(double factor) => Assert.False(DrawingScales.LargestNotAbove(factor).IsGiven);

    [Fact]
    public void LargestNotAbove_AnyFactor_IsNeverAboveAndTheNextLargerWouldBe() =>
        Gen.Double[0.0001, 60].Sample(factor =>
        {
            DrawingScale scale = DrawingScales.LargestNotAbove(factor).Value;
            Assert.True(scale.Factor <= factor * (1 + 2e-9));
            int at = DrawingScales.All.IndexOf(scale);
            Assert.True(at == 0 || DrawingScales.All[at - 1].Factor > factor);
        });

    [Fact]
    public void Named_OwnText_IsIdentity()
    {
        foreach (DrawingScale scale in DrawingScales.All)
            Assert.Equal(scale, DrawingScales.Named(scale.Text).Value);
        Assert.Equal("1:2", DrawingScales.Named("1 : 2").Value.Text);
        Assert.False(DrawingScales.Named("3:1").IsGiven);
    }

    [Fact]
    public void Below_Chain_RunsThroughAllAndEnds()
    {
        DrawingScale scale = DrawingScales.All[0];
        int steps = 0;
        while (DrawingScales.Below(scale) is { IsGiven: true } next)
        {
            Assert.True(next.Value.Factor < scale.Factor);
            scale = next.Value;
            steps++;
        }
        Assert.Equal("1:10000", scale.Text);
        Assert.Equal(17, steps);
    }

    // The series of widths is one step of √2 after the other (rule of ISO 128, one source), rounded to two digits.
    [Fact]
    public void LineWidths_Series_StepsBySquareRootOfTwo()
    {
        for (int i = 1; i < LineWidths.Series.Length; i++)
            Assert.InRange(LineWidths.Series[i] / LineWidths.Series[i - 1], 1.37, 1.44);
        Assert.Equal([0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1, 1.4, 2], LineWidths.Series.Select(width => width.Millimetres));
    }

    // Wide to narrow 2 : 1, and lettering between them, from memory of ISO 128.
    [Fact]
    public void LineWidths_Groups_AreTwoToOneFromTheSeries_FromMemory()
    {
        Assert.Equal((0.5, 0.25, 0.35), Mm(LineWidths.Medium));
        Assert.Equal((0.7, 0.35, 0.5), Mm(LineWidths.Broad));
        foreach (LineGroup group in LineWidths.Groups)
        {
            Assert.InRange(group.Wide / group.Narrow, 1.9, 2.05);
            Assert.Contains(group.Wide, LineWidths.Series);
            Assert.Contains(group.Narrow, LineWidths.Series);
            Assert.Contains(group.Text, LineWidths.Series);
        }
    }

    // One independent line set, in multiples of the line width.
    [Theory]
    [InlineData(1, "")]
    [InlineData(2, "12 3")]
    [InlineData(3, "12 18")]
    [InlineData(4, "24 3 0.5 3")]
    [InlineData(5, "24 3 0.5 3 0.5 3")]
    [InlineData(7, "0.5 3")]
    [InlineData(8, "24 3 6 3")]
    [InlineData(9, "24 3 6 3 6 3")]
    [InlineData(10, "12 3 0.5 3")]
    [InlineData(11, "12 3 12 3 0.5 3")]
    [InlineData(12, "12 3 0.5 3 0.5 3")]
    public void LinePatterns_Numbered_HaveThePublishedElements(int number, string elements) =>
        Assert.Equal(elements, string.Join(' ', LinePatterns.Numbered(number).Value.Elements.Select(e => e.ToString(System.Globalization.CultureInfo.InvariantCulture))));

    [Fact]
    public void LinePatterns_NotHeld_IsRefused() => Assert.False(LinePatterns.Numbered(6).IsGiven);

    // Inch practice: two pages and a list; 30° arrowheads are from memory.
    [Fact]
    public void DimensioningPractice_Inch_IsAsPublished()
    {
        Assert.Equal(0.125, DimensioningPractice.Inch.ArrowLength.Inches, 12);
        Assert.Equal(3, DimensioningPractice.Inch.ArrowLengthToWidth);
        Assert.Equal(0.125, DimensioningPractice.Inch.Overshoot.Inches, 12);
        Assert.Equal(0.0625, DimensioningPractice.Inch.Gap.Inches, 12);
        Assert.Equal(0.375, DimensioningPractice.Inch.FirstLine.Inches, 12);
        Assert.Equal(0.25, DimensioningPractice.Inch.BetweenLines.Inches, 12);
        // 30° included is 1.866 long per wide: cot 15° = 3.732 halved.
        Assert.Equal(1.866, DimensioningPractice.Iso.ArrowLengthToWidth, 3);
    }

    // From memory of ISO 1302 and ISO 7083.
    [Theory]
    [InlineData(2.5, 3.5, 7.5, 5)]
    [InlineData(3.5, 5, 10.5, 7)]
    [InlineData(5, 7, 15, 10)]
    [InlineData(7, 10, 21, 14)]
    [InlineData(20, 28, 60, 40)]
    public void SymbolProportions_LetterHeight_GivesTheSizes_FromMemory(double h, double shortLeg, double longLeg, double frame)
    {
        SymbolSizes sizes = SymbolProportions.ForLetterHeight(Length.FromMillimetres(h)).Value;
        Assert.Equal(
            (shortLeg, longLeg, frame, h / 10),
            (sizes.SurfaceShortLeg.Millimetres, sizes.SurfaceLongLeg.Millimetres, sizes.FrameHeight.Millimetres, sizes.LineWidth.Millimetres));
        Assert.False(SymbolProportions.ForLetterHeight(Length.FromMillimetres(h + 0.1)).IsGiven);
    }

    private static (double Wide, double Narrow, double Text) Mm(LineGroup group) =>
        (group.Wide.Millimetres, group.Narrow.Millimetres, group.Text.Millimetres);
}
