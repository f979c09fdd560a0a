using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>A leader from a tip, along a direction, to a level shoulder on which the label stands; shared by radius, diameter and notes.</summary>
internal readonly struct LeaderShape
{
    /// <summary>Twice what the chords of an arc leave of it, millimetres: counted from its very tip, a leader from the hollow side would cross the arc it points at.</summary>
    private const double Touch = 2 * ViewInk.ChordError;

    private readonly LabelBox _label;
    private readonly DraftingStyle _style;
    private readonly Point2D _tip;
    private readonly Point2D _elbow;
    private readonly Point2D _end;
    private readonly Point2D _corner;
    private readonly Vector2D _direction;
    private readonly double _length;
    private readonly bool _toRight;
    private readonly double _drop;

    /// <param name="direction">From the tip to the elbow, length one.</param>
    /// <param name="length">From the tip to the elbow, millimetres.</param>
    public LeaderShape(LabelBox label, DraftingStyle style, Point2D tip, Vector2D direction, double length, bool toRight)
    {
        _label = label;
        _style = style;
        _tip = tip;
        _direction = direction;
        _length = length;
        _elbow = tip + (direction * length);
        _toRight = toRight;
        double way = toRight ? 1 : -1;
        if (label.IsOneLine)
        {
            // One line stands on the shoulder; where a leader comes down to it from above the lettering, as far from the elbow as keeps the two apart.
            bool fromAbove = toRight == direction.X < 0 && direction.Y < 0;
            double apart = fromAbove ? style.Clearance + (Math.Abs(direction.X / direction.Y) * (style.TextGap + label.Top + style.Clearance)) + 0.1 : 1;
            _end = _elbow + new Vector2D(way * (label.Width + apart + 0.5), 0);
            _corner = new Point2D(toRight ? _elbow.X + apart : _end.X + 0.5, _elbow.Y + style.TextGap);
            _drop = style.TextGap;
        }
        else
        {
            // Several lines stand beside the end of a short shoulder, which meets the middle of the lettering; frames alone are touched by it.
            bool framesOnly = label.Label.Lines.IsEmpty;
            double gap = framesOnly ? 0 : 0.8;
            double middle = framesOnly ? label.Height / 2 : label.Height - (label.LinesHeight / 2);
            _end = _elbow + new Vector2D(way * (framesOnly ? 3 : 2), 0);
            _corner = new Point2D(toRight ? _end.X + gap : _end.X - gap - label.Width, _elbow.Y - middle);
        }
    }

    public Point2D TextMiddle => _corner + new Vector2D(_label.Width / 2, _label.Height / 2);

    private double Align => _toRight ? 0 : 1;

    /// <summary>Adds its lettering to an empty shape. False where the leader runs through it, as when it is folded back steeply.</summary>
    public bool Letter(PlaceShape shape)
    {
        _label.AddTo(shape, _corner, 0, new Vector2D(1, 0), _style.Clearance, Align, _drop);
        Point2D end = _elbow - (_direction * 0.01);
        foreach (ref readonly OrientedBox box in shape.Texts)
        {
            if (box.Meets(_tip, end))
                return false;
        }

        return true;
    }

    /// <summary>As long as asked, but so that some line is seen behind the arrow.</summary>
    public static double SlantLength(double asked, DraftingStyle style) => Math.Max(asked, style.ArrowLength + 2);

    /// <summary>The slanting line from a tip, as far as placing is concerned.</summary>
    /// <param name="direction">Length one.</param>
    public static Stroke Slant(Point2D tip, Vector2D direction, double length) =>
        new(tip + (direction * Touch), tip + (direction * length), StrokeKind.Leader);

    public void Line(PlaceShape shape)
    {
        shape.AddStroke(Slant(_tip, _direction, _length));
        shape.AddStroke(new Stroke(_elbow, _end, StrokeKind.Leader));
    }

    /// <param name="bare">The leader ends on a dimension line: without arrow or dot.</param>
    public ImmutableArray<PlotItem> Ink(string id, string view, bool dot, bool bare = false)
    {
        ImmutableArray<PlotItem>.Builder items = ImmutableArray.CreateBuilder<PlotItem>(6);
        items.Add(new PlotStroke(LineRole.Dimension, new LineEdge(_tip, _elbow), id, view));
        items.Add(new PlotStroke(LineRole.Dimension, new LineEdge(_elbow, _end), id, view));
        if (!bare)
            items.Add(dot ? Arrowhead.Dot(_tip, _style, id, view) : Arrowhead.At(_tip, -_direction, _style, id, view));
        items.AddRange(_label.Ink(_corner, 0, LineRole.Dimension, id, view, Align, _drop));
        return items.DrainToImmutable();
    }
}
