using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>Sizes end to end on one line. Where two neighbours are too narrow for arrows a dot stands between them; a number that does not fit goes out at the chain's ends, else beyond the line with a leader.</summary>
internal static class ChainRun
{
    public static void Draw(RunFrame frame, double level)
    {
        // From left to right along the run, whichever way the members were given.
        bool forward = frame.Points[^1].Along >= frame.Points[0].Along;
        int n = frame.Labels.Length;
        RunPoint[] points = [.. forward ? frame.Points : frame.Points.Reverse()];
        int Member(int span) => forward ? span : n - 1 - span;
        bool Wide(int span) => points[span + 1].Along - points[span].Along >= (2 * frame.Style.ArrowLength) + 1.5;

        int raised = 0;
        for (int span = 0; span < n; span++)
        {
            int member = Member(span);
            (double from, double to) = (points[span].Along, points[span + 1].Along);
            LabelBox label = frame.Labels[member];
            double tail = frame.Style.ArrowLength + 2;
            double aside = (Wide(span) ? frame.Style.Overshoot : frame.Style.ArrowLength + 1) + (label.Width / 2);
            double lineFrom = span == 0 && !Wide(0) ? from - tail : from;
            double lineTo = span == n - 1 && !Wide(span) ? to + tail : to;
            double middle = (from + to) / 2;
            double textAt = middle;
            bool fits = label.Width + 1.2 <= to - from;
            if (!fits && span == n - 1)
                (textAt, lineTo) = (to + aside, to + aside + (label.Width / 2));
            else if (!fits && span == 0)
                (textAt, lineFrom) = (from - aside, from - aside - (label.Width / 2));
            Point2D corner = fits || textAt != middle
                ? OnLine(frame, label, textAt, level)
                : Raised(frame, member, label, middle, level, raised++);
            frame.Line(member, frame.At(lineFrom, level), frame.At(lineTo, level), StrokeKind.DimensionLine);
            frame.Text(member, label, corner, frame.Reading);
            frame.Extension(member, points[span], level);
            if (span == n - 1)
                frame.Extension(member, points[n], level);
            Ends(frame, member, points, span, level, Wide);
            Vector2D read = Vector2D.FromAngle(frame.Reading);
            frame.Says(member, PlotDimensionKind.Chain, points[span], points[span + 1], frame.At(to, level), corner + (read * (label.Width / 2)) + (read.Left * (label.Height / 2)));
        }
    }

    /// <summary>Lower left corner of a number that stands on the line, its middle at a place along it.</summary>
    public static Point2D OnLine(RunFrame frame, LabelBox label, double along, double level)
    {
        Vector2D read = Vector2D.FromAngle(frame.Reading);
        return frame.At(along, level) - (read * (label.Width / 2)) + (read.Left * frame.Style.TextGap);
    }

    /// <summary>The second row (a third where two such numbers are neighbours), on the side away from the view, where no extension line passes.</summary>
    private static Point2D Raised(RunFrame frame, int member, LabelBox label, double middle, double level, int count)
    {
        DraftingStyle style = frame.Style;
        Vector2D read = Vector2D.FromAngle(frame.Reading);
        double row = label.Height + (0.5 * style.LetteringHeight) + (2 * style.Clearance);
        double lift = style.TextGap + ((1 + (count % 2)) * row);
        // The leader ends at the number's nearer side; numbers on the line itself stand on its upper side.
        bool above = read.Left.Dot(frame.Out) > 0;
        double near = above ? lift : style.Overshoot + style.TextGap + ((count % 2) * row) + (0.25 * style.LetteringHeight);
        Point2D foot = frame.At(middle, level) + (frame.Out * near);
        frame.Line(member, frame.At(middle, level), foot - (frame.Out * (0.3 * style.LetteringHeight)), StrokeKind.Leader);
        return (above ? foot : foot + (frame.Out * label.Height)) - (read * (label.Width / 2));
    }

    /// <summary>The terminators that belong to a span: its own arrows, the dot before it, arrows from outside at the chain's ends.</summary>
    private static void Ends(RunFrame frame, int member, RunPoint[] points, int span, double level, Func<int, bool> wide)
    {
        int last = points.Length - 2;
        if (wide(span))
        {
            frame.Arrow(member, points[span].Along, level, -1);
            frame.Arrow(member, points[span + 1].Along, level, 1);
            return;
        }

        if (span == 0)
            frame.Arrow(member, points[0].Along, level, 1);
        else if (!wide(span - 1))
            frame.Dot(member, points[span].Along, level);
        if (span == last)
            frame.Arrow(member, points[^1].Along, level, -1);
    }
}
