using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts;
using LeverDraw.Pipeline;
using LeverDraw.Specimens.Forms;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Specimens.Forms;

public sealed class FormSheetTests
{
    [Theory]
    [InlineData("lever", "A4")]
    [InlineData("lever", "letter")]
    [InlineData("lever", "A3")]
    [InlineData("pin", "A4")]
    [InlineData("pin", "letter")]
    public void Of_Paper_IsLegibleAndNumbersEveryLineOnce(string kind, string paper)
    {
        PartKind part = PartKinds.All.Single(k => k.Name == kind);
        Checked<PlotSheet> drawn = DrawingRoad.Sheet(FormSheet.Of(part), SheetMaker.Options(paper, ShownUnits.Millimetres));
        Assert.True(drawn.Ok, string.Join('\n', drawn.Diagnostics.Select(d => d.Message)));
        Assert.Empty(Legibility.Faults(drawn.Value, SheetMaker.Frame(paper)));
        string[] numbers = [.. drawn.Value.Items.OfType<PlotText>().Where(t => t.View is not null && t.Text.All(char.IsAsciiDigit)).Select(t => t.Text)];
        Assert.Equal(numbers.Distinct(), numbers);
        // Every number is a line of the table, and every line with a number in the table is on the drawing.
        int lines = drawn.Value.Items.OfType<PlotText>().Count(t => Measurands.All.Any(m => m.Part == kind && m.Name == t.Text && m.Kind is (ReadingKind.Size or ReadingKind.Angle)));
        Assert.Equal(lines, numbers.Length);
    }
}
