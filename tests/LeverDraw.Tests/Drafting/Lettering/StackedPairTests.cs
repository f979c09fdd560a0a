using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Lettering;

/// <summary>Deviations and limits one above the other: which texts, and where their ink stands.</summary>
public class StackedPairTests
{
    [Theory]
    [InlineData("9.5 0/−0.1", true)]
    [InlineData("14 +0.3/0", true)]
    [InlineData(".3740 0/−.0039", true)]
    [InlineData("10 +3/+1", true)]
    [InlineData("[.3740 0/−.0039]", true)]
    [InlineData("⌀3.074/3.060", true)]
    [InlineData(".3740/.3701", true)]
    [InlineData("9/16", false)]
    [InlineData("1 3/16", false)]
    [InlineData("3.06 H8 (3.060 / 3.074)", false)]
    [InlineData("0/0", false)]
    [InlineData("4.1 ±0.05", false)]
    [InlineData("2025/03", false)]
    [InlineData("0.4/5", false)]
    [InlineData("+0.3/", false)]
    [InlineData("PART 1.2/1.3/1.4", false)]
    public void HasStack_Text_IsAPairOfDeviationsOrLimits(string text, bool expected) => Assert.Equal(expected, StrokeLettering.HasStack(text));

    [Fact]
    public void Compose_Deviations_StandOverEachOtherClearByTwoPens()
    {
        PlotText text = StrokeLettering.Compose("9.5 0/−0.1", Point2D.Origin, 10, stackTolerances: true);
        Assert.Equal("9.5 0/−0.1", text.Text);
        PlotGlyph[] small = [.. text.Glyphs.Where(g => g.Scale < 10)];
        Assert.Equal(["0", "−", "0", ".", "1"], small.Select(g => g.Shape.Character));
        Assert.All(small, g => Assert.Equal(7, g.Scale, 9));
        double upper = small[0].OffsetY;
        double lower = small[2].OffsetY;
        // Clear of ink by 0.2 h: centre lines by 0.3 h. About the middle of the capitals, 5.
        Assert.Equal(3, upper - (lower + 7), 9);
        Assert.Equal(5, (upper + 7 + lower) / 2, 9);
        // The 0 above stands over the 0 below, not over the sign.
        Assert.Equal(small[2].OffsetX, small[0].OffsetX, 9);
        // No slash, and shorter than with all in one line.
        Assert.DoesNotContain(text.Glyphs, g => g.Shape.Character == "/");
        Assert.True(text.Width < StrokeLettering.WidthOf(text.Text, 10));
        Assert.Equal(StrokeLettering.WidthOf(text.Text, 10), text.LevelWidth);
    }

    [Fact]
    public void Compose_Ink_StaysWithinWidthAndStandOut()
    {
        foreach (string line in (string[])["9.5 0/−0.1", "⌀3.074/3.060", "[.3740 0/−.0039]", "10 +0.3/+0.125 x"])
        {
            PlotText text = StrokeLettering.Compose(line, Point2D.Origin, 2.5, stackTolerances: true);
            Box2D ink = InkBox.Local(text);
            Assert.True(ink.MinX >= -1e-9 && ink.MaxX <= text.Width + 1e-9, line);
            Assert.True(ink.MinY >= -2.5 * StrokeLettering.StackStandsOut - 1e-9 && ink.MaxY <= 2.5 * (1 + StrokeLettering.StackStandsOut) + 1e-9, line);
            Assert.Equal(text.Width, StrokeLettering.WidthOf(line, 2.5, stackTolerances: true), 9);
        }
    }

    /// <summary>Only dimensions ask for it: a note keeps its line.</summary>
    [Fact]
    public void Compose_NotAsked_StaysInOneLine() =>
        Assert.Contains(StrokeLettering.Compose("0/−0.1", Point2D.Origin, 10).Glyphs, g => g.Shape.Character == "/");
}
