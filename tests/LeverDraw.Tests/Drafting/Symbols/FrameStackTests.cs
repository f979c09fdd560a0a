using LeverDraw.Drafting;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Symbols;

// Reference 10i (from memory there): frame height 2 h, first compartment about square: 5 for lettering of 2.5, 7 for 3.5.
public class FrameStackTests
{
    private static readonly ControlFrame Square = ControlFrame.Of(GeometricSigns.Perpendicularity, "⌀0.05", "B");

    [Theory]
    [InlineData(false, 5)]
    [InlineData(true, 7)]
    public void Ink_OneFrame_IsTwiceTheLetteringHighAndItsSignsCompartmentSquare(bool large, double height)
    {
        PlotItem[] ink = [.. new FrameStack([Square], null, large ? DraftingStyle.Large : DraftingStyle.Small).Ink(new Point2D(10, 20), 0, "d", "v")];
        Box2D box = ink.StrokeBox();
        Assert.Equal(height, box.Height, 9);
        Assert.Equal((10, 20), (box.MinX, box.MaxY));
        double[] walls = [.. ink.Lines().Where(l => Math.Abs(l.From.X - l.To.X) < 1e-9).Select(l => l.From.X).Order()];
        Assert.Equal(4, walls.Length);
        Assert.Equal(height, walls[1] - walls[0], 9);
        Assert.Equal(["⟂", "⌀0.05", "B"], ink.Texts());
        Assert.All(ink, i => Assert.Equal(("d", "v"), (i.Owner, i.View)));
    }

    /// <summary>Half a letter height of air on every side, but for a sign wider than its share.</summary>
    [Fact]
    public void Ink_Texts_StandInTheMiddleOfTheirCompartments()
    {
        PlotItem[] ink = [.. new FrameStack([Square], null, DraftingStyle.Small).Ink(Point2D.Origin, 0, null, null)];
        double[] walls = [.. ink.Lines().Where(l => Math.Abs(l.From.X - l.To.X) < 1e-9).Select(l => l.From.X).Order()];
        PlotText[] texts = [.. ink.OfType<PlotText>()];
        for (int i = 0; i < 3; i++)
        {
            Assert.Equal((walls[i] + walls[i + 1]) / 2, texts[i].Anchor.X + (texts[i].Width / 2), 9);
            Assert.Equal(-2.5, texts[i].Anchor.Y + (texts[i].Height / 2), 9);
            Box2D letters = InkBox.OnPaper(texts[i]);
            Assert.True(letters.MinX > walls[i] + 0.3 && letters.MaxX < walls[i + 1] - 0.3 && letters.MinY > -4.7 && letters.MaxY < -0.3);
        }
    }

    [Fact]
    public void Ink_TwoFrames_ShareALineAndTheLeftEdge()
    {
        ControlFrame wide = ControlFrame.Of(GeometricSigns.Position, "0.125", "A", "B", "C");
        PlotItem[] ink = [.. new FrameStack([Square, wide], null, DraftingStyle.Small).Ink(Point2D.Origin, 0, null, null)];
        Assert.Equal(-10, ink.StrokeBox().MinY, 9);
        LineEdge[] level = [.. ink.Lines().Where(l => Math.Abs(l.From.Y + 5) < 1e-9 && Math.Abs(l.To.Y + 5) < 1e-9).OrderBy(l => l.From.X)];
        Assert.Equal(2, level.Length);
        Assert.Equal(0, level[0].From.X, 9);
        Assert.Equal(level[0].To.X, level[1].From.X, 9);
        Assert.Equal(ink.StrokeBox().MaxX, level[1].To.X, 9);
    }

    [Fact]
    public void Ink_HangingDatum_TouchesTheFrameWithItsTriangle()
    {
        var stack = new FrameStack([Square], "A", DraftingStyle.Small);
        PlotItem[] ink = [.. stack.Ink(Point2D.Origin, 0, null, null)];
        PlotFill triangle = Assert.Single(ink.OfType<PlotFill>());
        Assert.Equal(2, triangle.Corners.Count(c => Math.Abs(c.Y + 5) < 1e-9));
        Assert.Equal(2.5, triangle.Corners.Average(c => c.X), 9);
        Assert.Equal(["⟂", "⌀0.05", "B", "A"], ink.Texts());
        var shape = new PlaceShape();
        stack.AddTo(shape, Point2D.Origin, 0, 0);
        Assert.Equal(2, shape.Texts.Length);
        Assert.True(shape.Bounds.Inflated(1e-9).Contains(ink.StrokeBox()));
    }

    [Fact]
    public void Ink_DatumWithoutFrames_HangsUnderAReferenceLine()
    {
        PlotItem[] ink = [.. new FrameStack([], "A", DraftingStyle.Small, 20).Ink(Point2D.Origin, 0, null, null)];
        Assert.Contains(ink.Lines(), l => l.From == Point2D.Origin && l.To == new Point2D(20, 0));
        Assert.Equal(2, Assert.Single(ink.OfType<PlotFill>()).Corners.Count(c => Math.Abs(c.Y) < 1e-9));
    }
}
