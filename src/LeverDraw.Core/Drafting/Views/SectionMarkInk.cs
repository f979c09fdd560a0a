using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Views;

/// <summary>The two thick ends of a cutting plane with their arrows and letters (ISO 128-3 practice, from memory).</summary>
internal sealed record SectionMarkInk(ImmutableArray<PlotItem> Items, ImmutableArray<Stroke> Strokes, ImmutableArray<OrientedBox> Letters, Box2D Bounds)
{
    private const double Gap = 3;
    private const double ThickLength = 5;

    public static SectionMarkInk Draw(SectionMark mark, Transform2D toBlock, DraftingStyle style, string view)
    {
        var items = ImmutableArray.CreateBuilder<PlotItem>();
        var strokes = ImmutableArray.CreateBuilder<Stroke>();
        var letters = ImmutableArray.CreateBuilder<OrientedBox>();
        Point2D from = toBlock.Apply(mark.From);
        Point2D to = toBlock.Apply(mark.To);
        Vector2D looking = toBlock.Apply(mark.Looking).Unit();
        Vector2D along = (to - from).Unit();
        double height = style.CaptionLettering;
        double shaft = style.ArrowLength * 2.2;
        double letterWidth = StrokeLettering.WidthOf(mark.Letter, height);
        foreach ((Point2D end, Vector2D outward) in new[] { (from, -along), (to, along) })
        {
            Point2D near = end + (outward * Gap);
            Point2D far = near + (outward * ThickLength);
            items.Add(new PlotStroke(LineRole.CuttingPlane, new LineEdge(near, far), null, view));
            Point2D tail = far - (looking * shaft);
            items.Add(new PlotStroke(LineRole.Dimension, new LineEdge(tail, far), null, view));
            items.Add(Arrowhead.At(far, looking, style, null, view));
            Point2D middle = tail + (outward * ((letterWidth / 2) + 1.5)) + (looking * (shaft * 0.25));
            items.Add(StrokeLettering.Compose(mark.Letter, middle - new Vector2D(letterWidth / 2, height / 2), height, 0, null, view));
            strokes.Add(new Stroke(near, far, StrokeKind.Feature));
            strokes.Add(new Stroke(tail, far, StrokeKind.Feature));
            letters.Add(new OrientedBox(middle, (letterWidth / 2) + style.Clearance, (height / 2) + style.Clearance, 0));
        }

        Box2D bounds = letters.Aggregate(Box2D.Empty, (b, l) => b.Union(l.Bounds));
        bounds = strokes.Aggregate(bounds, (b, s) => b.Union(s.Bounds));
        return new SectionMarkInk(items.ToImmutable(), strokes.ToImmutable(), letters.ToImmutable(), bounds);
    }
}
