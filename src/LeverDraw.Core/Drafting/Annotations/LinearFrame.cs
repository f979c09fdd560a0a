using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>A linear dimension's fixed facts, and the making of one candidate at one place.</summary>
internal sealed class LinearFrame(string id, LinearDimension dimension, PlacingContext context, Point2D p, Point2D q, Vector2D u)
{
    /// <summary>A leader is drawn only where the number fits neither on its line nor beside it.</summary>
    private const double LeaderCost = 14;

    private readonly LabelBox label = new(dimension.Label.Bare(), context.Style, onLine: true);
    private readonly FrameStack? _stack = dimension.Label.Frames.IsEmpty ? null : new(dimension.Label.Frames, dimension.Label.Datum, context.Style);
    private readonly DatumIndicator? _datum = dimension.Label is { Datum: { } letter, Frames.IsEmpty: true } ? new(letter, context.Style) : null;
    private readonly DraftingStyle _style = context.Style;
    private readonly Vector2D _v = u.Left;
    private readonly double _from = u.Dot(p - Point2D.Origin);
    private readonly double _to = u.Dot(q - Point2D.Origin);
    private readonly double _reading = PlacingContext.ReadingAngle(u.Angle);

    /// <summary>How far along the left direction each measured point lies.</summary>
    public double ReachP { get; } = u.Left.Dot(p - Point2D.Origin);

    public double ReachQ { get; } = u.Left.Dot(q - Point2D.Origin);

    /// <summary>Reading direction is along u, or against it.</summary>
    private bool ReadsForward => Vector2D.FromAngle(_reading).Dot(u) > 0;

    private double Span => _to - _from;

    private bool IsSquare => u.X == 0 || u.Y == 0;

    private bool ArrowsInside => Span >= (2 * _style.ArrowLength) + 1.5;

    /// <summary>All text places for a dimension line at <paramref name="level"/> along the left direction.</summary>
    public void AddTextPlaces(List<Candidate> all, double level, double cost) => Add(all, level, ReachP, ReachQ, cost);

    /// <summary>The dimension line crosses the feature itself; no extension lines.</summary>
    public void AddOnFeature(List<Candidate> all, double shift, double cost) => Add(all, ReachP + shift, ReachP + shift, ReachQ + shift, cost);

    private void Add(List<Candidate> all, double level, double reachP, double reachQ, double cost)
    {
        double w = label.Width;
        double middle = (_from + _to) / 2;
        bool onFeature = level == reachP && level == reachQ;
        cost += 0.06 * (Math.Abs(level - reachP) + Math.Abs(level - reachQ));
        double roomInside = Span - (ArrowsInside ? 0 : 0.6);
        if (w + 1.2 <= roomInside && !(onFeature && !ArrowsInside))
        {
            AddWithExtras(all, level, reachP, reachQ, middle, ArrowsInside, cost);
            double spare = (Span - w) / 2;
            foreach (double part in (ReadOnlySpan<double>)[0.33, -0.33, 0.66, -0.66, 0.92, -0.92])
            {
                if (spare > 3)
                    AddWithExtras(all, level, reachP, reachQ, middle + (spare * part), ArrowsInside, cost + 1.5 + Math.Abs(part));
            }
        }

        double aside = ArrowsInside ? _style.Overshoot : _style.ArrowLength + 1;
        double penalty = onFeature ? 0.5 : 3;
        foreach (double more in (ReadOnlySpan<double>)[0, 8, 20])
        {
            AddWithExtras(all, level, reachP, reachQ, _to + aside + more + (w / 2), ArrowsInside, cost + penalty + (more * 0.15));
            AddWithExtras(all, level, reachP, reachQ, _from - aside - more - (w / 2), ArrowsInside, cost + penalty + (more * 0.15) + 0.1);
        }

        if (w + 1.2 > roomInside && _stack is null && _datum is null)
            AddOnLeaders(all, level, reachP, reachQ, cost + LeaderCost);
    }

    /// <summary>The last resort for a narrow size: the number on a leader from the middle of its dimension line.</summary>
    private void AddOnLeaders(List<Candidate> all, double level, double reachP, double reachQ, double cost)
    {
        Point2D tip = At((_from + _to) / 2, level);
        foreach (double length in (ReadOnlySpan<double>)[_style.TierSpacing, 2 * _style.TierSpacing])
        {
            for (int quarter = 0; quarter < 4; quarter++)
            {
                Vector2D direction = Vector2D.FromAngle((Math.PI / 3) + (quarter * Math.PI / 2) - (quarter % 2 * Math.PI / 6));
                // Along the dimension line itself it would read as a part of it.
                if (Math.Abs(direction.Cross(u)) < 0.3)
                    continue;
                double own = cost + (length * 0.16), reach = length;
                all.Add(new Candidate(own, () => OnLeader(level, reachP, reachQ, new LeaderShape(label, _style, tip, direction, reach, direction.X >= 0), own)));
            }
        }
    }

    private Candidate? OnLeader(double level, double reachP, double reachQ, LeaderShape leader, double cost)
    {
        double tail = ArrowsInside ? 0 : _style.ArrowLength + 2;
        var line = new LineAt(level, reachP, reachQ, _from - tail, _to + tail, ArrowsInside, true, true);
        // Its own lines may not strike the number, as they could where the leader goes back towards the view.
        if (LinesOf(line).Any(s => leader.Boxes.Any(box => box.Meets(s.A, s.B))))
            return null;
        return Make(line, leader.Boxes, leader.Strokes, leader.TextMiddle, cost, () => leader.Ink(id, context.View, dot: false, bare: true));
    }

    /// <summary>The candidate once for each place its frames or datum may take.</summary>
    private void AddWithExtras(List<Candidate> all, double level, double reachP, double reachQ, double textAt, bool arrowsInside, double cost)
    {
        double w = label.Width / 2;
        bool after = textAt + w > _to;
        bool before = textAt - w < _from;
        if (_stack is not null)
        {
            if ((after || before) && IsSquare)
                all.Add(Make(level, reachP, reachQ, textAt, arrowsInside, cost, new LinearExtra(FramePlace.UnderText, after ? 1 : -1)));
            foreach (double away in (ReadOnlySpan<double>)[3, 9])
            {
                if (!before)
                    all.Add(Make(level, reachP, reachQ, textAt, arrowsInside, cost + 0.7 + (away * 0.1), new LinearExtra(FramePlace.AtEnd, 1, away)));
                if (!after)
                    all.Add(Make(level, reachP, reachQ, textAt, arrowsInside, cost + 0.8 + (away * 0.1), new LinearExtra(FramePlace.AtEnd, -1, away)));
            }
        }
        else if (_datum is not null)
        {
            if (!after)
                all.Add(Make(level, reachP, reachQ, textAt, arrowsInside, cost, new LinearExtra(FramePlace.None, 1)));
            if (!before)
                all.Add(Make(level, reachP, reachQ, textAt, arrowsInside, cost + 0.1, new LinearExtra(FramePlace.None, -1)));
        }
        else
        {
            all.Add(Make(level, reachP, reachQ, textAt, arrowsInside, cost, LinearExtra.None));
        }
    }

    private Candidate Make(double level, double reachP, double reachQ, double textAt, bool arrowsInside, double cost, LinearExtra extra) =>
        new(cost, () => Shape(level, reachP, reachQ, textAt, arrowsInside, cost, extra));

    private Candidate Shape(double level, double reachP, double reachQ, double textAt, bool arrowsInside, double cost, LinearExtra extra)
    {
        double w = label.Width;
        double tail = arrowsInside ? 0 : _style.ArrowLength + 2;
        double lineFrom = Math.Min(_from - tail, textAt - (w / 2) < _from ? textAt - (w / 2) : _from);
        double lineTo = Math.Max(_to + tail, textAt + (w / 2) > _to ? textAt + (w / 2) : _to);
        // The datum's triangle stands in for an arrow that points at the feature from outside.
        bool firstArrow = arrowsInside || _datum is null || extra.End >= 0;
        bool secondArrow = arrowsInside || _datum is null || extra.End <= 0;
        if (_datum is not null && extra.End > 0)
            lineTo = _to;
        else if (_datum is not null && extra.End < 0)
            lineFrom = _from;
        PlacedExtra placed = Place(extra, level, textAt, ref lineFrom, ref lineTo);
        Point2D corner = TextCorner(level, textAt);
        Vector2D read = Vector2D.FromAngle(_reading);
        Point2D middle = corner + (read * (label.Width / 2)) + (read.Left * (label.Height / 2));
        // The text stands on its own dimension line; the box must not claim that line for itself.
        OrientedBox[] boxes = [.. label.Boxes(corner, _reading, _style.Clearance, drop: _style.TextGap), .. placed.Boxes(_style.Clearance)];
        Stroke[] bend = placed.Bend is { } b ? [new Stroke(b.From, b.To, StrokeKind.Leader)] : [];
        var line = new LineAt(level, reachP, reachQ, lineFrom, lineTo, arrowsInside, firstArrow, secondArrow);
        return Make(line, boxes, bend, middle, cost, () =>
            [.. label.Ink(corner, _reading, LineRole.Dimension, id, context.View, drop: _style.TextGap), .. placed.Ink(id, context.View)]);
    }

    private Candidate Make(LineAt line, OrientedBox[] boxes, Stroke[] leader, Point2D middle, double cost, Func<IEnumerable<PlotItem>> text)
    {
        Vector2D outward = line.ArrowsInside ? -u : u;
        return new Candidate(
            boxes,
            [.. LinesOf(line), .. leader],
            cost,
            () => Ink(line, middle, text()),
            Arrowhead.Back(At(_from, line.Level), outward, _style),
            Arrowhead.Back(At(_to, line.Level), -outward, _style));
    }

    /// <summary>The dimension line, then its extension lines.</summary>
    private List<Stroke> LinesOf(LineAt line)
    {
        var strokes = new List<Stroke>(5) { new(At(line.From, line.Level), At(line.To, line.Level), StrokeKind.DimensionLine) };
        if (Extension(_from, line.ReachP, line.Level) is { } a)
            strokes.Add(new Stroke(a.Item1, a.Item2, StrokeKind.ExtensionLine));
        if (Extension(_to, line.ReachQ, line.Level) is { } b)
            strokes.Add(new Stroke(b.Item1, b.Item2, StrokeKind.ExtensionLine));
        return strokes;
    }

    private PlacedExtra Place(LinearExtra extra, double level, double textAt, ref double lineFrom, ref double lineTo)
    {
        Vector2D read = Vector2D.FromAngle(_reading);
        if (_datum is not null)
            return new PlacedExtra(null, default, _datum, At(extra.End > 0 ? _to : _from, level), u * extra.End, _reading);
        if (_stack is null)
            return PlacedExtra.Nothing;
        // Where the frames' near side lies along the dimension, and from there outward.
        bool nearIsLeft = extra.End > 0 == ReadsForward;
        if (extra.Frames == FramePlace.UnderText)
        {
            Point2D near = At(extra.End > 0 ? textAt - (label.Width / 2) : textAt + (label.Width / 2), level);
            return new PlacedExtra(_stack, near - (read.Left * _style.TextGap) - (nearIsLeft ? default : read * _stack.Width), null, default, default, _reading);
        }

        double end = extra.End > 0 ? lineTo + extra.Away : lineFrom - extra.Away;
        if (extra.End > 0)
            lineTo = end;
        else
            lineFrom = end;
        Point2D at = At(end, level);
        if (IsSquare)
            return new PlacedExtra(_stack, at + (read.Left * (_stack.Height / 2)) - (nearIsLeft ? default : read * _stack.Width), null, default, default, _reading);
        // Frames stay level beside a slanting dimension: its line bends into them.
        bool toRight = u.X * extra.End > 0;
        Point2D bend = at + new Vector2D(toRight ? LinearExtra.Shoulder : -LinearExtra.Shoulder, 0);
        Point2D corner = bend + new Vector2D(toRight ? 0 : -_stack.Width, _stack.Height / 2);
        return new PlacedExtra(_stack, corner, null, default, default, 0, new LineEdge(at, bend));
    }

    private Point2D TextCorner(double level, double textAt)
    {
        Vector2D read = Vector2D.FromAngle(_reading);
        return At(textAt, level) - (read * (label.Width / 2)) + (read.Left * _style.TextGap);
    }

    private Point2D At(double along, double level) => Point2D.Origin + (u * along) + (_v * level);

    private (Point2D, Point2D)? Extension(double along, double reach, double level)
    {
        double distance = Math.Abs(level - reach);
        if (distance <= _style.FeatureGap + 0.2)
            return null;
        double sign = Math.Sign(level - reach);
        return (At(along, reach + (sign * _style.FeatureGap)), At(along, level + (sign * _style.Overshoot)));
    }

    private AnnotationInk Ink(LineAt line, Point2D middle, IEnumerable<PlotItem> text)
    {
        string view = context.View;
        ImmutableArray<PlotItem>.Builder items = ImmutableArray.CreateBuilder<PlotItem>(8);
        foreach (Stroke stroke in LinesOf(line))
            items.Add(new PlotStroke(LineRole.Dimension, new LineEdge(stroke.A, stroke.B), id, view));
        Vector2D outward = line.ArrowsInside ? -u : u;
        if (line.FirstArrow)
            items.Add(Arrowhead.At(At(_from, line.Level), outward, _style, id, view));
        if (line.SecondArrow)
            items.Add(Arrowhead.At(At(_to, line.Level), -outward, _style, id, view));
        items.AddRange(text);
        ImmutableArray<Point2D> points = ReadsForward
            ? [At(_from, line.ReachP), At(_to, line.ReachQ), At(_to, line.Level)]
            : [At(_to, line.ReachQ), At(_from, line.ReachP), At(_from, line.Level)];
        return new AnnotationInk(
            items.DrainToImmutable(),
            new PlotDimension(id, dimension.Name, PlotDimensionKind.Linear, view, points, _reading, dimension.Value, dimension.Label.ToString(), middle, dimension.Label.Decimals));
    }

    /// <summary>Where a dimension line runs: its level across, the reach of both measured points, its ends along. An arrow is left out where a datum's triangle stands.</summary>
    private readonly record struct LineAt(double Level, double ReachP, double ReachQ, double From, double To, bool ArrowsInside, bool FirstArrow, bool SecondArrow);
}
