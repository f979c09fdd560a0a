using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Support;

/// <summary>Looks on the finished ink at the leaders of radii, diameters and notes: what they run along, and how often they cross the part. Blind to how they were placed.</summary>
internal static class LeaderLines
{
    /// <summary>Nearer than this, millimetres, within this slant (5 degrees), over this length, millimetres, a leader is taken for the other line.</summary>
    private const double Near = 0.3, Slant = 0.0872, Over = 2;

    public static IEnumerable<string> Faults(PlotSheet sheet, int mostCrossings)
    {
        var lines = new List<(string? Owner, LineRole Role, string View, Point2D A, Point2D B)>();
        foreach (PlotItem item in sheet.Items)
        {
            IEnumerable<Edge> edges = item switch
            {
                PlotStroke stroke => [stroke.Edge],
                PlotLoop loop => loop.Contour.Edges,
                PlotHatch hatch => hatch.Lines,
                _ => [],
            };
            LineRole role = item is PlotStroke s ? s.Role : item is PlotLoop l ? l.Role : LineRole.Hatch;
            foreach (Edge edge in edges)
            {
                var points = Flattening.Of(edge, 0.02);
                for (int i = 0; i + 1 < points.Length; i++)
                    lines.Add((item.Owner, role, item.View ?? string.Empty, points[i], points[i + 1]));
            }
        }

        foreach (PlotDimension dimension in sheet.Dimensions.Where(d => d.Kind is PlotDimensionKind.Radius or PlotDimensionKind.Diameter or PlotDimensionKind.Note))
        {
            int crossings = 0;
            foreach (var own in lines.Where(x => x.Owner == dimension.Id && x.Role == LineRole.Dimension))
            {
                foreach (var other in lines.Where(x => x.Owner != dimension.Id && x.View == dimension.View))
                {
                    if (RunsAlong(own.A, own.B, other.A, other.B))
                        yield return FormattableString.Invariant($"{dimension.Id} runs along a line of {other.Role} at {own.A.X:0.0}, {own.A.Y:0.0}");
                    else if (other.Role is LineRole.Outline or LineRole.Edge or LineRole.RaisedMark or LineRole.Section or LineRole.OverlayA or LineRole.OverlayB && Cross(own.A, own.B, other.A, other.B))
                        crossings++;
                }
            }

            if (crossings > mostCrossings)
                yield return FormattableString.Invariant($"{dimension.Id} crosses outlines {crossings} times");
        }
    }

    private static bool RunsAlong(Point2D a, Point2D b, Point2D c, Point2D d)
    {
        double length = (b - a).Length, other = (d - c).Length;
        if (length < Over || other < Over)
            return false;
        Vector2D u = (b - a).Unit();
        if (Math.Abs(u.Cross((d - c).Unit())) > Slant)
            return false;
        double s = u.Dot(c - a), t = u.Dot(d - a);
        double from = Math.Max(0, Math.Min(s, t)), to = Math.Min(length, Math.Max(s, t));
        if (to - from < Over)
            return false;
        Point2D middle = Point2D.Lerp(c, d, (((from + to) / 2) - s) / (t - s));
        return Math.Abs(u.Cross(middle - a)) < Near;
    }

    /// <summary>At a point inside both by more than the arrow's touch.</summary>
    private static bool Cross(Point2D a, Point2D b, Point2D c, Point2D d)
    {
        const double Touch = 0.1;
        double Side(Point2D p, Point2D from, Point2D to) => (to - from).Unit().Cross(p - from);
        double c0 = Side(c, a, b), d0 = Side(d, a, b), a0 = Side(a, c, d), b0 = Side(b, c, d);
        return c0 * d0 < 0 && a0 * b0 < 0 && Math.Min(Math.Abs(a0), Math.Abs(b0)) > Touch;
    }
}
