using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Writers;

/// <summary>Sheets put together by hand, with everything a writer can meet; no drafting code takes part.</summary>
internal static class SampleSheets
{
    public const double CheckBarY = 12;
    public const double CheckBarX = 20;
    public const double CheckBarLength = 50;

    /// <summary>A4 landscape at 2:1: two main views, one detail at 4:1, every kind of item and dimension.</summary>
    public static PlotSheet Everything(SheetUnit unit = SheetUnit.Millimetre, string note = "Müller & <Söhne> \"Σ\" 日本", PartState state = PartState.Finished)
    {
        const double scale = 2;
        var side = new PlotView("side", "Side view", new Transform2D(scale, 0, false, new Vector2D(60, 90)), true, SideOutlines());
        var fork = new PlotView("fork", "Fork view", new Transform2D(scale, Math.PI / 2, true, new Vector2D(170, 110)), true, [new PlotOutline("fork", ForkOutline())]);
        var detail = new PlotView("detail", "Nose 4:1", new Transform2D(4, 0, false, new Vector2D(215, 110)), false, [new PlotOutline("nose", Slot(6, 4))]);

        var items = new List<PlotItem>();
        foreach (PlotView view in new[] { side, fork, detail })
        {
            foreach (PlotOutline outline in view.Outlines)
                items.Add(new PlotLoop(LineRole.Outline, outline.Contour.Transformed(view.ToPaper), null, view.Id));
        }

        items.AddRange(Lines());
        var dimensions = new List<PlotDimension>();
        SampleDimensions.Add(items, dimensions, unit);
        items.Add(Boxes(note, 20, 25, 3.5));
        items.Add(Boxes("50% of ^ 100%%c", 20, 32, 3.5, Math.PI / 6));
        return new PlotSheet(297, 210, "Lever <A> & pin", state, unit, scale, 3.5, 3, [.. items], [side, fork, detail], [.. dimensions]);
    }

    /// <summary>The same, with nothing outside ASCII but ⌀ ° ± ×.</summary>
    public static PlotSheet Ascii(SheetUnit unit = SheetUnit.Millimetre) => Everything(unit, "Thessaby & Crake, 2 × ⌀3 ±0.1°");

    /// <summary>Lettering whose every letter is an upright box with a dot in it; only its strokes' arithmetic matters here.</summary>
    public static PlotText Boxes(string text, double x, double y, double height, double angle = 0, string? owner = null, string? view = null)
    {
        ImmutableArray<Edge> box =
        [
            new LineEdge(new(0, 0), new(0.5, 0)), new LineEdge(new(0.5, 0), new(0.5, 0.75)),
            ArcEdge.Between(new(0.25, 0.75), new(0.5, 0.75), new(0, 0.75), true), new LineEdge(new(0, 0.75), new(0, 0)),
        ];
        ImmutableArray<Edge> dot = [new LineEdge(new(0.25, 0.5), new(0.2501, 0.5))];
        var shape = new PlotGlyphShape("box", [box, dot]);
        ImmutableArray<PlotGlyph> glyphs = [.. text.Select((_, i) => new PlotGlyph(shape, i * 0.7 * height, 0, height))];
        return new PlotText(LineRole.Lettering, text, new Point2D(x, y), height, angle, ((text.Length - 1) * 0.7 * height) + (0.5 * height), glyphs, owner, view);
    }

    /// <summary>A slot of given length between centres and width, about the origin: two straight pieces, two half circles.</summary>
    public static Contour Slot(double length, double width)
    {
        double h = length / 2;
        double r = width / 2;
        return Contour.Of(
        [
            new LineEdge(new(-h, -r), new(h, -r)), ArcEdge.Between(new(h, 0), new(h, -r), new(h, r), true),
            new LineEdge(new(h, r), new(-h, r)), ArcEdge.Between(new(-h, 0), new(-h, r), new(-h, -r), true),
        ]);
    }

    /// <summary>A keyhole: a 270° head of radius 5 and a square foot, so one arc turns more than half.</summary>
    public static Contour Keyhole()
    {
        double k = 5 / Math.Sqrt(2);
        Point2D right = new(k, -k);
        Point2D left = new(-k, -k);
        return Contour.Of(
        [
            ArcEdge.Between(Point2D.Origin, right, left, true),
            new LineEdge(left, new(-k, -15)), new LineEdge(new(-k, -15), new(k, -15)), new LineEdge(new(k, -15), right),
        ]);
    }

    private static ImmutableArray<PlotOutline> SideOutlines() =>
    [
        new PlotOutline("side-profile", Keyhole()),
        new PlotOutline("pivot-hole", Contour.Circle(Point2D.Origin, 1.53).Reversed(), Point2D.Origin),
    ];

    /// <summary>A fork with a half-round crotch turned clockwise inside a counter-clockwise outline.</summary>
    private static Contour ForkOutline() => Contour.Of(
    [
        new LineEdge(new(0, 0), new(4, 0)), new LineEdge(new(4, 0), new(4, 10)),
        ArcEdge.Between(new(8, 10), new(4, 10), new(12, 10), false), new LineEdge(new(12, 10), new(12, 0)),
        new LineEdge(new(12, 0), new(16, 0)), new LineEdge(new(16, 0), new(16, 20)),
        new LineEdge(new(16, 20), new(0, 20)), new LineEdge(new(0, 20), new(0, 0)),
    ]);

    private static IEnumerable<PlotItem> Lines()
    {
        yield return Line(LineRole.Frame, 10, 10, 287, 10);
        yield return Line(LineRole.Frame, 287, 10, 287, 200);
        yield return Line(LineRole.Frame, 287, 200, 10, 200);
        yield return Line(LineRole.Frame, 10, 200, 10, 10);
        yield return Line(LineRole.Frame, CheckBarX, CheckBarY, CheckBarX + CheckBarLength, CheckBarY);
        yield return Line(LineRole.TitleBlock, 200, 10, 200, 40);
        yield return Line(LineRole.Table, 200, 40, 287, 40);
        yield return Line(LineRole.Symbol, 205, 50, 215, 50);
        yield return Line(LineRole.Centre, 45, 90, 75, 90, "side");
        yield return Line(LineRole.Centre, 60, 75, 60, 105, "side");
        yield return Line(LineRole.Hidden, 55, 62, 65, 62, "side");
        yield return Line(LineRole.Edge, 55, 65, 65, 65, "side");
        yield return Line(LineRole.RaisedMark, 55, 68, 65, 68, "side");
        yield return Line(LineRole.CuttingPlane, 40, 90, 44, 90, "side");
        yield return Line(LineRole.Parting, 40, 95, 80, 95, "side");
        yield return Line(LineRole.Allowance, 40, 97, 80, 97, "side");
        yield return Line(LineRole.OverlayA, 100, 30, 140, 30);
        yield return new PlotLoop(LineRole.Phantom, Slot(16, 12).Transformed(Transform2D.Move(120, 60)));
        yield return new PlotLoop(LineRole.OverlayB, Contour.Circle(new Point2D(120, 60), 4));
        yield return new PlotStroke(LineRole.Dimension, ArcEdge.FullCircle(new Point2D(60, 90), 14), null, "side");
        yield return new PlotStroke(LineRole.Edge, new ArcEdge(new Point2D(120, 100), 10, 0.5, -4), null, "side");
        Contour outer = Slot(20, 10).Transformed(Transform2D.Move(120, 160));
        Contour hole = Contour.Circle(new Point2D(120, 160), 2).Reversed();
        yield return new PlotLoop(LineRole.Section, outer);
        yield return new PlotHatch(LineRole.Hatch, [outer, hole], Math.PI / 4, 2, [new LineEdge(new(112, 156), new(118, 162)), new LineEdge(new(122, 158), new(128, 164))]);
        yield return new PlotFill(LineRole.Symbol, [new(205, 50), new(203, 51), new(203, 49)]);
    }

    private static PlotStroke Line(LineRole role, double x1, double y1, double x2, double y2, string? view = null) =>
        new(role, new LineEdge(new(x1, y1), new(x2, y2)), null, view);
}
