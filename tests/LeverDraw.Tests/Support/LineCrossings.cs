using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Support;

/// <summary>Counts on the finished ink where lines of one dimension cross lines of another. Tells the kinds apart by the dimension's own points, not by how it was placed.</summary>
internal static class LineCrossings
{
    public enum Kind
    {
        DimensionLine,
        ExtensionLine,
        Leader,
    }

    /// <summary>Crossings of dimension lines with each other, of dimension lines with extension lines, and of leaders with anything of another dimension.</summary>
    public static (int DimensionLines, int WithExtensions, int Leaders) Count(PlotSheet sheet)
    {
        var lines = new List<(string Owner, Kind Kind, Point2D A, Point2D B)>();
        foreach (PlotDimension dimension in sheet.Dimensions)
        {
            foreach (PlotStroke stroke in sheet.Items.OfType<PlotStroke>().Where(s => s.Owner == dimension.Id && s.Role == LineRole.Dimension))
            {
                var points = Flattening.Of(stroke.Edge, 0.02);
                for (int i = 0; i + 1 < points.Length; i++)
                    lines.Add((dimension.Id, KindOf(dimension, stroke.Edge), points[i], points[i + 1]));
            }
        }

        int own = 0, extensions = 0, leaders = 0;
        for (int i = 0; i < lines.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                if (lines[i].Owner == lines[j].Owner || !Cross(lines[i].A, lines[i].B, lines[j].A, lines[j].B))
                    continue;
                bool leader = lines[i].Kind == Kind.Leader || lines[j].Kind == Kind.Leader;
                int dimensionLines = (lines[i].Kind == Kind.DimensionLine ? 1 : 0) + (lines[j].Kind == Kind.DimensionLine ? 1 : 0);
                if (leader)
                    leaders++;
                else if (dimensionLines == 2)
                    own++;
                else if (dimensionLines == 1)
                    extensions++;
            }
        }

        return (own, extensions, leaders);
    }

    private static Kind KindOf(PlotDimension dimension, Edge edge)
    {
        switch (dimension.Kind)
        {
            case PlotDimensionKind.Linear:
                Vector2D along = (edge.End - edge.Start).Unit();
                return Math.Abs(along.Cross(Vector2D.FromAngle(dimension.Direction))) < 1e-6 && Math.Abs(along.Cross(dimension.Points[2] - edge.Start)) < 1e-6
                    ? Kind.DimensionLine
                    : Kind.ExtensionLine;
            case PlotDimensionKind.Angle:
                return edge is ArcEdge ? Kind.DimensionLine : Kind.ExtensionLine;
            default:
                return Kind.Leader;
        }
    }

    /// <summary>At a point inside both, by more than a hair: lines that only meet end to end do not cross.</summary>
    private static bool Cross(Point2D a, Point2D b, Point2D c, Point2D d)
    {
        const double Hair = 1e-3;
        double Side(Point2D p, Point2D from, Point2D to) => (to - from).Unit().Cross(p - from);
        double c0 = Side(c, a, b), d0 = Side(d, a, b), a0 = Side(a, c, d), b0 = Side(b, c, d);
        return Math.Min(c0, d0) < -Hair && Math.Max(c0, d0) > Hair && Math.Min(a0, b0) < -Hair && Math.Max(a0, b0) > Hair;
    }
}
