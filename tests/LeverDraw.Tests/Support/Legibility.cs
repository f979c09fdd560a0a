using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Support;

/// <summary>Looks at finished ink and tells what a reader would stumble over. Knows nothing of how it was placed: boxes come from the strokes of the letters themselves.</summary>
public static class Legibility
{
    /// <summary>Ink of two letterings may touch no nearer than this, millimetres; a line keeps the same from lettering.</summary>
    private const double Least = 0.1;

    public static List<string> Faults(PlotSheet sheet, Box2D frame)
    {
        var faults = new List<string>();
        PlotText[] texts = [.. sheet.Items.OfType<PlotText>()];
        Point2D[][] boxes = [.. texts.Select(t => Corners(t, Least))];
        Box2D[] around = [.. boxes.Select(Box2D.Of)];
        for (int i = 0; i < texts.Length; i++)
        {
            for (int j = i + 1; j < texts.Length; j++)
            {
                if (around[i].Overlaps(around[j]) && PolygonsOverlap(boxes[i], boxes[j]))
                    faults.Add($"\"{texts[i].Text}\" meets \"{texts[j].Text}\"");
            }
        }

        foreach ((Point2D a, Point2D b, PlotItem item) in Lines(sheet))
        {
            var box = Box2D.Empty.Including(a).Including(b);
            for (int i = 0; i < texts.Length; i++)
            {
                if (around[i].Inflated(1e-9).Overlaps(box.Inflated(1e-9)) && SegmentMeets(boxes[i], a, b))
                    faults.Add($"a {item.Role} line strikes \"{texts[i].Text}\"");
            }
        }

        foreach (PlotItem item in sheet.Items.Where(i => i.View is not null))
        {
            if (!frame.Contains(BoxOf(item)))
                faults.Add($"{item.Role} ink of view {item.View} leaves the frame");
        }

        return [.. faults.Distinct()];
    }

    public static Box2D BoxOf(PlotItem item) => item switch
    {
        PlotStroke stroke => stroke.Edge.Box,
        PlotLoop loop => loop.Contour.Box,
        PlotFill fill => Box2D.Of(fill.Corners),
        PlotText text => Box2D.Of(InkBox.Corners(text)),
        PlotHatch hatch => hatch.Region.Aggregate(Box2D.Empty, (b, c) => b.Union(c.Box)),
        _ => throw new ArgumentOutOfRangeException(nameof(item)),
    };

    private static IEnumerable<(Point2D A, Point2D B, PlotItem Item)> Lines(PlotSheet sheet)
    {
        foreach (PlotItem item in sheet.Items)
        {
            IEnumerable<Edge> edges = item switch
            {
                PlotStroke stroke => [stroke.Edge],
                PlotLoop loop => loop.Contour.Edges,
                PlotHatch hatch => hatch.Lines,
                PlotFill fill => fill.Corners.Select((c, i) => new LineEdge(c, fill.Corners[(i + 1) % fill.Corners.Length])),
                _ => [],
            };
            foreach (Edge edge in edges)
            {
                var points = Flattening.Of(edge, 0.01);
                for (int i = 0; i + 1 < points.Length; i++)
                    yield return (points[i], points[i + 1], item);
            }
        }
    }

    private static Point2D[] Corners(PlotText text, double margin)
    {
        Point2D[] corners = [.. InkBox.Corners(text)];
        Vector2D u = Vector2D.FromAngle(text.Angle) * (margin / 2);
        Vector2D v = u.Left;
        return [corners[0] - u - v, corners[1] + u - v, corners[2] + u + v, corners[3] - u + v];
    }

    private static bool PolygonsOverlap(Point2D[] p, Point2D[] q) => !Separated(p, q) && !Separated(q, p);

    private static bool Separated(Point2D[] p, Point2D[] q)
    {
        for (int i = 0; i < p.Length; i++)
        {
            Vector2D side = p[(i + 1) % p.Length] - p[i];
            if (q.All(c => side.Cross(c - p[i]) <= 0))
                return true;
        }

        return false;
    }

    private static bool SegmentMeets(Point2D[] box, Point2D a, Point2D b) => !Separated(box, [a, b]) && !SegmentSeparates(box, a, b);

    private static bool SegmentSeparates(Point2D[] box, Point2D a, Point2D b)
    {
        Vector2D d = b - a;
        return box.All(c => d.Cross(c - a) >= 0) || box.All(c => d.Cross(c - a) <= 0);
    }
}
