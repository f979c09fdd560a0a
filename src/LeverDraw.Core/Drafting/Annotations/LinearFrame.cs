using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>A linear dimension's fixed facts, and the making of one candidate at one place.</summary>
internal sealed class LinearFrame(string id, LinearDimension dimension, PlacingContext context, Point2D p, Point2D q, Vector2D u)
{
    /// <summary>A leader is drawn only where the number fits neither on its line nor beside it.</summary>
    private const double LeaderCost = 14;

    /// <summary>A little less likely than a number straight beside the line.</summary>
    private const double BentCost = 2;

    /// <summary>Of a leader that leaves between arrows which have room inside: it starts close by them.</summary>
    private const double FromMiddle = 8;

    /// <summary>From this extra on the number is at the end of the bent dimension line, below on a leader from its middle: four directions, each shorter and longer.</summary>
    private const int BentPlaces = 8;

    /// <summary>By which frames under a number, and a number that stands comfortably, are shorter than the span, millimetres.</summary>
    private const double FramesMargin = 2.4;

    /// <summary>A number slid along its line keeps so far from its extension lines, millimetres.</summary>
    private const double LeastBeside = 0.8;

    /// <summary>From a line to frames beyond what stands next to it, such as an arm beside the fork's gap, millimetres.</summary>
    private const double FarFrames = 12;

    private readonly LabelBox label = context.Labels.OnLine(dimension.Label, context.Style);
    private readonly FrameStack? _stack = dimension.Label.Frames.IsEmpty ? null : new(dimension.Label.Frames, dimension.Label.Datum, context.Style);
    private readonly DatumIndicator? _datum = dimension.Label is { Datum: { } letter, Frames.IsEmpty: true } ? new(letter, context.Style) : null;
    private readonly DraftingStyle _style = context.Style;
    private readonly Vector2D _v = u.Left;
    private readonly double _reading = PlacingContext.ReadingAngle(u.Angle);
    private readonly Vector2D _read = Vector2D.FromAngle(PlacingContext.ReadingAngle(u.Angle));
    private readonly List<(double Level, double ReachP, double ReachQ)> _levels = new(24);
    private readonly List<LinearExtra> _extras = new(4);
    private readonly EdgeReach? _otherEdge = EdgeReach.AtOtherEdge(dimension, context, u);

    /// <summary>How far along the dimension its first measured point lies.</summary>
    public double From { get; } = u.Dot(p - Point2D.Origin);

    /// <summary>How far along the dimension its second measured point lies.</summary>
    public double To { get; } = u.Dot(q - Point2D.Origin);

    /// <summary>Where the measured points lie across.</summary>
    public EdgeReach Edge { get; } = EdgeReach.Of(p, q, u);

    /// <summary>The same where only one edge is known.</summary>
    public EdgeReach OtherEdge => _otherEdge ?? Edge;

    /// <summary>Reading direction is along u, or against it.</summary>
    private bool ReadsForward => _read.Dot(u) > 0;

    private double Span => To - From;

    private bool IsSquare => u.X == 0 || u.Y == 0;

    private bool ArrowsInside => Span >= (2 * _style.ArrowLength) + 1.5;

    /// <summary>Filled by the frame's own methods.</summary>
    public PlaceList<LinearPlace> Places { get; } = new(96);

    /// <summary>All text places for a dimension line at <paramref name="level"/> along the left direction, measured from the nearer edge.</summary>
    public void AddTextPlaces(double level, double cost)
    {
        EdgeReach nearer = OtherEdge.To(level) < Edge.To(level) ? OtherEdge : Edge;
        Add(level, nearer.P, nearer.Q, cost);
    }

    /// <summary>The dimension line crosses the feature itself; no extension lines.</summary>
    public void AddOnFeature(double shift, double cost) => Add(Edge.P + shift, Edge.P + shift, Edge.Q + shift, cost);

    private void Add(double level, double reachP, double reachQ, double cost)
    {
        _levels.Add((level, reachP, reachQ));
        double w = label.Width;
        double middle = (From + To) / 2;
        bool onFeature = level == reachP && level == reachQ;
        cost += 0.06 * (Math.Abs(level - reachP) + Math.Abs(level - reachQ));
        // Deviations one above the other reach down to the line: between the arrowheads, not over them.
        double heads = ArrowsInside && label.Label.Lines is [.., var last] && StrokeLettering.HasStack(last) ? 2 * _style.ArrowLength : 0;
        double roomInside = Span - (ArrowsInside ? heads : 0.6);
        if (w + 1.2 <= roomInside && !(onFeature && !ArrowsInside))
        {
            AddWithExtras(middle, cost);
            double spare = (Span - w) / 2;
            foreach (double part in (ReadOnlySpan<double>)[0.33, -0.33, 0.66, -0.66, 0.92, -0.92])
            {
                if (spare > 3)
                    AddWithExtras(middle + Math.Clamp(spare * part, LeastBeside - spare, spare - LeastBeside), cost + 1.5 + Math.Abs(part));
            }
        }

        double aside = ArrowsInside ? _style.Overshoot : _style.ArrowLength + 1;
        double penalty = onFeature ? 0.5 : 3;
        foreach (double more in (ReadOnlySpan<double>)[0, 8, 20])
        {
            AddWithExtras(To + aside + more + (w / 2), cost + penalty + (more * 0.15));
            AddWithExtras(From - aside - more - (w / 2), cost + penalty + (more * 0.15) + 0.1);
        }

        if (w + 1.2 > roomInside && _stack is null && _datum is null)
        {
            double onLeader = cost + LeaderCost + (_style.TierSpacing * 0.16);
            AddOnLeaders(onLeader, 0);
            if (onFeature)
                AddOnLeaders(cost + BentCost, BentPlaces);
            else if (ArrowsInside)
                AddOnLeaders(onLeader + BentCost, BentPlaces);
        }
    }

    /// <summary>The number on a leader, in four directions, each shorter and longer: from the middle of the dimension line, the last resort for a narrow size; or at the end of the line itself, which runs on over an arrow, out of the feature, and bends: that takes less room along the line than the number would, and crosses nothing.</summary>
    /// <param name="first">0 or <see cref="BentPlaces"/>.</param>
    private void AddOnLeaders(double cost, int first)
    {
        for (int place = first; place < first + BentPlaces; place++)
        {
            // Along the dimension line itself it would read as a part of it.
            if (Math.Abs(LeaderDirection(place % 4).Cross(u)) >= 0.3)
                Places.Add(cost + (place % BentPlaces / 4 * _style.TierSpacing * 0.16), new LinearPlace(double.NaN, LastLine, (short)place));
        }
    }

    private static Vector2D LeaderDirection(int quarter) => Vector2D.FromAngle((Math.PI / 3) + (quarter * Math.PI / 2) - (quarter % 2 * Math.PI / 6));

    private static bool IsBent(LinearPlace place) => place.Extra >= BentPlaces;

    private LeaderShape Leader(LinearPlace place)
    {
        Vector2D direction = LeaderDirection(place.Extra % 4);
        double from = !IsBent(place) ? (From + To) / 2 : direction.Dot(u) > 0 ? To + _style.ArrowLength : From - _style.ArrowLength;
        return new LeaderShape(label, _style, At(from, _levels[place.Line].Level), direction, (1 + (place.Extra % BentPlaces / 4)) * _style.TierSpacing, direction.X >= 0);
    }

    /// <summary>The place once for each that its frames or datum may take.</summary>
    private void AddWithExtras(double textAt, double cost)
    {
        double w = label.Width / 2;
        bool after = textAt + w > To;
        bool before = textAt - w < From;
        if (_stack is not null)
        {
            if ((after || before) && IsSquare)
                Add(textAt, cost, new LinearExtra(FramePlace.UnderText, after ? 1 : -1));
            else if (IsSquare && 2 * Math.Min(textAt - From, To - textAt) > _stack.Width + FramesMargin)
                Add(textAt, cost, new LinearExtra(FramePlace.UnderText, 0));
            foreach (double away in (ReadOnlySpan<double>)(after || before ? [3, 9] : [3, 9, FarFrames]))
            {
                if (!before)
                    Add(textAt, cost + 0.7 + (away * 0.1), new LinearExtra(FramePlace.AtEnd, 1, away));
                if (!after)
                    Add(textAt, cost + 0.8 + (away * 0.1), new LinearExtra(FramePlace.AtEnd, -1, away));
            }
        }
        else if (_datum is not null)
        {
            if (!after)
                Add(textAt, cost, new LinearExtra(FramePlace.None, 1));
            if (!before)
                Add(textAt, cost + 0.1, new LinearExtra(FramePlace.None, -1));
        }
        else
        {
            Add(textAt, cost, LinearExtra.None);
        }
    }

    private short LastLine => (short)(_levels.Count - 1);

    private void Add(double textAt, double cost, LinearExtra extra)
    {
        int at = _extras.IndexOf(extra);
        if (at < 0)
        {
            at = _extras.Count;
            _extras.Add(extra);
        }

        Places.Add(cost, new LinearPlace(textAt, LastLine, (short)at));
    }

    /// <summary>What a place costs besides, once the view is drawn and settles: a number with frames that goes out although there is room between its extension lines, and one that fills the room between them.</summary>
    public double BlemishOf(LinearPlace place)
    {
        if (double.IsNaN(place.TextAt))
            return IsBent(place) || !ArrowsInside ? 0 : FromMiddle;
        bool outside = place.TextAt < From || place.TextAt > To;
        return _stack is not null && outside && label.Width + FramesMargin < Span ? 16 : !outside && label.Width + FramesMargin > Span ? 6 : 0;
    }

    /// <summary>Frames under a number in the middle or far out from it would be taken for their little width on narrow paper, and whole sheets planned round them: there they wait until the view is drawn.</summary>
    public bool WaitsOnNarrowPaper(LinearPlace place) =>
        _stack is not null && _extras[place.Extra] is { Frames: FramePlace.UnderText, End: 0 } or { Away: FarFrames };

    /// <summary>How many dimension lines there are, each with several places.</summary>
    public int Lines => _levels.Count;

    /// <summary>Adds what all places on one dimension line have: the line between the measured points, the extension lines, the arrows.</summary>
    public void LineGroup(int line, PlaceShape shape)
    {
        (double level, double reachP, double reachQ) = _levels[line];
        AddLines(new LineAt(level, reachP, reachQ, From, To, ArrowsInside, true, true), shape);
        AddHeads(level, shape);
    }

    /// <summary>A point of the dimension line under its number, or in its middle where that is on a leader.</summary>
    public Point2D PointOf(LinearPlace place) =>
        At(double.IsNaN(place.TextAt) ? (From + To) / 2 : place.TextAt, _levels[place.Line].Level);

    /// <summary>Adds the lettering of a place to an empty shape. False where the place is impossible.</summary>
    public bool Letter(LinearPlace place, PlaceShape shape)
    {
        if (double.IsNaN(place.TextAt))
            return LetterOnLeader(place, shape);
        // The text stands on its own dimension line; the box must not claim that line for itself.
        label.AddTo(shape, TextCorner(_levels[place.Line].Level, place.TextAt), _reading, _read, _style.Clearance, drop: _style.TextGap);
        if (_stack is not null || _datum is not null)
            Lay(place).Placed.AddTo(shape, _style.Clearance);
        return true;
    }

    /// <summary>Adds the lines of a place.</summary>
    public bool Line(LinearPlace place, PlaceShape shape)
    {
        bool onLeader = double.IsNaN(place.TextAt);
        (LineAt line, PlacedExtra placed) = onLeader ? (LineOf(place), PlacedExtra.Nothing) : Lay(place);
        AddLines(line, shape);
        if (onLeader)
            Leader(place).Line(shape);
        else if (placed.Bend is { } bend)
            shape.AddStroke(new Stroke(bend.From, bend.To, StrokeKind.Leader));
        AddHeads(line.Level, shape);
        return true;
    }

    private void AddHeads(double level, PlaceShape shape)
    {
        Vector2D outward = ArrowsInside ? -u : u;
        shape.AddHead(Arrowhead.Back(At(From, level), outward, _style));
        shape.AddHead(Arrowhead.Back(At(To, level), -outward, _style));
    }

    /// <summary>The ink of a place.</summary>
    public AnnotationInk Ink(LinearPlace place)
    {
        if (double.IsNaN(place.TextAt))
        {
            LeaderShape leader = Leader(place);
            return Ink(LineOf(place), leader.TextMiddle, leader.Ink(id, context.View, dot: false, bare: true));
        }

        (LineAt line, PlacedExtra placed) = Lay(place);
        Point2D corner = TextCorner(line.Level, place.TextAt);
        Point2D middle = corner + (_read * (label.Width / 2)) + (_read.Left * (label.Height / 2));
        return Ink(line, middle, [.. label.Ink(corner, _reading, LineRole.Dimension, id, context.View, drop: _style.TextGap), .. placed.Ink(id, context.View)]);
    }

    private bool LetterOnLeader(LinearPlace place, PlaceShape shape)
    {
        // Its own lines may not strike the number, as they could where the leader goes back towards the view.
        Leader(place).Letter(shape);
        LineAt line = LineOf(place);
        foreach (ref readonly OrientedBox box in shape.Texts)
        {
            if (box.Meets(At(line.From, line.Level), At(line.To, line.Level))
                || (Extension(From, line.ReachP, line.Level) is { } a && box.Meets(a.Item1, a.Item2))
                || (Extension(To, line.ReachQ, line.Level) is { } b && box.Meets(b.Item1, b.Item2)))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The line of a number on a leader: no longer than its arrows need.</summary>
    private LineAt LineOf(LinearPlace place)
    {
        (double level, double reachP, double reachQ) = _levels[place.Line];
        double tail = ArrowsInside ? 0 : _style.ArrowLength + 2;
        double over = IsBent(place) ? _style.ArrowLength : 0;
        bool forward = LeaderDirection(place.Extra % 4).Dot(u) > 0;
        return new LineAt(level, reachP, reachQ, From - (forward ? tail : Math.Max(tail, over)), To + (forward ? Math.Max(tail, over) : tail), ArrowsInside, true, true);
    }

    /// <summary>The line of a number on it, and where its frames or datum stand.</summary>
    private (LineAt Line, PlacedExtra Placed) Lay(LinearPlace place)
    {
        (double level, double reachP, double reachQ) = _levels[place.Line];
        LinearExtra extra = _extras[place.Extra];
        double textAt = place.TextAt;
        double w = label.Width;
        double tail = ArrowsInside ? 0 : _style.ArrowLength + 2;
        double lineFrom = Math.Min(From - tail, textAt - (w / 2) < From ? textAt - (w / 2) : From);
        double lineTo = Math.Max(To + tail, textAt + (w / 2) > To ? textAt + (w / 2) : To);
        // The datum's triangle stands in for an arrow that points at the feature from outside.
        bool firstArrow = ArrowsInside || _datum is null || extra.End >= 0;
        bool secondArrow = ArrowsInside || _datum is null || extra.End <= 0;
        if (_datum is not null && extra.End > 0)
            lineTo = To;
        else if (_datum is not null && extra.End < 0)
            lineFrom = From;
        PlacedExtra placed = Place(extra, level, textAt, ref lineFrom, ref lineTo);
        return (new LineAt(level, reachP, reachQ, lineFrom, lineTo, ArrowsInside, firstArrow, secondArrow), placed);
    }

    /// <summary>The dimension line, then its extension lines.</summary>
    private void AddLines(LineAt line, PlaceShape shape)
    {
        shape.AddStroke(new Stroke(At(line.From, line.Level), At(line.To, line.Level), StrokeKind.DimensionLine));
        if (Extension(From, line.ReachP, line.Level) is { } a)
            shape.AddStroke(new Stroke(a.Item1, a.Item2, StrokeKind.ExtensionLine));
        if (Extension(To, line.ReachQ, line.Level) is { } b)
            shape.AddStroke(new Stroke(b.Item1, b.Item2, StrokeKind.ExtensionLine));
    }

    private PlacedExtra Place(LinearExtra extra, double level, double textAt, ref double lineFrom, ref double lineTo)
    {
        Vector2D read = _read;
        if (_datum is not null)
            return new PlacedExtra(null, default, _datum, At(extra.End > 0 ? To : From, level), u * extra.End, _reading);
        if (_stack is null)
            return PlacedExtra.Nothing;
        // Where the frames' near side lies along the dimension, and from there outward.
        bool nearIsLeft = extra.End > 0 == ReadsForward;
        if (extra.Frames == FramePlace.UnderText)
        {
            Point2D near = At(textAt - (extra.End * label.Width / 2), level);
            double before = extra.End == 0 ? _stack.Width / 2 : nearIsLeft ? 0 : _stack.Width;
            return new PlacedExtra(_stack, near - (read.Left * _style.TextGap) - (read * before), null, default, default, _reading);
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
        return At(textAt, level) - (_read * (label.Width / 2)) + (_read.Left * _style.TextGap);
    }

    public Point2D At(double along, double level) => Point2D.Origin + (u * along) + (_v * level);

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
        items.Add(new PlotStroke(LineRole.Dimension, new LineEdge(At(line.From, line.Level), At(line.To, line.Level)), id, view));
        if (Extension(From, line.ReachP, line.Level) is { } a)
            items.Add(new PlotStroke(LineRole.Dimension, new LineEdge(a.Item1, a.Item2), id, view));
        if (Extension(To, line.ReachQ, line.Level) is { } b)
            items.Add(new PlotStroke(LineRole.Dimension, new LineEdge(b.Item1, b.Item2), id, view));
        Vector2D outward = line.ArrowsInside ? -u : u;
        if (line.FirstArrow)
            items.Add(Arrowhead.At(At(From, line.Level), outward, _style, id, view));
        if (line.SecondArrow)
            items.Add(Arrowhead.At(At(To, line.Level), -outward, _style, id, view));
        items.AddRange(text);
        ImmutableArray<Point2D> points = ReadsForward
            ? [At(From, line.ReachP), At(To, line.ReachQ), At(To, line.Level)]
            : [At(To, line.ReachQ), At(From, line.ReachP), At(From, line.Level)];
        return new AnnotationInk(
            items.DrainToImmutable(),
            new PlotDimension(id, dimension.Name, PlotDimensionKind.Linear, view, points, _reading, dimension.Value, dimension.Label.ToString(), middle, dimension.Label.Decimals));
    }

    /// <summary>Where a dimension line runs: its level across, the reach of both measured points, its ends along. An arrow is left out where a datum's triangle stands.</summary>
    private readonly record struct LineAt(double Level, double ReachP, double ReachQ, double From, double To, bool ArrowsInside, bool FirstArrow, bool SecondArrow);
}
