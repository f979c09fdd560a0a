using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>Sizes from one datum in even tiers, the shortest nearest to the view. A number that does not fit stands beyond the datum, where no further extension line comes.</summary>
internal static class BaselineRun
{
    public static void Draw(RunFrame frame, double level)
    {
        RunPoint datum = frame.Points[0];
        int[] order = [.. Enumerable.Range(0, frame.Labels.Length).OrderBy(m => Math.Abs(frame.Points[m + 1].Along - datum.Along)).ThenBy(m => m)];
        DraftingStyle style = frame.Style;
        double step = Math.Max(style.TierSpacing, frame.Labels.Max(l => l.Height) + style.TextGap + (0.25 * style.LetteringHeight) + style.Overshoot + 0.2);
        double at = level;
        foreach (int member in order)
        {
            Size(frame, member, at);
            at += frame.Outward * step;
        }

        frame.Extension(order[^1], datum, at - (frame.Outward * step));
    }

    private static void Size(RunFrame frame, int member, double level)
    {
        DraftingStyle style = frame.Style;
        RunPoint datum = frame.Points[0];
        RunPoint point = frame.Points[member + 1];
        LabelBox label = frame.Labels[member];
        int way = point.Along >= datum.Along ? 1 : -1;
        double span = Math.Abs(point.Along - datum.Along);
        bool wide = span >= (2 * style.ArrowLength) + 1.5;
        double tail = wide ? 0 : style.ArrowLength + 2;
        double textAt = (datum.Along + point.Along) / 2;
        double start = datum.Along - (way * tail);
        if (label.Width + 1.2 > span)
        {
            double aside = wide ? style.Overshoot : style.ArrowLength + 1;
            textAt = datum.Along - (way * (aside + (label.Width / 2)));
            start = datum.Along - (way * (aside + label.Width));
        }

        frame.Line(member, frame.At(start, level), frame.At(point.Along + (way * tail), level), StrokeKind.DimensionLine);
        frame.Extension(member, point, level);
        frame.Arrow(member, datum.Along, level, wide ? -way : way);
        frame.Arrow(member, point.Along, level, wide ? way : -way);
        Point2D corner = ChainRun.OnLine(frame, label, textAt, level);
        frame.Text(member, label, corner, frame.Reading);
        Vector2D read = Vector2D.FromAngle(frame.Reading);
        frame.Says(member, PlotDimensionKind.Baseline, datum, point, frame.At(point.Along, level), corner + (read * (label.Width / 2)) + (read.Left * (label.Height / 2)));
    }
}
