using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Writers;

/// <summary>One dimension of each kind on the sample sheet, and one in the detail view, with their ink.</summary>
internal static class SampleDimensions
{
    public static void Add(List<PlotItem> items, List<PlotDimension> to, SheetUnit unit)
    {
        bool inch = unit == SheetUnit.Inch;
        double k = 5 / Math.Sqrt(2);

        // The keyhole stands at (60, 90), 2:1.
        Point2D a = new(60 - (2 * k), 60);
        Point2D b = new(60 + (2 * k), 60);
        Add(items, to, new PlotDimension("d1", "tongue.width", PlotDimensionKind.Linear, "side", [a, b, new(b.X, 50)], 0, 2 * k, inch ? "0.2784" : "7.071 ±0.2", new(60, 52), inch ? 4 : 3), new(a.X, 50), new(b.X, 50));
        Add(items, to, new PlotDimension("d2", "pivot.diameter", PlotDimensionKind.Diameter, "side", [new(60 - 3.06, 90), new(60 + 3.06, 90)], 0, 3.06, inch ? "⌀0.1205 H8" : "⌀3.06 H8\n(3.060 / 3.074)", new(75, 90), inch ? 4 : 2), new(63.06, 90), new(70, 90));
        Vector2D out45 = Vector2D.FromAngle(Math.PI / 4) * 10;
        Add(items, to, new PlotDimension("d3", "head.radius", PlotDimensionKind.Radius, "side", [new(60, 90), new Point2D(60, 90) + out45], 0, 5, inch ? "R0.1969" : "R5", new(72, 102), inch ? 4 : 0), new Point2D(60, 90) + out45, new(70, 100));
        Point2D v = new(150, 150);
        Add(items, to, new PlotDimension("d4", "tongue.angle", PlotDimensionKind.Angle, "fork", [v, v + new Vector2D(20, 0), v + (Vector2D.FromAngle(Math.PI / 4) * 20), v + (Vector2D.FromAngle(Math.PI / 8) * 25)], 0, Math.PI / 4, "45°", v + (Vector2D.FromAngle(Math.PI / 8) * 29), 0), v + new Vector2D(25, 0), v + (Vector2D.FromAngle(Math.PI / 4) * 25));
        Add(items, to, new PlotDimension("d5", "nose.length", PlotDimensionKind.Linear, "detail", [new(203, 110), new(227, 110), new(227, 95)], 0, 6, inch ? "0.2362" : "6", new(215, 97), inch ? 4 : 0), new(203, 95), new(227, 95));
        Add(items, to, new PlotDimension("d6", "pin.taper", PlotDimensionKind.Note, "side", [new(60, 70)], 0, 0, "1:48 taper", new(90, 75), 0), new(60, 70), new(80, 75));
        // A sloping one: measured along 30°.
        Vector2D slope = Vector2D.FromAngle(Math.PI / 6);
        Point2D s = new(100, 110);
        Point2D e = s + (slope * 20);
        Add(items, to, new PlotDimension("d7", "arms.length", PlotDimensionKind.Linear, "side", [s, e, e + (slope.Left * 8)], Math.PI / 6, 10, inch ? "0.3937" : "10", s + (slope * 10) + (slope.Left * 10), inch ? 4 : 0), s + (slope.Left * 8), e + (slope.Left * 8));
    }

    private static void Add(List<PlotItem> items, List<PlotDimension> to, PlotDimension dimension, Point2D from, Point2D end)
    {
        to.Add(dimension);
        string id = dimension.Id;
        items.Add(new PlotStroke(LineRole.Dimension, new LineEdge(from, end), id, dimension.View));
        Vector2D back = (from - end).Unit();
        items.Add(new PlotFill(LineRole.Dimension, [end, end + (back * 3) + (back.Left * 0.5), end + (back * 3) - (back.Left * 0.5)], id, dimension.View));
        string[] lines = dimension.Text.Split('\n');
        for (int i = 0; i < lines.Length; i++)
        {
            double width = ((lines[i].Length - 1) * 0.7 * 3.5) + 1.75;
            items.Add(SampleSheets.Boxes(lines[i], dimension.TextMiddle.X - (width / 2), dimension.TextMiddle.Y - 1.75 - (5 * i), 3.5, 0, id, dimension.View));
        }
    }
}
