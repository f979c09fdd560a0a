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
    [InlineData("pin", "A3")]
    public void Of_Paper_IsLegibleAndNumbersEveryLineOnce(string kind, string paper)
    {
        PartKind part = PartKinds.All.Single(k => k.Name == kind);
        PlotSheet[] sheets = [.. FormSheet.Of(part).Select(s => Drawn(s, paper))];
        Assert.All(sheets, s => Assert.Empty(Legibility.Faults(s, SheetMaker.Frame(paper))));
        string[] numbers = [.. sheets[0].Items.OfType<PlotText>().Where(t => t.View is not null && t.Text.All(char.IsAsciiDigit)).Select(t => t.Text)];
        Assert.Equal(numbers.Distinct(), numbers);
        // Every number is a line of the table, and every line with a number in the table is on the drawing.
        PlotText[] lines = [.. sheets[^1].Items.OfType<PlotText>().Where(t => Measurands.All.Any(m => m.Part == kind && m.Name == t.Text && m.Kind is (ReadingKind.Size or ReadingKind.Angle)))];
        Assert.Equal(lines.Length, numbers.Length);
        Assert.All(sheets, s => Assert.Contains(s.Items.OfType<PlotText>(), t => t.Text.Contains("PRINT CHECK: 50 mm", StringComparison.Ordinal)));
    }

    /// <summary>A blank that is too small is not written into: each has 25 mm by 6 mm, and a line says what was measured with.</summary>
    [Theory]
    [InlineData("lever", "A4")]
    [InlineData("lever", "letter")]
    [InlineData("pin", "A4")]
    public void Of_Paper_HasRoomForAHand(string kind, string paper)
    {
        PlotSheet sheet = Drawn(FormSheet.Of(PartKinds.All.Single(k => k.Name == kind))[^1], paper);
        PlotText[] blanks = [.. sheet.Items.OfType<PlotText>().Where(t => t.Text.Length > 20 && t.Text.All(c => c == '.'))];
        Assert.All(blanks, b => Assert.True(b.Width >= 25, FormattableString.Invariant($"{b.Width:0.0} mm")));
        double[] rows = [.. blanks.Select(b => b.Anchor.Y).Distinct().Order()];
        Assert.All(rows.Zip(rows.Skip(1), (a, b) => b - a).Where(d => d > 0.1), d => Assert.True(d >= 6, FormattableString.Invariant($"{d:0.0} mm")));
        Assert.All(new[] { "INSTRUMENT", "ALTERED", "READING", "UNWORN PLACE", "SPECIMEN" }, head => Assert.Contains(sheet.Items.OfType<PlotText>(), t => t.Text == head));
    }

    /// <summary>On the small sheets the lever is shown at least as large as it is.</summary>
    [Theory]
    [InlineData("A4")]
    [InlineData("letter")]
    public void Of_SmallPaper_ShowsTheLeverFullSize(string paper) =>
        Assert.Empty(DrawingRoad.Sheet(FormSheet.Of(PartKinds.Lever)[0], SheetMaker.Options(paper, ShownUnits.Millimetres)).Diagnostics);

    private static PlotSheet Drawn(BuiltSheet sheet, string paper)
    {
        Checked<PlotSheet> drawn = DrawingRoad.Sheet(sheet, SheetMaker.Options(paper, ShownUnits.Millimetres));
        Assert.True(drawn.Ok, string.Join('\n', drawn.Diagnostics.Select(d => d.Message)));
        return drawn.Value;
    }
}
