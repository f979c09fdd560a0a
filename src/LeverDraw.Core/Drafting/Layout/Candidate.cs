using LeverDraw.Drafting.Annotations;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>One possible place for one annotation: the boxes its lettering takes, the lines it draws, what it costs by itself, and how to ink it.</summary>
/// <remarks>Most places are never looked at, because dearer than one that is clear: a place may be worked out when first asked for. Not for two threads at once.</remarks>
public sealed class Candidate
{
    private Func<Candidate?>? _later;
    private OrientedBox[] _texts = [];
    private Stroke[] _strokes = [];
    private Stroke[] _heads = [];
    private Box2D _bounds = Box2D.Empty;
    private Func<AnnotationInk>? _ink;
    private double _fieldCost = double.NaN;

    /// <param name="heads">The backs of arrowheads, which are wider than their line: no other lettering may touch them.</param>
    public Candidate(OrientedBox[] texts, Stroke[] strokes, double cost, Func<AnnotationInk> ink, params Stroke[] heads)
    {
        Cost = cost;
        _heads = heads;
        _texts = texts;
        _strokes = strokes;
        _ink = ink;
        Box2D box = Box2D.Empty;
        foreach (OrientedBox text in texts)
            box = box.Union(text.Bounds);
        foreach (Stroke stroke in strokes)
            box = box.Union(stroke.Bounds);
        foreach (Stroke head in heads)
            box = box.Union(head.Bounds);
        _bounds = box;
    }

    /// <summary>A place whose price is known and whose shape is worked out when it is first looked at.</summary>
    /// <param name="later">Null where the place turns out to be impossible.</param>
    public Candidate(double cost, Func<Candidate?> later)
    {
        Cost = cost;
        _later = later;
    }

    /// <summary>Length, tier, an unusual text place: what it costs whatever stands round it.</summary>
    public double Cost { get; }

    public OrientedBox[] Texts => Known()._texts;

    public Stroke[] Strokes => Known()._strokes;

    public Stroke[] Heads => Known()._heads;

    public Box2D Bounds => Known()._bounds;

    public Func<AnnotationInk> Ink => Known()._ink!;

    /// <summary>What it costs among the view's own ink, worked out once; infinite for an impossible place.</summary>
    public double CostIn(ViewField field)
    {
        if (double.IsNaN(_fieldCost))
            _fieldCost = Known()._bounds.IsEmpty && _ink is null ? double.PositiveInfinity : Cost + field.CostOf(this);
        return _fieldCost;
    }

    private Candidate Known()
    {
        if (_later is not { } later)
            return this;
        _later = null;
        if (later() is { } shape)
            (_texts, _strokes, _heads, _bounds, _ink) = (shape.Texts, shape.Strokes, shape.Heads, shape.Bounds, shape.Ink);
        return this;
    }
}
