using LeverDraw.Drafting.Annotations;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>One possible place for one annotation: the boxes its lettering takes, the lines it draws, what it costs by itself, and how to ink it.</summary>
public sealed class Candidate
{
    private readonly DimensionSpan _span;
    private double _fieldCost = double.NaN;
    private double _seen = double.NaN;

    /// <param name="heads">The backs of arrowheads, which are wider than their line: no other lettering may touch them.</param>
    public Candidate(OrientedBox[] texts, Stroke[] strokes, double cost, Func<AnnotationInk> ink, params Stroke[] heads)
    {
        Cost = cost;
        Heads = heads;
        Texts = texts;
        Strokes = strokes;
        Ink = ink;
        Box2D box = Box2D.Empty;
        foreach (OrientedBox text in texts)
            box = box.Union(text.Bounds);
        foreach (Stroke stroke in strokes)
            box = box.Union(stroke.Bounds);
        foreach (Stroke head in heads)
            box = box.Union(head.Bounds);
        Bounds = box;
        _span = DimensionSpan.Of(texts, strokes, heads);
        IsMark = LineBlemish.IsMark(strokes);
    }

    /// <summary>Length, tier, an unusual text place: what it costs whatever stands round it.</summary>
    public double Cost { get; }

    /// <summary>What it costs besides, once the view is drawn and settles: what is no reason to reduce a scale, but is avoided where there is room.</summary>
    public double Blemish { get; init; }

    public OrientedBox[] Texts { get; }

    public Stroke[] Strokes { get; }

    public Stroke[] Heads { get; }

    public Box2D Bounds { get; }

    /// <summary>Nothing where this is no linear dimension.</summary>
    internal ref readonly DimensionSpan Span => ref _span;

    /// <summary>A cutting plane's end, a view's arrow, a mould's joint.</summary>
    internal bool IsMark { get; }

    public Func<AnnotationInk> Ink { get; }

    /// <summary>What it costs among the view's own ink, worked out once.</summary>
    public double CostIn(ViewField field)
    {
        if (double.IsNaN(_fieldCost))
            _fieldCost = Cost + field.CostOf(this);
        return _fieldCost;
    }

    /// <summary>What blemishes it has in the view, worked out once.</summary>
    internal double BlemishIn(ViewField field)
    {
        if (double.IsNaN(_seen))
            _seen = Blemish + field.SeenCostOf(Texts, Strokes, Heads);
        return _seen;
    }
}
