using LeverDraw.Drafting;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Drafting.Annotations;

/// <summary>Narrow lines are open where an arrowhead stands on them (common practice, no source).</summary>
public class LineBreaksTests
{
    private static readonly DraftingStyle Style = DraftingStyle.Small;

    // An upright extension line from (0, 0) to (0, 20); an arrowhead of the small style is 2.5 long and a third as wide.
    // It points right along y = 10 to its tip at x: with the tip 1 beyond the line, the line crosses it where it is a third of its width: 0.6 + 0.4 · (2.5 / 3) / 2 either way.
    [Fact]
    public void Broken_ArrowheadAcrossTheLine_LeavesItOpenRoundTheHead()
    {
        double half = 0.6 + (0.4 * Style.ArrowLength / 6);
        LineEdge[] pieces = Pieces(Head(new Point2D(0.4 * Style.ArrowLength, 10), new Vector2D(1, 0)));
        Assert.Equal(2, pieces.Length);
        Assert.Equal((0, 10 - half), (pieces[0].From.Y, Math.Round(pieces[0].To.Y, 9)), new NearPair());
        Assert.Equal((10 + half, 20), (Math.Round(pieces[1].From.Y, 9), pieces[1].To.Y), new NearPair());
    }

    // It points at the line itself, as a dimension's own does; it stands beside it; it lies along it.
    [Theory]
    [InlineData(0, 10, 1, 0)]
    [InlineData(-0.5, 10, 1, 0)]
    [InlineData(5, 10, 1, 0)]
    [InlineData(0.2, 10, 0.1, 0.995)]
    [InlineData(1, 24, 1, 0)]
    public void Broken_ArrowheadNotAcrossTheLine_LeavesItWhole(double x, double y, double dx, double dy) =>
        Assert.Equal(new LineEdge(new(0, 0), new(0, 20)), Assert.Single(Pieces(Head(new Point2D(x, y), new Vector2D(dx, dy).Unit()))));

    [Fact]
    public void Broken_ArrowheadNearTheEnd_LeavesNoStub()
    {
        LineEdge piece = Assert.Single(Pieces(Head(new Point2D(1, 19), new Vector2D(1, 0))));
        Assert.Equal(0, piece.From.Y);
        Assert.True(piece.To.Y < 19);
    }

    [Fact]
    public void Broken_OtherLines_AreLeftAlone()
    {
        Candidate own = new([], [new Stroke(new(0, 0), new(0, 20), StrokeKind.DimensionLine)], 0, null!);
        var ink = new AnnotationInk([new PlotStroke(LineRole.Dimension, new LineEdge(new(0, 0), new(0, 20)))], null);
        Assert.Same(ink.Items[0], Assert.Single(LineBreaks.Broken(ink, own, [own, Head(new Point2D(1, 10), new Vector2D(1, 0))])));
    }

    // A frame's box begins at x; a centre line from (0, 0) to (20, 0) ends before it, or runs along its lower side.
    [Theory]
    [InlineData(20.4, -2, 19)]
    [InlineData(20.8, -2, 20)]
    [InlineData(10, 0.5, 20)]
    public void Broken_CentreLinesEndBeforeLettering_IsALittleSooner(double x, double y, double end)
    {
        var line = new LineEdge(new(0, 0), new(20, 0));
        Candidate frame = new([OrientedBox.FromCorner(new Point2D(x, y), 12, 4, 0)], [], 0, null!);
        PlotItem[] all = [.. LineBreaks.Broken([new PlotStroke(LineRole.Centre, line), new PlotStroke(LineRole.Edge, line)], [frame])];
        Assert.Equal(new LineEdge(new(0, 0), new(end, 0)), Assert.Single(all.OfType<PlotStroke>(), s => s.Role == LineRole.Centre).Edge);
        Assert.Equal(line, Assert.Single(all.OfType<PlotStroke>(), s => s.Role == LineRole.Edge).Edge);
    }

    // The same head and gap as on the extension line; the circle of radius 20 about (20, 10) is upright where it passes the origin's side.
    [Fact]
    public void Broken_ViewsOwnNarrowLines_AreOpenRoundTheHeadToo()
    {
        Candidate head = Head(new Point2D(0.4 * Style.ArrowLength, 10), new Vector2D(1, 0));
        var line = new LineEdge(new(0, 0), new(0, 20));
        var arc = new ArcEdge(new Point2D(20, 10), 20, Math.PI - 0.4, 0.8);
        var hatch = new PlotHatch(LineRole.Hatch, [], Math.PI / 2, 2, [line, new LineEdge(new(-9, 0), new(-9, 20))]);
        PlotItem[] all = [.. LineBreaks.Broken([new PlotStroke(LineRole.Centre, line), new PlotStroke(LineRole.Edge, line), new PlotStroke(LineRole.Phantom, arc), hatch], [head])];
        double half = 0.6 + (0.4 * Style.ArrowLength / 6);
        PlotStroke[] strokes = [.. all.OfType<PlotStroke>()];
        Assert.Equal(2, strokes.Count(s => s.Role == LineRole.Centre));
        Assert.Equal(line, Assert.Single(strokes, s => s.Role == LineRole.Edge).Edge);
        Edge[] arcs = [.. strokes.Where(s => s.Role == LineRole.Phantom).Select(s => s.Edge)];
        Assert.Equal(2, arcs.Length);
        Assert.Equal(2 * half, arc.Length - arcs.Sum(a => a.Length), 6);
        Assert.Equal(10 + half, arcs[0].End.Y, 0.02);
        Assert.Equal(10 - half, arcs[1].Start.Y, 0.02);
        LineEdge[] lining = [.. Assert.Single(all.OfType<PlotHatch>()).Lines];
        Assert.Equal(3, lining.Length);
        Assert.Equal(-9, lining[2].From.X);
    }

    /// <summary>A detail's circle, wherever it happens to begin: the head across it leaves it open by the same gap.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(180)]
    [InlineData(77)]
    public void Broken_CircleRoundADetail_IsOpenRoundTheHead(double startDegrees)
    {
        var circle = new ArcEdge(new Point2D(20, 10), 20, startDegrees * Math.PI / 180, 2 * Math.PI);
        Candidate head = Head(new Point2D(0.4 * Style.ArrowLength, 10), new Vector2D(1, 0));
        Edge[] arcs = [.. LineBreaks.Broken([new PlotStroke(LineRole.Dimension, circle)], [head]).Cast<PlotStroke>().Select(s => s.Edge)];
        double half = 0.6 + (0.4 * Style.ArrowLength / 6);
        Assert.Equal(2 * half, circle.Length - arcs.Sum(a => a.Length), 6);
        Assert.All(arcs, arc => Assert.All((double[])[0, 0.25, 0.5, 0.75, 1], t => Assert.True(arc.PointAt(t).DistanceTo(new Point2D(0, 10)) > half - 0.02)));
    }

    /// <summary>The upright through the pivot, from which the pads' shift is measured, goes through the arm's thickness on a curved arm.</summary>
    [Fact]
    public void Sheet_OfACurvedArm_HasItsUprightOpenAtTheArmsThickness()
    {
        PlotSheet sheet = SheetMaker.Draw("levers/rare", SheetMaker.Options("A3"));
        PlotDimension shift = sheet.Dimensions.Single(d => d.Name == "arms.pad_shift"), arm = sheet.Dimensions.Single(d => d.Name == "arms.thickness");
        double x = shift.Points.Max(p => p.X), y = arm.Points.Average(p => p.Y);
        LineEdge[] upright = [.. sheet.Items.OfType<PlotStroke>().Where(s => s.Owner == shift.Id).Select(s => s.Edge).OfType<LineEdge>().Where(l => Math.Abs(l.From.X - x) < 1e-6 && Math.Abs(l.To.X - x) < 1e-6)];
        Assert.True(upright.Length >= 2);
        Assert.DoesNotContain(upright, l => l.Box.MinY < y && l.Box.MaxY > y);
    }

    private static Candidate Head(Point2D tip, Vector2D direction) => new([], [], 0, null!, Arrowhead.Back(tip, direction, Style));

    private static LineEdge[] Pieces(Candidate other)
    {
        var line = new LineEdge(new(0, 0), new(0, 20));
        Candidate own = new([], [new Stroke(line.From, line.To, StrokeKind.ExtensionLine)], 0, null!, Arrowhead.Back(new Point2D(0, 15), new Vector2D(1, 0), Style));
        return [.. LineBreaks.Broken(new AnnotationInk([new PlotStroke(LineRole.Dimension, line)], null), own, [own, other]).Cast<PlotStroke>().Select(s => (LineEdge)s.Edge)];
    }

    private sealed class NearPair : IEqualityComparer<(double, double)>
    {
        public bool Equals((double, double) a, (double, double) b) => Math.Abs(a.Item1 - b.Item1) < 1e-6 && Math.Abs(a.Item2 - b.Item2) < 1e-6;

        public int GetHashCode((double, double) value) => 0;
    }
}
