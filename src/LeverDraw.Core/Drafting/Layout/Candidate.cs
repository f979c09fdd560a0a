using LeverDraw.Drafting.Annotations;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>One possible place for one annotation: the boxes its lettering takes, the lines it draws, what it costs by itself, and how to ink it.</summary>
public sealed class Candidate
{
    public Candidate(OrientedBox[] texts, Stroke[] strokes, double cost, Func<AnnotationInk> ink)
    {
        Texts = texts;
        Strokes = strokes;
        Cost = cost;
        Ink = ink;
        Box2D box = Box2D.Empty;
        foreach (OrientedBox text in texts)
            box = box.Union(text.Bounds);
        TextBounds = box;
        foreach (Stroke stroke in strokes)
            box = box.Union(stroke.Bounds);
        Bounds = box;
    }

    public OrientedBox[] Texts { get; }

    public Stroke[] Strokes { get; }

    public Func<AnnotationInk> Ink { get; }

    public Box2D Bounds { get; }

    public Box2D TextBounds { get; }

    /// <summary>Length, tier, an unusual text place: what it costs whatever stands round it. The view's own ink is added by the solver.</summary>
    public double Cost { get; set; }
}
