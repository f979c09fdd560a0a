using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Support;

/// <summary>Looks on the finished ink at the extension lines of linear dimensions: which make slivers with outlines. Blind to how they were placed.</summary>
internal static class LineSlivers
{
    /// <summary>Within 10 degrees (its sine), nearer than this on the middle of their way beside each other, over more than this, millimetres.</summary>
    private const double Slant = 0.175, Near = 1.5, Over = 3;

    public static IEnumerable<string> Of(PlotSheet sheet)
    {
        List<(string? View, Point2D A, Point2D B)> outlines = [];
        foreach (PlotItem item in sheet.Items.Where(i => i.Role is LineRole.Outline or LineRole.Edge))
        {
            foreach (Edge edge in item is PlotStroke s ? [s.Edge] : item is PlotLoop l ? l.Contour.Edges.AsEnumerable() : [])
            {
                var points = Flattening.Of(edge, 0.02);
                for (int i = 0; i + 1 < points.Length; i++)
                    outlines.Add((item.View, points[i], points[i + 1]));
            }
        }

        foreach (PlotDimension dimension in sheet.Dimensions.Where(d => d.Kind == PlotDimensionKind.Linear))
        {
            Vector2D across = Vector2D.FromAngle(dimension.Direction).Left;
            foreach (PlotStroke stroke in sheet.Items.OfType<PlotStroke>().Where(s => s.Owner == dimension.Id && s.Role == LineRole.Dimension))
            {
                if (Math.Abs((stroke.Edge.End - stroke.Edge.Start).Unit().Cross(across)) > 1e-6)
                    continue;
                if (outlines.Exists(o => o.View == dimension.View && LieBeside(stroke.Edge.Start, stroke.Edge.End, o.A, o.B)))
                    yield return $"{dimension.Name} makes a sliver";
            }
        }
    }

    private static bool LieBeside(Point2D a, Point2D b, Point2D c, Point2D d)
    {
        if ((d - c).Length < Over)
            return false;
        Vector2D u = (b - a).Unit();
        if (Math.Abs(u.Cross((d - c).Unit())) > Slant)
            return false;
        double s = u.Dot(c - a), t = u.Dot(d - a), from = Math.Max(0, Math.Min(s, t)), to = Math.Min((b - a).Length, Math.Max(s, t));
        double middle = Math.Abs(u.Cross(Point2D.Lerp(c, d, (((from + to) / 2) - s) / (t - s)) - a));
        return to - from > Over && middle is > 0.05 and < Near;
    }
}
