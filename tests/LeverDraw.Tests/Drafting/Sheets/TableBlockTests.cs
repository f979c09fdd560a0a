using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Sheets;

public class TableBlockTests
{
    private static readonly SheetTable Two = new("TOOLS", [new("PIN"), new("DRILL", 0.5), new("⌀", 1)], [["3/0", "7/64", "2.778"], ["2/0", "1/8\n(3.175)", "3.184"]]);

    [Fact]
    public void Build_TableOfTwoRows_RulesEveryRowAndColumn()
    {
        PaperBlock block = TableBlock.Build("table-1", Two, 2.5);
        LineEdge[] rules = [.. block.Items.OfType<PlotStroke>().Select(s => (LineEdge)s.Edge)];
        // 3 columns have 4 borders, head and two rows have 4.
        Assert.Equal(4, rules.Count(r => r.From.X == r.To.X));
        Assert.Equal(4, rules.Count(r => r.From.Y == r.To.Y));
        Assert.All(block.Items.OfType<PlotStroke>(), s => Assert.Equal(LineRole.Table, s.Role));
        Assert.Equal(["PIN", "DRILL", "⌀", "3/0", "7/64", "2.778", "2/0", "1/8", "(3.175)", "3.184", "TOOLS"], block.Items.OfType<PlotText>().Select(t => t.Text));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Build_AnyEntry_StandsClearOfTheRules(bool close)
    {
        foreach (double height in (double[])[1.8, 2.5, 3.5])
        {
            PaperBlock block = TableBlock.Build("table-1", Two with { IsClose = close }, height);
            LineEdge[] rules = [.. block.Items.OfType<PlotStroke>().Select(s => (LineEdge)s.Edge)];
            foreach (PlotText text in block.Items.OfType<PlotText>())
            {
                // A bracket hangs a quarter of the height below and above the capitals; the rule keeps as much again.
                var ink = new Box2D(text.Anchor.X, text.Anchor.Y - (0.25 * height), text.Anchor.X + text.Width, text.Anchor.Y + (1.25 * height));
                Box2D clear = ink.Inflated(0.15 * height);
                Assert.All(rules, r => Assert.False(r.Box.MinX < clear.MaxX && r.Box.MaxX > clear.MinX && r.Box.MinY < clear.MaxY && r.Box.MaxY > clear.MinY, text.Text));
            }
        }
    }

    [Fact]
    public void Build_RightAlignedColumn_EndsItsNumbersInOneLine()
    {
        PlotText[] numbers = [.. TableBlock.Build("table-1", Two, 2.5).Items.OfType<PlotText>().Where(t => t.Text is "2.778" or "3.184")];
        Assert.Equal(2, numbers.Length);
        Assert.Equal(numbers[0].Anchor.X + numbers[0].Width, numbers[1].Anchor.X + numbers[1].Width, 9);
    }

    [Fact]
    public void Build_RowOfAnotherLength_Throws()
    {
        Assert.Throws<ArgumentException>(() => TableBlock.Build("table-1", new SheetTable("", [new("A")], [["1", "2"]]), 2.5));
    }
}
