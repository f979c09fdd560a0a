using LeverDraw.Geometry;

namespace LeverDraw.Mechanism;

/// <summary>The farthest point of an outline along a direction, of what lies in a band square to it: where a flat face that slides along that direction first meets it.</summary>
/// <param name="Reach">Along the direction, from the origin.</param>
/// <param name="Normal">The way the two press on each other, out of the outline: the direction itself where a flat face bears, the outline's own normal where the end of the face bears on it.</param>
internal readonly record struct BandExtent(double Reach, Point2D Point, Vector2D Normal)
{
    private const double Slack = 1e-9;

    /// <param name="edges">Of an outline travelled counter-clockwise.</param>
    /// <param name="direction">Of length one.</param>
    /// <param name="from">The band's lower end along the direction's left; <paramref name="to"/> is its upper end.</param>
    /// <returns>Null when nothing of the outline lies in the band.</returns>
    public static BandExtent? Of(ReadOnlySpan<Edge> edges, Vector2D direction, double from, double to)
    {
        Vector2D level = direction.Left;
        BandExtent? best = null;
        foreach (Edge edge in edges)
        {
            if (edge is ArcEdge arc)
            {
                if (arc.Sweep > 0 && arc.ContainsAngle(direction.Angle))
                    Take(arc.PointAtAngle(direction.Angle), direction);
                Cut(arc, from);
                Cut(arc, to);
            }
            else
            {
                CutLine(edge, from);
                CutLine(edge, to);
            }

            Take(edge.Start, direction);
            Take(edge.End, direction);
        }

        return best;

        void Take(Point2D point, Vector2D normal)
        {
            Vector2D at = point - Point2D.Origin;
            double height = at.Dot(level), reach = at.Dot(direction);
            if (height < from - Slack || height > to + Slack || (best is { } b && reach <= b.Reach + 1e-12))
                return;
            best = new BandExtent(reach, point, normal);
        }

        void CutLine(Edge line, double height)
        {
            double a = (line.Start - Point2D.Origin).Dot(level) - height, b = (line.End - Point2D.Origin).Dot(level) - height;
            if (a * b < 0)
                Take(line.PointAt(a / (a - b)), -line.TangentAt(0.5).Left);
        }

        void Cut(ArcEdge arc, double height)
        {
            double up = (height - (arc.Centre - Point2D.Origin).Dot(level)) / arc.Radius;
            if (Math.Abs(up) >= 1)
                return;
            double turn = Math.Asin(up), along = direction.Angle;
            foreach (double at in (ReadOnlySpan<double>)[along + turn, along + Math.PI - turn])
            {
                if (arc.ContainsAngle(at))
                    Take(arc.PointAtAngle(at), Vector2D.FromAngle(at) * Math.Sign(arc.Sweep));
            }
        }
    }
}
