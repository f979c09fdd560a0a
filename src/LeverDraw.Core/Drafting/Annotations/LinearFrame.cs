using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>A linear dimension's fixed facts, and the making of one candidate at one place.</summary>
internal sealed class LinearFrame(string id, LinearDimension dimension, PlacingContext context, Point2D p, Point2D q, Vector2D u)
{
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
        // The text stands on its own dimension line; the box must not claim that line for itself.
        var strokes = new List<Stroke>(3) { new(At(lineFrom, level), At(lineTo, level), StrokeKind.DimensionLine) };
        (Point2D, Point2D)? first = Extension(_from, reachP, level);
        (Point2D, Point2D)? second = Extension(_to, reachQ, level);
        if (first is { } a)
            strokes.Add(new Stroke(a.Item1, a.Item2, StrokeKind.ExtensionLine));
        if (second is { } b)
            strokes.Add(new Stroke(b.Item1, b.Item2, StrokeKind.ExtensionLine));
        if (placed.Bend is { } bend)
            strokes.Add(new Stroke(bend.From, bend.To, StrokeKind.Leader));
        Vector2D outward = arrowsInside ? -u : u;
        return new Candidate(
            [.. label.Boxes(corner, _reading, _style.Clearance, drop: _style.TextGap), .. placed.Boxes(_style.Clearance)],
            [.. strokes],
            cost,
            () => Ink(level, reachP, reachQ, lineFrom, lineTo, corner, arrowsInside, firstArrow, secondArrow, first, second, placed),
            Arrowhead.Back(At(_from, level), outward, _style),
            Arrowhead.Back(At(_to, level), -outward, _style));
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

    private AnnotationInk Ink(double level, double reachP, double reachQ, double lineFrom, double lineTo, Point2D corner, bool arrowsInside, bool firstArrow, bool secondArrow, (Point2D, Point2D)? first, (Point2D, Point2D)? second, PlacedExtra placed)
    {
        string view = context.View;
        ImmutableArray<PlotItem>.Builder items = ImmutableArray.CreateBuilder<PlotItem>(8);
        items.Add(new PlotStroke(LineRole.Dimension, new LineEdge(At(lineFrom, level), At(lineTo, level)), id, view));
        foreach ((Point2D, Point2D)? extension in (ReadOnlySpan<(Point2D, Point2D)?>)[first, second])
        {
            if (extension is { } e)
                items.Add(new PlotStroke(LineRole.Dimension, new LineEdge(e.Item1, e.Item2), id, view));
        }

        Vector2D outward = arrowsInside ? -u : u;
        if (firstArrow)
            items.Add(Arrowhead.At(At(_from, level), outward, _style, id, view));
        if (secondArrow)
            items.Add(Arrowhead.At(At(_to, level), -outward, _style, id, view));
        items.AddRange(label.Ink(corner, _reading, LineRole.Dimension, id, view, drop: _style.TextGap));
        items.AddRange(placed.Ink(id, view));
        Vector2D read = Vector2D.FromAngle(_reading);
        Point2D middle = corner + (read * (label.Width / 2)) + (read.Left * (label.Height / 2));
        ImmutableArray<Point2D> points = ReadsForward
            ? [At(_from, reachP), At(_to, reachQ), At(_to, level)]
            : [At(_to, reachQ), At(_from, reachP), At(_from, level)];
        return new AnnotationInk(
            items.DrainToImmutable(),
            new PlotDimension(id, dimension.Name, PlotDimensionKind.Linear, view, points, _reading, dimension.Value, dimension.Label.ToString(), middle, dimension.Label.Decimals));
    }
}
