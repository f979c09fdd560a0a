using LeverDraw.Drafting;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Symbols;

/// <summary>Taper sign, edge sign, centre marks, break lines. Their proportions are our own or from memory; the tests hold what the forms must be.</summary>
public class SmallSymbolTests
{
    // ISO 3040: an isosceles triangle, apex toward the small end.
    [Theory]
    [InlineData(0)]
    [InlineData(180)]
    [InlineData(25)]
    public void TaperSign_Ink_IsIsoscelesWithItsApexTowardTheSmallEnd(double degrees)
    {
        var middle = new Point2D(2, 3);
        Vector2D way = Vector2D.FromAngle(degrees * Math.PI / 180);
        LineEdge[] sides = TaperSign.Ink(middle, way, 2.5, null, null).Lines();
        Assert.Equal(3, sides.Length);
        LineEdge theBase = sides.MinBy(l => l.Length)!;
        Assert.Equal(1.5, theBase.Length, 9);
        LineEdge[] flanks = [.. sides.Where(l => l != theBase)];
        Assert.Equal(flanks[0].Length, flanks[1].Length, 9);
        Assert.All(flanks, f => Assert.Contains(new[] { f.From, f.To }, p => Math.Abs((p - middle).Dot(way) - 1.25) < 1e-9 && Math.Abs((p - middle).Cross(way)) < 1e-9));
        Assert.Equal(("▷", "◁"), (TaperSign.Character(true), TaperSign.Character(false)));
    }

    [Fact]
    public void EdgeSign_Ink_IsARightAngleWithBothLimitsInIt()
    {
        var shape = new EdgeShape(new EdgeSign("−0.2", "−0.4"), DraftingStyle.Small);
        PlotItem[] ink = [.. shape.Ink(Point2D.Origin, null, null)];
        Assert.Equal(2, ink.Lines().Length);
        Assert.Contains(ink.Lines(), l => l.To == new Point2D(0, 5));
        Assert.Contains(ink.Lines(), l => l.To == new Point2D(5, 0));
        Assert.Equal(["−0.2", "−0.4"], ink.Texts());
        PlotText[] texts = [.. ink.OfType<PlotText>()];
        Assert.True(texts[0].Anchor.Y - texts[1].Anchor.Y >= 2.5 * 1.5 && texts.All(t => t.Anchor.X >= 1.25));
        Assert.True(shape.Width >= texts.Max(t => t.Anchor.X + t.Width) - 1e-9 && shape.Height >= texts[0].Anchor.Y + 2.5 - 1e-9);
        Assert.Equal(["+0.1"], new EdgeShape(new EdgeSign("+0.1"), DraftingStyle.Small).Ink(Point2D.Origin, null, null).Texts());
    }

    [Fact]
    public void CentreMark_Lines_CrossInTheCentre()
    {
        Assert.Equal([new LineEdge(new(1, 3), new(5, 3)), new LineEdge(new(3, 1), new(3, 5))], CentreMark.Cross(new Point2D(3, 3), 4));
        Assert.Equal([new LineEdge(new(-2, 0), new(2, 0)), new LineEdge(new(0, -2), new(0, 2))], CentreMark.Through(Point2D.Origin, 2));
    }

    [Fact]
    public void BreakLine_Zigzag_IsOneChainThatLeavesTheLineToBothSides()
    {
        LineEdge[] pieces = BreakLine.Zigzag(new Point2D(0, 0), new Point2D(0, 20), 2);
        Assert.Equal(5, pieces.Length);
        for (int i = 1; i < 5; i++)
            Assert.Equal(pieces[i - 1].To, pieces[i].From);
        Assert.Equal((new Point2D(0, 0), new Point2D(0, 20)), (pieces[0].From, pieces[^1].To));
        Assert.Equal((-2, 2), (Math.Round(pieces.Min(p => p.To.X), 9), Math.Round(pieces.Max(p => p.To.X), 9)));
        Assert.Throws<ArgumentOutOfRangeException>(() => BreakLine.Zigzag(new Point2D(0, 0), new Point2D(1, 0), 2));
    }

    [Fact]
    public void BreakLine_Freehand_IsTangentArcsFromEndToEnd()
    {
        ArcEdge[] arcs = BreakLine.Freehand(new Point2D(1, 2), new Point2D(16, 10), 4);
        Assert.Equal(4, arcs.Length);
        Assert.Equal(0, (arcs[0].Start - new Point2D(1, 2)).Length, 9);
        Assert.Equal(0, (arcs[^1].End - new Point2D(16, 10)).Length, 9);
        for (int i = 1; i < arcs.Length; i++)
        {
            Assert.Equal(0, (arcs[i].Start - arcs[i - 1].End).Length, 9);
            // Tangent: both centres and the joint on one line, on either side of it.
            Assert.Equal(2 * arcs[i].Radius, (arcs[i].Centre - arcs[i - 1].Centre).Length, 9);
        }
    }

    [Fact]
    public void GeneralSigns_NothingElseMarked_HaveNoBracketsAndAreNarrower()
    {
        var signs = new GeneralSigns(new TextureSign(TextureProcess.Removal, "Ra 3.2"), new EdgeSign("−0.05", "−0.2"));
        var row = new GeneralSignsShape(signs with { HasOthers = false }, DraftingStyle.Small);
        PlotItem[] ink = [.. row.Ink(Point2D.Origin)];
        Assert.Equal(["Ra 3.2", "−0.05", "−0.2"], ink.Texts());
        Assert.True(ink.StrokeBox().MaxX <= row.Width + 1e-9 && row.Width < new GeneralSignsShape(signs, DraftingStyle.Small).Width - 5);
    }

    [Fact]
    public void GeneralSigns_Ink_StaysInItsBoxWithTheBareSignInBrackets()
    {
        var row = new GeneralSignsShape(new GeneralSigns(new TextureSign(TextureProcess.NoRemoval), new EdgeSign("−0.2", "−0.4")), DraftingStyle.Small);
        PlotItem[] ink = [.. row.Ink(Point2D.Origin)];
        Assert.Equal(["(", ")", "−0.2", "−0.4"], ink.Texts());
        Assert.Single(ink.Arcs());
        Box2D box = ink.StrokeBox();
        Assert.True(box.MinX >= -1e-9 && box.MaxX <= row.Width + 1e-9 && box.MaxY <= row.Height + 1e-9);
        Assert.Empty(LeverDraw.Tests.Support.Legibility.Faults(new PlotSheet(100, 50, "", PartState.Finished, SheetUnit.Millimetre, 1, 2.5, 2.5, [.. ink.Select(i => i.Moved(new Vector2D(5, 5)))], [], []), new Box2D(0, 0, 100, 50)));
    }
}
