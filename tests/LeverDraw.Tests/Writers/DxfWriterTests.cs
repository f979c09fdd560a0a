using System.Text;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;
using LeverDraw.Writers.Dxf;

namespace LeverDraw.Tests.Writers;

/// <summary>What needs no outside reader; the rest is in <see cref="DxfReaderTests"/>.</summary>
public class DxfWriterTests
{
    [Theory]
    [InlineData(true, DxfVersion.Automatic, "AC1015")]
    [InlineData(false, DxfVersion.Automatic, "AC1024")]
    [InlineData(false, DxfVersion.R2000, "AC1015")]
    [InlineData(true, DxfVersion.R2010, "AC1024")]
    public void Write_Version_FollowsTheTextUnlessForced(bool ascii, DxfVersion asked, string expected)
    {
        byte[] dxf = Bytes.Of(new DxfWriter(new DxfOptions(asked)), ascii ? SampleSheets.Ascii() : SampleSheets.Everything());
        Assert.Contains($"$ACADVER\r\n  1\r\n{expected}\r\n", Encoding.UTF8.GetString(dxf), StringComparison.Ordinal);
        Assert.Equal(ascii || expected == "AC1015", dxf.All(b => b < 128));
    }

    [Fact]
    public void Write_OutlinesOnly_HasNothingElse()
    {
        string text = Encoding.UTF8.GetString(Bytes.Of(new DxfWriter(new DxfOptions(Content: DxfContent.OutlinesOnly)), SampleSheets.Everything()));
        foreach (string absent in new[] { "TEXT", "DIMENSION", "HATCH", "EDGES", "RAISED_MARK", "*D1" })
            Assert.DoesNotContain($"\r\n{absent}\r\n", text, StringComparison.Ordinal);
        Assert.Contains("\r\nOUTLINE_FINISHED\r\n", text, StringComparison.Ordinal);
        Assert.Contains("AC1015", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(PartState.Casting, "OUTLINE_CASTING")]
    [InlineData(PartState.Pattern, "OUTLINE_PATTERN")]
    [InlineData(PartState.Pin, "OUTLINE_PIN")]
    public void Write_State_IsInTheLayersName(PartState state, string layer)
    {
        string text = Encoding.UTF8.GetString(Bytes.Of(new DxfWriter(), SampleSheets.Everything(state: state)));
        Assert.Contains($"\r\n{layer}\r\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain("OUTLINE_FINISHED", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_MainViewAtAnotherScale_Throws()
    {
        PlotSheet sheet = SampleSheets.Ascii();
        Assert.Throws<ArgumentException>(() => Bytes.Of(new DxfWriter(), sheet with { MainScale = 1 }));
    }

    [Fact]
    public void Write_DimensionWithoutInk_Throws()
    {
        PlotSheet sheet = SampleSheets.Ascii();
        Assert.Throws<ArgumentException>(() => Bytes.Of(new DxfWriter(), sheet with { Items = [.. sheet.Items.Where(i => i.Owner != "d3")] }));
    }

    [Fact]
    public void Vertices_ThreeQuarterArc_IsSplitAndTheClosingPieceIsStraight()
    {
        var vertices = DxfVertex.Of(SampleSheets.Keyhole());
        // By hand: 270° in two pieces of 135°, tan(135°/4) = 0.668179 each; begun after a straight side.
        Assert.Equal(5, vertices.Length);
        Assert.Equal([0, 0, 0.668179, 0.668179, 0], vertices.Select(v => Math.Round(v.Bulge, 6)));
    }

    [Fact]
    public void Vertices_Slot_HasHalfCirclesOfBulgeOne()
    {
        // tan(180°/4) = 1; begun after a straight side, so the arc comes first and the last piece is straight.
        Assert.Equal([1.0, 0, 1, 0], DxfVertex.Of(SampleSheets.Slot(4, 2)).Select(v => Math.Round(v.Bulge, 12)));
    }

    [Fact]
    public void Vertices_ArcsOnly_StartAnywhere()
    {
        Contour lens = Contour.Of([ArcEdge.Between(Point2D.Origin, new(1, 0), new(-1, 0), true), ArcEdge.Between(Point2D.Origin, new(-1, 0), new(1, 0), true)]);
        Assert.Equal([1.0, 1.0], DxfVertex.Of(lens).Select(v => Math.Round(v.Bulge, 12)));
    }
}
