using System.Collections.Immutable;
using LeverDraw.Drafting;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Tests.Drafting.Symbols;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Drafting.Annotations;

/// <summary>Frames, datum letters and texture signs placed with dimensions and leaders, and signs on surfaces.</summary>
public class LabelSymbolsTests
{
    private static readonly ControlFrame Frame = ControlFrame.Of(GeometricSigns.Symmetry, "0.1", "B");

    private static readonly TextureSign Ra = new(TextureProcess.Removal, "Ra 3.2");

    /// <summary>At the end of a leader lettering is aligned to one side; a frame round it stays clear of it all the same.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(0.5)]
    [InlineData(1)]
    public void Boxed_HoweverAligned_KeepsItsLetteringOffTheFrame(double align)
    {
        PlotItem[] ink = [.. new LabelBox(new Label(["2.719 [.1071]"], 3, true), DraftingStyle.Small).Ink(Point2D.Origin, 0, LineRole.Dimension, "a", "v", align)];
        Box2D frame = ink.OfType<PlotStroke>().Aggregate(Box2D.Empty, (b, s) => b.Union(s.Edge.Box)), text = Legibility.BoxOf(ink.OfType<PlotText>().Single());
        Assert.True(frame.Inflated(-0.3).Contains(text), $"{text} in {frame}");
    }

    [Theory]
    [InlineData(8)]
    [InlineData(40)]
    public void Linear_Frame_StandsClearAndItsTextIsInkOfTheDimension(double width)
    {
        ViewBlock block = Place(Across(width, new Label([$"8"]) { Frames = [Frame] }), width);
        PlotDimension dimension = Assert.Single(block.Draw().Dimensions);
        Assert.Equal("8", dimension.Text);
        PlotText[] texts = [.. block.Items.OfType<PlotText>()];
        Assert.Equal(["8", "⌯", "0.1", "B"], texts.Select(t => t.Text));
        Assert.All(texts, t => Assert.Equal(dimension.Id, t.Owner));
        Assert.True(block.Bounds.Contains(block.Items.OfType<PlotStroke>().Where(s => s.Role == LineRole.Symbol).Aggregate(Box2D.Empty, (b, s) => b.Union(s.Edge.Box))));
    }

    /// <summary>The datum is in line with the arrow: its triangle stands on the extension line's line, at the dimension line's level.</summary>
    [Theory]
    [InlineData(5)]
    [InlineData(40)]
    public void Linear_Datum_StandsInLineWithAnArrow(double width)
    {
        ViewBlock block = Place(Across(width, new Label(["8"]) { Datum = "B" }), width);
        PlotFill triangle = Assert.Single(block.Items.OfType<PlotFill>(), f => f.Role == LineRole.Symbol);
        Point2D[] onLine = [.. triangle.Corners.Where(c => Math.Abs(Math.Abs(c.X) - (width / 2)) < 1e-9)];
        Assert.Equal(2, onLine.Length);
        double level = Assert.Single(block.Draw().Dimensions).Points[2].Y;
        Assert.Equal(level, onLine.Average(c => c.Y), 9);
        // Outside arrows: the triangle takes one's place.
        Assert.Equal(width > 10 ? 2 : 1, block.Items.OfType<PlotFill>().Count(f => f.Role == LineRole.Dimension));
    }

    [Fact]
    public void Linear_Slanting_KeepsItsFramesLevel()
    {
        var dimension = new LinearDimension("t", 40, new Label(["40"]) { Frames = [Frame], Datum = "C" }, new Point2D(-20, -5), new Point2D(20, 5), Math.Atan2(10, 40));
        ViewBlock block = Place(dimension, 40);
        Assert.All(block.Items.OfType<PlotText>().Skip(1), t => Assert.Equal(0, t.Angle));
        Assert.NotEqual(0, block.Items.OfType<PlotText>().First().Angle);
    }

    /// <summary>A sign on a dimension line stands on that line with its tip, beside all lines of the number.</summary>
    [Fact]
    public void Linear_Texture_TouchesTheDimensionLine()
    {
        ViewBlock block = Place(Across(8, new Label(["8 0/−0.1", "[.3150 0/−.0039]"]) { Texture = Ra }), 8);
        double level = Assert.Single(block.Draw().Dimensions).Points[2].Y;
        double tip = block.Items.OfType<PlotStroke>().Where(s => s.Role == LineRole.Symbol).Min(s => s.Edge.Box.MinY);
        Assert.Equal(level, tip, 9);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(3)]
    public void Leader_Symbols_StandClearOfTheirOwnLettering(int lines)
    {
        var label = new Label([.. Enumerable.Repeat("⌀3.4 H7", lines)]) { Frames = [Frame, Frame], Datum = "A", Texture = lines > 0 ? Ra : null };
        ViewBlock block = Place(new LeaderNote("hole", 3.4, label, [new Point2D(10, 5)]), 20);
        Assert.Equal(PlotDimensionKind.Note, Assert.Single(block.Draw().Dimensions).Kind);
        Assert.Equal(lines == 0 ? "⌯ 0.1 B\n⌯ 0.1 B" : string.Join('\n', label.Lines), block.Draw().Dimensions[0].Text);
        if (lines == 0)
        {
            // The leader's shoulder ends on the frame's side.
            LineEdge shoulder = block.Items.OfType<PlotStroke>().Where(s => s.Role == LineRole.Dimension).Select(s => s.Edge).OfType<LineEdge>().Single(l => Math.Abs(l.From.Y - l.To.Y) < 1e-9);
            Assert.Contains(block.Items.OfType<PlotStroke>().Where(s => s.Role == LineRole.Symbol), s => Math.Abs(s.Edge.Start.X - shoulder.To.X) < 1e-9 && Math.Abs(s.Edge.End.X - shoulder.To.X) < 1e-9);
        }
    }

    /// <summary>On the surface where it reads from the bottom or the right, else by a leader (ISO 1302 practice, from memory).</summary>
    [Theory]
    [InlineData(0, 1, true, 0)]
    [InlineData(-1, 0, true, 90)]
    [InlineData(1, 0, false, 0)]
    [InlineData(0, -1, false, 0)]
    public void Texture_OnASurface_IsReadableFromBottomOrRight(double x, double y, bool stands, double degrees)
    {
        var at = new Point2D(10 * x, 5 * y);
        ViewBlock block = Place(new SurfaceTexture("texture", Ra, [new SurfacePoint(at, new Vector2D(x, y))]), 20);
        PlotText text = Assert.Single(block.Items.OfType<PlotText>());
        Assert.Equal(("Ra 3.2", degrees), (text.Text, Math.Round(text.Angle * 180 / Math.PI, 6)));
        Assert.Empty(block.Draw().Dimensions);
        IEnumerable<PlotStroke> sign = block.Items.OfType<PlotStroke>().Where(s => s.Role == LineRole.Symbol);
        Assert.Equal(stands, sign.Any(s => (s.Edge.Start - at).Length < 1e-9));
        Assert.Equal(stands ? 0 : 1, block.Items.OfType<PlotFill>().Count());
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 0)]
    [InlineData(0, -1)]
    public void Datum_OnASurface_TouchesItsLine(double x, double y)
    {
        var at = new Point2D(10 * x, 5 * y);
        ViewBlock block = Place(new DatumFeature("datum", "D", [new SurfacePoint(at, new Vector2D(x, y))]), 20);
        PlotFill triangle = Assert.Single(block.Items.OfType<PlotFill>());
        Assert.Equal(2, triangle.Corners.Count(c => Math.Abs((c - at).Dot(new Vector2D(x, y))) < 1e-9));
        Assert.Equal(0, Assert.Single(block.Items.OfType<PlotText>()).Angle);
    }

    private static LinearDimension Across(double width, Label label) =>
        new("w", width, label, new Point2D(-width / 2, 5), new Point2D(width / 2, 5), 0) { Sides = DimensionSides.Left };

    /// <summary>On a rectangle 10 high; always placed, always legible.</summary>
    private static ViewBlock Place(Annotation annotation, double width)
    {
        Point2D[] corners = [new(-width / 2, -5), new(width / 2, -5), new(width / 2, 5), new(-width / 2, 5)];
        var box = new PlotOutline("box", Contour.Of(corners.Select((c, i) => new LineEdge(c, corners[(i + 1) % 4]))));
        var view = new ViewSource("v", null) { Outlines = [box], Annotations = [annotation] };
        ViewBlock block = new AnnotatedView(view, 1, DraftingStyle.Small).Place(0.25);
        Assert.Empty(block.Unplaced);
        ImmutableArray<PlotItem> items = block.Items;
        Assert.Empty(Legibility.Faults(new PlotSheet(500, 500, "", PartState.Finished, SheetUnit.Millimetre, 1, 2.5, 2.5, items, [], []), new Box2D(-250, -250, 250, 250)));
        return block;
    }
}
