using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>Distances from a zero mark, each at the end of its extension line and read along it. Extension lines that come too close are bent apart before their numbers.</summary>
internal static class OrdinateRun
{
    /// <summary>Room along an extension line for its bend, paper millimetres.</summary>
    private const double Bend = 3;

    public static void Draw(RunFrame frame, double level)
    {
        var zero = new LabelBox(Label.Of("0"), frame.Style);
        int[] order = [.. Enumerable.Range(0, frame.Points.Length).OrderBy(i => frame.Points[i].Along)];
        LabelBox LabelOf(int point) => point == 0 ? zero : frame.Labels[point - 1];
        double[] ends = SpreadRow.Apart([.. order.Select(i => frame.Points[i].Along)], [.. order.Select(i => LabelOf(i).Height + (0.5 * frame.Style.LetteringHeight) + frame.Style.Clearance)]);
        bool running = frame.Form == RunForm.Running;
        double numbers = level + (frame.Outward * (running ? frame.Style.Overshoot + Bend : 0));
        for (int k = 0; k < order.Length; k++)
        {
            int point = order[k];
            int member = Math.Max(point, 1) - 1;
            RunPoint at = frame.Points[point];
            bool bent = Math.Abs(ends[k] - at.Along) > 1e-6;
            double bend = numbers - (frame.Outward * Bend);
            frame.Extension(member, at, bent ? bend : numbers, overshoot: false);
            if (bent)
                frame.Line(member, frame.At(at.Along, bend), frame.At(ends[k], numbers), StrokeKind.ExtensionLine);
            Point2D middle = Number(frame, member, LabelOf(point), ends[k], numbers);
            if (point > 0)
                frame.Says(member, PlotDimensionKind.Ordinate, frame.Points[0], at, frame.At(ends[k], numbers), middle);
        }

        if (running)
            Line(frame, order, level);
    }

    /// <summary>The number beyond the end of its line; its middle.</summary>
    private static Point2D Number(RunFrame frame, int member, LabelBox label, double along, double level)
    {
        double angle = PlacingContext.ReadingAngle(frame.Out.Angle);
        Vector2D read = Vector2D.FromAngle(angle);
        double gap = (0.3 * frame.Style.LetteringHeight) + 0.2;
        Point2D near = frame.At(along, level) + (frame.Out * gap);
        Point2D corner = (read.Dot(frame.Out) > 0 ? near : near + (frame.Out * label.Width)) - (read.Left * (label.Height / 2));
        frame.Text(member, label, corner, angle);
        return corner + (read * (label.Width / 2)) + (read.Left * (label.Height / 2));
    }

    /// <summary>The running line: a circle at the zero mark, an arrow at each point, away from it; a dot where two points are too close for an arrow.</summary>
    private static void Line(RunFrame frame, int[] order, double level)
    {
        int zero = Array.IndexOf(order, 0);
        double radius = frame.Style.ArrowLength / 4;
        frame.Circle(0, frame.Points[0].Along, level, radius);
        for (int way = -1; way <= 1; way += 2)
        {
            double before = frame.Points[0].Along + (way * radius);
            for (int k = zero + way; k >= 0 && k < order.Length; k += way)
            {
                int member = order[k] - 1;
                double along = frame.Points[order[k]].Along;
                frame.Line(member, frame.At(before, level), frame.At(along, level), StrokeKind.DimensionLine);
                if (Math.Abs(along - before) >= frame.Style.ArrowLength + 0.5)
                    frame.Arrow(member, along, level, way);
                else
                    frame.Dot(member, along, level);
                before = along;
            }
        }
    }
}
