using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Rules;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Geometry;
using LeverDraw.Parts;
using LeverDraw.Tests.Support;
using LeverDraw.Tests.Writers;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Writers.Pdf;
using LeverDraw.Writers.Svg;

namespace LeverDraw.Tests.Drafting.Rules;

/// <summary>Graduations measured in the written files: a reader of the ink, not of the code that made it.</summary>
public sealed class ContractionRuleTests
{
    /// <summary>3/16 inch per foot: 12 inches on the rule are 12 3/16 long (reference 04a, brass).</summary>
    private const double Brass = 12.1875 / 12;

    [Theory]
    [InlineData("A4", 150, 6)]
    [InlineData("A3", 360, 14)]
    [InlineData("letter", 160, 6)]
    public void Sheet_InSvg_GraduationsStandWhereTheRuleSays(string paper, int atLeast, int inches)
    {
        using var file = new MemoryStream();
        new SvgWriter().Write(Sheet(paper), file);
        file.Position = 0;
        SvgInk ink = SvgInk.Read(file);
        (double X, double Top, double Bottom)[] ticks = [.. ink.Lines.Where(l => l.Length == 2 && Math.Abs(l[0].X - l[1].X) < 1e-9 && Math.Abs(l[0].Y - l[1].Y) is > 1.5 and < 5.5)
            .Select(l => (l[0].X, Math.Max(l[0].Y, l[1].Y), Math.Min(l[0].Y, l[1].Y)))];
        // Most graduations start from the millimetre edge; the inch edge lies below it (y runs down in the file).
        double upper = ticks.SelectMany(t => new[] { t.Top, t.Bottom }).GroupBy(y => Math.Round(y, 3)).MaxBy(g => g.Count())!.Key;
        double[] levels = [upper, upper + ContractionRuleInk.Height];
        foreach (double level in levels)
        {
            double[] xs = [.. ticks.Where(t => Math.Abs(t.Top - level) < 0.01 || Math.Abs(t.Bottom - level) < 0.01).Select(t => t.X).Order()];
            double step = xs[1] - xs[0];
            double unit = Math.Abs(step - Brass) < 0.05 ? Brass : 25.4 / 16 * Brass;
            Assert.True(xs.Length > (unit == Brass ? atLeast : inches * 16), FormattableString.Invariant($"{xs.Length} graduations of {unit}"));
            // The file rounds to 0.0001 mm.
            for (int i = 0; i < xs.Length; i++)
                Assert.Equal(i * unit, xs[i] - xs[0], 0.0003);
        }
    }

    [Fact]
    public void Sheet_InPdf_GraduationsStandWhereTheRuleSays()
    {
        // Upright strokes of the longest graduations' length, every ten millimetres and every inch.
        (Point2D From, Point2D To)[] longest = [.. PdfLines.Read(Bytes.Of(new PdfWriter(), Sheet("A4")))
            .Where(l => Math.Abs(l.From.X - l.To.X) < 0.01 && Math.Abs((Math.Abs(l.From.Y - l.To.Y) * 25.4 / 72) - 5) < 0.02)];
        // The paper's own grid has strokes of that length too, but few in a row.
        double[][] rows = [.. longest.GroupBy(l => Math.Round(Math.Max(l.From.Y, l.To.Y), 1)).OrderByDescending(g => g.Count()).Take(2).Select(g => g.Select(l => l.From.X * 25.4 / 72).Order().ToArray())];
        (double[] tens, double[] inches) = (rows[0], rows[1]);
        Assert.Equal((16, 7), (tens.Length, inches.Length));
        // Points are written to a few decimals: a hundredth of a millimetre is far below any printer.
        for (int i = 0; i < tens.Length; i++)
            Assert.Equal(10 * i * Brass, tens[i] - tens[0], 0.01);
        for (int i = 0; i < inches.Length; i++)
            Assert.Equal(25.4 * i * Brass, inches[i] - inches[0], 0.01);
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("A3")]
    [InlineData("tabloid")]
    public void Sheet_OnAnyPaper_IsLegible(string paper)
    {
        PlotSheet sheet = Sheet(paper);
        Assert.Empty(Legibility.Faults(sheet, SheetMaker.Frame(paper)));
        Assert.Empty(PartsApart.Faults(sheet, SheetMaker.Frame(paper)));
    }

    [Fact]
    public void Block_OnThePattern_IsTheSameRule()
    {
        SheetContent content = SheetMaker.Content("levers/middle:pattern", new SheetOptions());
        PaperBlock rule = Assert.Single(content.Blocks);
        double[] xs = [.. rule.Items.OfType<PlotStroke>().Select(s => s.Edge).OfType<LineEdge>().Where(e => e.From.X == e.To.X && e.From.Y > 10).Select(e => e.From.X).Order()];
        Assert.Equal(81, xs.Length);
        Assert.Equal(80 * Brass, xs[^1] - xs[0], 1e-9);
    }

    private static PlotSheet Sheet(string paper) =>
        ContractionRuleSheet.Of(AxisRates.Alike(FoundryMetal.Brass.BookRate), FoundryMetal.Brass, null, SheetMaker.Options(paper)).Value!;
}
