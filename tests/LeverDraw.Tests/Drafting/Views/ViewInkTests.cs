using LeverDraw.Drafting;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Views;

public class ViewInkTests
{
    private static readonly Contour Square = Contour.Of([
        new LineEdge(new Point2D(-5, -5), new Point2D(5, -5)), new LineEdge(new Point2D(5, -5), new Point2D(5, 5)),
        new LineEdge(new Point2D(5, 5), new Point2D(-5, 5)), new LineEdge(new Point2D(-5, 5), new Point2D(-5, -5)),
    ]);

    [Fact]
    public void Build_Outline_IsOneLoopAtScale()
    {
        ViewBlock block = Build(new ViewSource("v", null) { Outlines = [new PlotOutline("square", Square)] });
        PlotLoop loop = Assert.IsType<PlotLoop>(Assert.Single(block.Items));
        Assert.Equal((LineRole.Outline, "v"), (loop.Role, loop.View));
        Assert.Equal((20, 20), (loop.Contour.Box.Width, loop.Contour.Box.Height));
        Assert.Equal(new Box2D(-10, -10, 10, 10), block.Core);
    }

    [Fact]
    public void Build_CentreLine_StandsOutOnPaperNotOnTheView()
    {
        ViewEdge axis = new(LineRole.Centre, new LineEdge(new Point2D(-5, 0), new Point2D(5, 0)));
        foreach (double scale in (double[])[1, 2, 10])
        {
            PlotStroke line = Assert.IsType<PlotStroke>(Assert.Single(Build(new ViewSource("v", null) { Edges = [axis] }, scale).Items));
            Assert.Equal(LineRole.Centre, line.Role);
            // 1.5 mm at each end, as extension lines in the small style.
            Assert.Equal((10 * scale) + 3, line.Edge.Length, 9);
        }
    }

    [Theory]
    [InlineData(LineRole.Edge)]
    [InlineData(LineRole.Hidden)]
    [InlineData(LineRole.Section)]
    [InlineData(LineRole.Phantom)]
    public void Build_OtherEdge_KeepsItsRoleAndLength(LineRole role)
    {
        ViewEdge edge = new(role, new LineEdge(new Point2D(-5, 0), new Point2D(5, 0)));
        PlotStroke line = Assert.IsType<PlotStroke>(Assert.Single(Build(new ViewSource("v", null) { Edges = [edge] }).Items));
        Assert.Equal((role, 20.0), (line.Role, line.Edge.Length));
    }

    [Fact]
    public void Build_CutFace_IsLinedAtFortyFiveDegreesInsideIt()
    {
        ViewBlock block = Build(new ViewSource("v", null) { Hatching = [new HatchedRegion([Square])] });
        PlotHatch hatch = Assert.IsType<PlotHatch>(Assert.Single(block.Items));
        Assert.Equal((LineRole.Hatch, Math.PI / 4, 2.0), (hatch.Role, hatch.Angle, hatch.Spacing));
        Assert.True(hatch.Lines.Length >= 12);
        Assert.All(hatch.Lines, l =>
        {
            Assert.Equal(0, Math.Sin(l.TangentAt(0).Angle - (Math.PI / 4)), 9);
            Assert.True(new Box2D(-10, -10, 10, 10).Inflated(1e-9).Contains(l.Box));
        });
    }

    [Fact]
    public void Build_TurnedView_TurnsItsInk()
    {
        ViewEdge edge = new(LineRole.Edge, new LineEdge(Point2D.Origin, new Point2D(5, 0)));
        ViewBlock block = Build(new ViewSource("v", null) { Edges = [edge], Orientation = Transform2D.Turn(Math.PI / 2) });
        Point2D end = ((PlotStroke)block.Items[0]).Edge.End;
        Assert.Equal((0, 10), (Math.Round(end.X, 9), Math.Round(end.Y, 9)));
    }

    [Fact]
    public void Build_Caption_StandsOverTheView()
    {
        ViewBlock block = Build(new ViewSource("v", "A–A") { Outlines = [new PlotOutline("square", Square)] }).Captioned("A–A", DraftingStyle.Small, "  (5:1)");
        PlotText caption = Assert.Single(block.Items.OfType<PlotText>());
        Assert.Equal(("A–A  (5:1)", 3.5), (caption.Text, caption.Height));
        Assert.True(caption.Anchor.Y > 10);
        Assert.Equal(0, caption.Anchor.X + (caption.Width / 2), 6);
        Assert.True(block.Bounds.MaxY > caption.Anchor.Y + 3.5);
    }

    /// <summary>Letter, arc with its arrowhead at the end the view is turned to, angle, scale: in a row, over the middle.</summary>
    [Theory]
    [InlineData(40, true)]
    [InlineData(-30, false)]
    public void Build_CaptionOfATurnedView_SaysWhichWayAndHowFar(double degrees, bool left)
    {
        ViewBlock block = Build(new ViewSource("v", "G") { Outlines = [new PlotOutline("square", Square)], Turned = degrees * Math.PI / 180 }).Captioned("G", DraftingStyle.Small, "  (5:1)");
        PlotText[] words = [.. block.Items.OfType<PlotText>()];
        Assert.Equal(["G", left ? "40°  (5:1)" : "30°  (5:1)"], words.Select(w => w.Text));
        Box2D arc = block.Items.OfType<PlotStroke>().Single(s => s.Role == LineRole.Symbol).Edge.Box;
        PlotFill head = Assert.Single(block.Items.OfType<PlotFill>());
        Assert.True(words[0].Anchor.X + words[0].Width < arc.MinX && arc.MaxX < words[1].Anchor.X);
        Assert.Equal(left ? arc.MinX : arc.MaxX, head.Corners[0].X, 9);
        Assert.Equal(words[0].Anchor.Y, head.Corners[0].Y, 9);
        Assert.Equal(words[0].Anchor.Y + 3.5, arc.MaxY, 9);
        Assert.Equal(0, (words[0].Anchor.X + words[1].Anchor.X + words[1].Width) / 2, 6);
    }

    private static ViewBlock Build(ViewSource view, double scale = 2) => new AnnotatedView(view, scale, DraftingStyle.Small).Place(0.25);
}
