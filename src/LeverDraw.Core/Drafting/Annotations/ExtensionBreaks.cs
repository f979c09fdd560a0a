using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>Extension lines left open where they would go through another annotation's arrowhead (common practice, no source): through it, neither the head nor what it points at is seen.</summary>
internal static class ExtensionBreaks
{
    /// <summary>From the arrowhead's side to the line's end beside it, paper millimetres.</summary>
    private const double Clear = 0.6;

    /// <summary>A shorter piece that would be left over is left out, paper millimetres.</summary>
    private const double Shortest = 1.5;

    /// <summary>Of an arrowhead, from its tip: there it may touch the line, which is then what it points at.</summary>
    private const double Point = 0.06;

    /// <summary>To so far behind the arrowhead, in its lengths: a line that slants there clips a corner of it.</summary>
    private const double Behind = 1.2;

    /// <summary>Sine between line and arrow below which a gap would be as long as the arrow: left whole.</summary>
    private const double Along = 0.4;

    /// <summary>An annotation's ink with its extension lines broken.</summary>
    /// <param name="own">Its place.</param>
    /// <param name="all">The places of all annotations of the view.</param>
    public static IEnumerable<PlotItem> Broken(AnnotationInk ink, Candidate own, IReadOnlyList<Candidate> all)
    {
        foreach (PlotItem item in ink.Items)
        {
            if (item is not PlotStroke { Edge: LineEdge line } stroke || !IsExtension(line, own))
            {
                yield return item;
                continue;
            }

            foreach (LineEdge piece in Pieces(line, Gaps(line, own, all)))
                yield return stroke with { Edge = piece };
        }
    }

    private static bool IsExtension(LineEdge line, Candidate own)
    {
        foreach (Stroke stroke in own.Strokes)
        {
            if (stroke.Kind == StrokeKind.ExtensionLine && stroke.A == line.From && stroke.B == line.To)
                return true;
        }

        return false;
    }

    /// <summary>Millimetres along the line between which it is left open, in order.</summary>
    private static List<Interval> Gaps(LineEdge line, Candidate own, IReadOnlyList<Candidate> all)
    {
        var gaps = new List<Interval>();
        Vector2D along = (line.To - line.From).Unit();
        foreach (Candidate other in all)
        {
            if (ReferenceEquals(other, own))
                continue;
            foreach (Stroke back in other.Heads)
            {
                Point2D tip = Arrowhead.Tip(back);
                Vector2D axis = Point2D.Lerp(back.A, back.B, 0.5) - tip;
                double sine = along.Cross(axis.Unit());
                if (Math.Abs(sine) < Along)
                    continue;
                // Where the line crosses the arrow's axis, as a share from tip to back.
                double share = along.Cross(line.From - tip) / along.Cross(axis);
                if (share is < Point or > Behind)
                    continue;
                double at = along.Dot(tip + (axis * share) - line.From), half = ((back.Length / 2 * Math.Min(1, share)) + Clear) / Math.Abs(sine);
                if (at > -half && at < line.Length + half)
                    gaps.Add(new Interval(at - half, at + half));
            }
        }

        gaps.Sort((a, b) => a.From.CompareTo(b.From));
        return gaps;
    }

    private static IEnumerable<LineEdge> Pieces(LineEdge line, List<Interval> gaps)
    {
        double from = 0, length = line.Length;
        foreach (Interval gap in gaps)
        {
            if (gap.From - from >= Shortest)
                yield return Between(from, gap.From);
            from = Math.Max(from, gap.To);
        }

        if (gaps.Count == 0 || length - from >= Shortest)
            yield return gaps.Count == 0 ? line : Between(from, length);

        LineEdge Between(double a, double b) => new(Point2D.Lerp(line.From, line.To, a / length), b == length ? line.To : Point2D.Lerp(line.From, line.To, b / length));
    }
}
