using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>A run of dimensions being drawn at one place: its points along and across the measuring direction, and the ink so far. Block millimetres.</summary>
/// <param name="outward">+1 when the run stands to the left of its direction, −1 to the right.</param>
internal sealed class RunFrame(DimensionRun run, string id, PlacingContext context, Vector2D u, int outward)
{
    private readonly List<PlotItem> _items = [];
    private readonly List<PlotDimension> _meanings = [];
    private readonly List<OrientedBox> _texts = [];
    private readonly List<OrientedBox> _ink = [];
    private readonly List<Stroke> _strokes = [];
    private readonly List<Stroke> _heads = [];

    public RunForm Form => run.Form;

    public DraftingStyle Style { get; } = context.Style;

    public Vector2D Along => u;

    /// <summary>Away from the view, square to the run.</summary>
    public Vector2D Out { get; } = u.Left * outward;

    public int Outward => outward;

    /// <summary>The datum, then each member's point.</summary>
    public ImmutableArray<RunPoint> Points { get; } = [.. run.Members.Select(m => m.To).Prepend(run.Datum).Select(p => RunPoint.Of(context.ToBlock.Apply(p), u))];

    public ImmutableArray<LabelBox> Labels { get; } = [.. run.Members.Select(m => new LabelBox(m.Label, context.Style))];

    public double Reading { get; } = PlacingContext.ReadingAngle(u.Angle);

    public Point2D At(double along, double level) => Point2D.Origin + (u * along) + (u.Left * level);

    /// <param name="member">Whose ink it is.</param>
    public void Line(int member, Point2D from, Point2D to, StrokeKind kind)
    {
        _items.Add(new PlotStroke(LineRole.Dimension, new LineEdge(from, to), IdOf(member), context.View));
        _strokes.Add(new Stroke(from, to, kind));
    }

    /// <summary>The line from a measured point to a level, with gap and overshoot.</summary>
    public void Extension(int member, RunPoint point, double level, bool overshoot = true)
    {
        double from = point.Reach + (outward * Style.FeatureGap);
        double to = level + (overshoot ? outward * Style.Overshoot : 0);
        if ((to - from) * outward > 0.2)
            Line(member, At(point.Along, from), At(point.Along, to), StrokeKind.ExtensionLine);
    }

    /// <param name="turn">+1 when it points along the run.</param>
    public void Arrow(int member, double along, double level, int turn)
    {
        Point2D tip = At(along, level);
        _items.Add(Arrowhead.At(tip, u * turn, Style, IdOf(member), context.View));
        _heads.Add(Arrowhead.Back(tip, u * turn, Style));
    }

    public void Dot(int member, double along, double level) => _items.Add(Arrowhead.Dot(At(along, level), Style, IdOf(member), context.View));

    public void Circle(int member, double along, double level, double radius) =>
        _items.Add(new PlotStroke(LineRole.Dimension, ArcEdge.FullCircle(At(along, level), radius), IdOf(member), context.View));

    /// <summary>A member's number; the corner is its lower left one in reading direction.</summary>
    public void Text(int member, LabelBox label, Point2D corner, double angle)
    {
        _items.AddRange(label.Ink(corner, angle, LineRole.Dimension, IdOf(member), context.View));
        _texts.Add(label.Box(corner, angle, Style.Clearance));
        _ink.Add(label.Box(corner, angle, 0.1));
    }

    /// <summary>What a member says, as the writers get it.</summary>
    /// <param name="from">The point it measures from.</param>
    /// <param name="onLine">A point of its dimension line, or the end of its extension line.</param>
    public void Says(int member, PlotDimensionKind kind, RunPoint from, RunPoint to, Point2D onLine, Point2D middle)
    {
        RunMember said = run.Members[member];
        (Point2D a, Point2D b) = (At(from.Along, from.Reach), At(to.Along, to.Reach));
        // An ordinate's first point is its zero whichever way it reads.
        if (kind != PlotDimensionKind.Ordinate && (b - a).Dot(Vector2D.FromAngle(Reading)) < 0)
            (a, b) = (b, a);
        _meanings.Add(new PlotDimension(IdOf(member), said.Name, kind, context.View, [a, b, onLine], Reading, said.Value, said.Label.ToString(), middle, said.Label.Decimals));
    }

    public Candidate Finish(double cost)
    {
        foreach (RunPoint point in Points)
            cost += 0.03 * Math.Abs(_strokes.Max(s => (s.A - Point2D.Origin).Dot(Out)) - (point.Reach * outward));
        for (int i = 0; i < _ink.Count; i++)
        {
            OrientedBox text = _ink[i];
            cost += PlacingCosts.Broken * (_strokes.Count(s => text.Meets(s.A, s.B)) + _ink.Skip(i + 1).Count(other => text.Overlaps(other)));
        }

        var drawn = new AnnotationInk([.. _items], null) { Members = [.. _meanings] };
        return new Candidate([.. _texts], [.. _strokes], cost, () => drawn, [.. _heads]);
    }

    private string IdOf(int member) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{id}-{member + 1}");
}

/// <summary>A measured point by its distance along the run and across it (to the left).</summary>
internal readonly record struct RunPoint(double Along, double Reach)
{
    public static RunPoint Of(Point2D point, Vector2D u) => new(u.Dot(point - Point2D.Origin), u.Left.Dot(point - Point2D.Origin));
}
