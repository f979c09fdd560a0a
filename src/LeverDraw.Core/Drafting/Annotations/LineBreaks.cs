using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>Narrow lines left open where they would go through an arrowhead (common practice, no source): through it, neither the head nor what it points at is seen. So another annotation's extension lines, and the view's own centre lines, double-dotted faces, section lining and the circles round details.</summary>
internal static class LineBreaks
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

    /// <summary>The same of the view's own lines, which end or run on whatever is cut out of them.</summary>
    private const double AlongView = 0.2;

    /// <summary>Between a centre line's end and lettering before it, beyond the clearance inside the lettering's box, and how much the line is shorter for it, paper millimetres.</summary>
    private const double BeforeLettering = 0.6, Shorter = 1;

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

            foreach (PlotItem piece in Opened(stroke, Gaps(line, own, all)))
                yield return piece;
        }
    }

    /// <summary>The view's own ink with its narrow lines broken.</summary>
    public static IEnumerable<PlotItem> Broken(IEnumerable<PlotItem> view, IReadOnlyList<Candidate> all)
    {
        foreach (PlotItem item in view)
        {
            if (item is PlotHatch hatch)
            {
                yield return Broken(hatch, all);
                continue;
            }

            if (item is not PlotStroke stroke || !(stroke.Role is LineRole.Centre or LineRole.Phantom || PlacingContext.IsThinCircle(stroke.Role, stroke.Edge)))
            {
                yield return item;
                continue;
            }

            PlotStroke ended = stroke is { Role: LineRole.Centre, Edge: LineEdge axis } ? stroke with { Edge = OffLettering(axis, all) } : stroke;
            foreach (PlotItem piece in Opened(ended, Gaps(ended.Edge, null, all)))
                yield return piece;
        }
    }

    /// <summary>A centre line whose end comes close before lettering or a frame, into which it would seem to lead, ends a little sooner.</summary>
    private static LineEdge OffLettering(LineEdge axis, IReadOnlyList<Candidate> all)
    {
        Vector2D along = (axis.To - axis.From).Unit();
        return new LineEdge(OffLettering(axis.From, along, all), OffLettering(axis.To, -along, all));
    }

    /// <param name="inward">From the end along its line, length one.</param>
    private static Point2D OffLettering(Point2D end, Vector2D inward, IReadOnlyList<Candidate> all)
    {
        // A line that runs along lettering is near it farther in, too.
        return IsBefore(end) && !IsBefore(end + (inward * Shorter)) ? end + (inward * Shorter) : end;

        bool IsBefore(Point2D point) => all.Any(c => OrientedBox.AnyMeets(c.Texts, point, point + (inward * Coincidence.Distance), BeforeLettering));
    }

    private static IEnumerable<PlotItem> Opened(PlotStroke stroke, List<Interval>? gaps) =>
        gaps is null ? [stroke] : Pieces(stroke.Edge, gaps).Select(piece => stroke with { Edge = piece });

    private static PlotHatch Broken(PlotHatch hatch, IReadOnlyList<Candidate> all)
    {
        var lines = ImmutableArray.CreateBuilder<LineEdge>(hatch.Lines.Length);
        foreach (LineEdge line in hatch.Lines)
        {
            if (Gaps(line, null, all) is not { } gaps)
                lines.Add(line);
            else
                lines.AddRange(Pieces(line, gaps).Cast<LineEdge>());
        }

        return hatch with { Lines = lines.ToImmutable() };
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

    /// <summary>Millimetres along a line or an arc between which it is left open, in order; null where nowhere.</summary>
    /// <param name="own">Whose line it is, if any annotation's.</param>
    private static List<Interval>? Gaps(Edge edge, Candidate? own, IReadOnlyList<Candidate> all)
    {
        List<Interval>? gaps = null;
        Box2D near = edge.Box.Inflated(Clear);
        foreach (Candidate other in all)
        {
            if (ReferenceEquals(other, own))
                continue;
            foreach (Stroke back in other.Heads)
            {
                Point2D tip = Arrowhead.Tip(back);
                Vector2D axis = Point2D.Lerp(back.A, back.B, 0.5) - tip;
                if (!near.Inflated(Behind * axis.Length).Contains(tip))
                    continue;
                foreach (double share in Crossings(edge, tip, axis))
                {
                    if (share is < Point or > Behind)
                        continue;
                    (double at, Vector2D along) = PlaceOn(edge, tip + (axis * share));
                    double sine = along.Cross(axis.Unit());
                    if (Math.Abs(sine) < (own is null ? AlongView : Along))
                        continue;
                    double half = ((back.Length / 2 * Math.Min(1, share)) + Clear) / Math.Abs(sine);
                    // Over a circle's end it goes on at its start.
                    foreach (double middle in edge is ArcEdge { IsFullCircle: true } ? [at - edge.Length, at, at + edge.Length] : (ReadOnlySpan<double>)[at])
                    {
                        if (middle > -half && middle < edge.Length + half)
                            (gaps ??= []).Add(new Interval(middle - half, middle + half));
                    }
                }
            }
        }

        gaps?.Sort((a, b) => a.From.CompareTo(b.From));
        return gaps;
    }

    /// <summary>Where the line or the whole circle crosses an arrow's axis, as shares from its tip to its back.</summary>
    private static IEnumerable<double> Crossings(Edge edge, Point2D tip, Vector2D axis)
    {
        if (edge is ArcEdge arc)
        {
            Vector2D from = tip - arc.Centre;
            double a = axis.Dot(axis), b = from.Dot(axis), c = from.Dot(from) - (arc.Radius * arc.Radius), root = (b * b) - (a * c);
            return root < 0 ? [] : [(-b - Math.Sqrt(root)) / a, (-b + Math.Sqrt(root)) / a];
        }

        Vector2D along = edge.TangentAt(0).Unit();
        double across = along.Cross(axis);
        return Math.Abs(across) < 1e-12 ? [] : [along.Cross(edge.Start - tip) / across];
    }

    /// <summary>How far along a line or an arc a point of it lies (before or beyond it where it lies off its ends), and which way it runs there.</summary>
    private static (double At, Vector2D Along) PlaceOn(Edge edge, Point2D point)
    {
        if (edge is not ArcEdge arc)
        {
            Vector2D along = edge.TangentAt(0).Unit();
            return (along.Dot(point - edge.Start), along);
        }

        double turn = ((point - arc.Centre).Angle - arc.StartAngle) * Math.Sign(arc.Sweep);
        turn -= 2 * Math.PI * Math.Floor((turn / (2 * Math.PI)) + 0.5 - (Math.Abs(arc.Sweep) / (4 * Math.PI)));
        return (turn * arc.Radius, (point - arc.Centre).Unit().Left);
    }

    private static IEnumerable<Edge> Pieces(Edge line, List<Interval> gaps)
    {
        double from = 0, length = line.Length;
        foreach (Interval gap in gaps)
        {
            if (gap.From - from >= Shortest)
                yield return line.Trimmed(from / length, gap.From / length);
            from = Math.Max(from, gap.To);
        }

        if (length - from >= Shortest)
            yield return line.Trimmed(from / length, 1);
    }
}
