using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Geometry;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Drafting.TitleBlocks;

public class CheckBarTests
{
    [Theory]
    [InlineData(SheetUnit.Millimetre, 50, "PRINT CHECK: 50 mm", 6)]
    [InlineData(SheetUnit.Inch, 50.8, "PRINT CHECK: 2 in", 5)]
    public void Draw_Bar_MeasuresWhatItSays(SheetUnit unit, double length, string says, int ticks)
    {
        PlotItem[] items = [.. CheckBar.Draw(unit, new Point2D(10, 20), 2.5)];
        LineEdge[] lines = [.. items.OfType<PlotStroke>().Select(s => (LineEdge)s.Edge)];
        LineEdge bar = Assert.Single(lines, l => l.From.Y == l.To.Y);
        Assert.Equal(length, bar.Length, 9);
        double[] at = [.. lines.Where(l => l.From.X == l.To.X).Select(l => l.From.X).Order()];
        Assert.Equal(ticks, at.Length);
        Assert.Equal((bar.Box.MinX, bar.Box.MaxX), (at[0], at[^1]));
        Assert.All(at.Zip(at.Skip(1)), pair => Assert.Equal(length / (ticks - 1), pair.Second - pair.First, 9));
        PlotText text = Assert.Single(items.OfType<PlotText>());
        Assert.Equal(says, text.Text);
        Assert.All(lines, l => Assert.False(Legibility.BoxOf(text).Overlaps(l.Box.Inflated(0.1))));
    }

    [Fact]
    public void Sheet_AnyScale_CarriesTheBarUnscaled()
    {
        PlotSheet sheet = SheetMaker.Draw("pins/early", SheetMaker.Options("A4", ShownUnits.Inches));
        Assert.Single(sheet.Items.OfType<PlotStroke>(), s => s.Role == LineRole.Frame && s.Edge is LineEdge l && l.From.Y == l.To.Y && Math.Abs(l.Length - 50.8) < 1e-9);
        Assert.Contains(sheet.Items.OfType<PlotText>(), t => t.Text == "PRINT CHECK: 2 in");
    }
}
