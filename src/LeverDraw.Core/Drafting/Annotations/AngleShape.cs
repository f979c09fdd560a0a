using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>A dimension whose line is an arc, of an angle or of an arc's length, at one place; block millimetres.</summary>
/// <param name="vertex">Centre of the dimension arc.</param>
/// <param name="one">The extension line at the arc's start, or null where a line is there already.</param>
/// <param name="two">The one at its end.</param>
internal sealed class AngleShape(LabelBox label, DraftingStyle style, Point2D vertex, double first, double sweep, double radius, LineEdge? one, LineEdge? two)
{
    /// <summary>What the dimension says, given the middles of its arc and of its lettering.</summary>
    public delegate PlotDimension Meaning(Point2D onArc, Point2D middle);

    private bool ArrowsInside => radius * sweep >= (2 * style.ArrowLength) + 1.5;

    /// <param name="along">Where the text stands: 0…1 inside the angle, less or more beside it.</param>
    /// <returns>The price of standing there instead of in the middle.</returns>
    public static double CostOf(double along) => along is < 0 or > 1 ? 1.5 : Math.Abs(along - 0.5);

    /// <summary>One of its arrowheads lies on a circle or close beside it.</summary>
    public bool MeetsCircle(ArcEdge circle)
    {
        return IsOn(ArrowOn(first, ArrowsInside ? -1 : 1)) || IsOn(ArrowOn(first + sweep, ArrowsInside ? 1 : -1));

        bool IsOn((Point2D Tip, Vector2D Direction) arrow)
        {
            double tip = Beyond(arrow.Tip), back = Beyond(arrow.Tip - (arrow.Direction * style.ArrowLength));
            return Math.Min(Math.Abs(tip), Math.Abs(back)) < PlacingCosts.TipClear || (tip > 0) != (back > 0);
        }

        double Beyond(Point2D point) => (point - circle.Centre).Length - circle.Radius;
    }

    /// <summary>Adds the lettering of a place to an empty shape.</summary>
    public void Letter(double along, PlaceShape shape)
    {
        Point2D middle = Lay(along).Middle;
        label.AddTo(shape, Corner(middle), 0, new Vector2D(1, 0), style.Clearance);
    }

    /// <summary>Adds the lines of a place.</summary>
    public void Line(double along, PlaceShape shape)
    {
        ArcEdge arc = Lay(along).Arc;
        int pieces = Math.Max(4, (int)(arc.Length / 4));
        Point2D from = arc.PointAt(0);
        for (int i = 0; i < pieces; i++)
        {
            Point2D to = arc.PointAt((i + 1.0) / pieces);
            shape.AddStroke(new Stroke(from, to, StrokeKind.DimensionLine));
            from = to;
        }

        if (one is not null)
            shape.AddStroke(new Stroke(one.From, one.To, StrokeKind.ExtensionLine));
        if (two is not null)
            shape.AddStroke(new Stroke(two.From, two.To, StrokeKind.ExtensionLine));
        shape.AddHead(ArrowBack(first, ArrowsInside ? -1 : 1));
        shape.AddHead(ArrowBack(first + sweep, ArrowsInside ? 1 : -1));
    }

    public AnnotationInk Ink(double along, string id, string view, Meaning says)
    {
        (ArcEdge arc, Point2D middle) = Lay(along);
        return Ink(id, view, arc, Corner(middle), middle, says);
    }

    private Point2D Corner(Point2D middle) => middle - new Vector2D(label.Width / 2, label.Height / 2);

    /// <summary>The dimension arc and the middle of the lettering.</summary>
    private (ArcEdge Arc, Point2D Middle) Lay(double along)
    {
        double tail = ArrowsInside ? 0 : (style.ArrowLength + 2) / radius;
        bool before = along < 0;
        bool after = along > 1;
        double textTurn = tail + ((label.Width / 2) + 2) / radius;
        double at = before ? first - textTurn : after ? first + sweep + textTurn : first + (sweep * along);
        Vector2D out_ = Vector2D.FromAngle(at);
        // The level box just clears the arc: its support in the outward direction.
        double support = (Math.Abs(out_.X) * label.Width / 2) + (Math.Abs(out_.Y) * label.Height / 2) + style.TextGap + style.Clearance + 0.4;
        double arcFrom = first - Math.Max(tail, before ? textTurn : 0);
        double arcTo = first + sweep + Math.Max(tail, after ? textTurn : 0);
        return (new ArcEdge(vertex, radius, arcFrom, arcTo - arcFrom), vertex + (out_ * (radius + support)));
    }

    /// <summary>An extension line along a ray, from a distance to past the dimension arc; null when there is none to draw.</summary>
    public static LineEdge? Radial(DraftingStyle style, Point2D vertex, double direction, double? from, double radius)
    {
        if (from is not { } start || radius + style.Overshoot <= start + style.FeatureGap)
            return null;
        Vector2D u = Vector2D.FromAngle(direction);
        return new LineEdge(vertex + (u * (start + style.FeatureGap)), vertex + (u * (radius + style.Overshoot)));
    }

    private AnnotationInk Ink(string id, string view, ArcEdge arc, Point2D corner, Point2D middle, Meaning says)
    {
        ImmutableArray<PlotItem>.Builder items = ImmutableArray.CreateBuilder<PlotItem>(8);
        items.Add(new PlotStroke(LineRole.Dimension, arc, id, view));
        if (one is not null)
            items.Add(new PlotStroke(LineRole.Dimension, one, id, view));
        if (two is not null)
            items.Add(new PlotStroke(LineRole.Dimension, two, id, view));
        items.Add(ArcArrow(first, ArrowsInside ? -1 : 1, id, view));
        items.Add(ArcArrow(first + sweep, ArrowsInside ? 1 : -1, id, view));
        items.AddRange(label.Ink(corner, 0, LineRole.Dimension, id, view));
        return new AnnotationInk(items.DrainToImmutable(), says(vertex + (Vector2D.FromAngle(first + (sweep / 2)) * radius), middle));
    }

    /// <summary>An arrowhead at the end of the arc, laid along the chord of its own length so that it follows the curve.</summary>
    /// <param name="turn">+1 when it points counter-clockwise.</param>
    private PlotFill ArcArrow(double at, int turn, string id, string view)
    {
        (Point2D tip, Vector2D direction) = ArrowOn(at, turn);
        return Arrowhead.At(tip, direction, style, id, view);
    }

    private Stroke ArrowBack(double at, int turn)
    {
        (Point2D tip, Vector2D direction) = ArrowOn(at, turn);
        return Arrowhead.Back(tip, direction, style);
    }

    private (Point2D Tip, Vector2D Direction) ArrowOn(double at, int turn)
    {
        Point2D tip = vertex + (Vector2D.FromAngle(at) * radius);
        Point2D back = vertex + (Vector2D.FromAngle(at - (turn * style.ArrowLength / radius)) * radius);
        return (tip, (tip - back).Unit());
    }
}
