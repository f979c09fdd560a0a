using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;
using LeverDraw.Tests.Support;
using LeverDraw.Writers.Dxf;

namespace LeverDraw.Tests.Writers;

/// <summary>Signs that fonts lack are drawn with the pen; what follows them stays text at its own place.</summary>
public class DxfSignsTests
{
    [Theory]
    [InlineData("⌖", "")]
    [InlineData("◁ 1:48", "1:48")]
    [InlineData("⌒12.5", "12.5")]
    [InlineData("⌀9", "⌀9")]
    public void WithoutSigns_Line_KeepsWhatIsNoSign(string line, string rest) => Assert.Equal(rest, DxfSigns.WithoutSigns(line));

    [Fact]
    public void Strokes_LeadingSign_CoverTheInkThatTheRestDoesNot()
    {
        PlotText whole = StrokeLettering.Compose("◁ 1:48", new Point2D(20, 30), 3.5, Math.PI / 2);
        PlotText rest = Assert.IsType<PlotText>(DxfSigns.Rest(whole));
        Box2D sign = DxfSigns.Strokes(whole).Aggregate(Box2D.Empty, (b, e) => b.Union(e.Box));
        Box2D all = InkBox.OnPaper(whole), after = InkBox.OnPaper(rest);
        // Upwards: the sign first, then the figures, together the ink of the whole line.
        Assert.True(sign.MaxY < after.MinY);
        Assert.Equal(all.MaxY, after.MaxY, 1e-9);
        Assert.InRange(sign.MinY, all.MinY, all.MinY + 0.5);
        Assert.Equal("1:48", rest.Text);
    }

    [Fact]
    public void Write_ShippedLever_HasNoSignLeftAsText()
    {
        string file = System.Text.Encoding.UTF8.GetString(Bytes.Of(new DxfWriter(new DxfOptions()), SheetMaker.Draw("levers/early", SheetMaker.Options("A3"))));
        Assert.Contains(SheetMaker.Draw("levers/early", SheetMaker.Options("A3")).Items.OfType<PlotText>(), t => t.Text == "⌖");
        Assert.DoesNotContain("⌖", file, StringComparison.Ordinal);
    }
}
