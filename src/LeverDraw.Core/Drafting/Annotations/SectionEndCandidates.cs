using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>Places for a cutting plane's end along its line: near the feature first, further out where dimensions use the line (ISO 128-3 practice, from memory).</summary>
internal static class SectionEndCandidates
{
    private const double ThickLength = 4;

    public static List<Candidate> For(SectionEnd end, PlacingContext context)
    {
        DraftingStyle style = context.Style;
        Vector2D outward = context.ToBlock.Apply(end.Outward).Unit();
        Vector2D looking = context.ToBlock.Apply(end.Looking).Unit();
        Point2D at = context.ToBlock.Apply(end.At);
        double height = style.CaptionLettering;
        double width = StrokeLettering.WidthOf(end.Letter, height);
        var all = new List<Candidate>();
        for (double away = 3; away < 60; away += 2)
        {
            Point2D near = at + (outward * away);
            Point2D far = near + (outward * ThickLength);
            Point2D tail = far - (looking * (style.ArrowLength * 2));
            Point2D middle = tail - (looking * ((height / 2) + 1.2));
            Stroke[] strokes = [new(near, far, StrokeKind.Mark), new(tail, far, StrokeKind.Mark)];
            var box = new OrientedBox(middle, (width / 2) + style.Clearance, (height / 2) + style.Clearance, 0);
            all.Add(new Candidate([box], strokes, away * 0.3, () => new AnnotationInk(
                [
                    new PlotStroke(LineRole.CuttingPlane, new LineEdge(near, far), null, context.View),
                    new PlotStroke(LineRole.Dimension, new LineEdge(tail, far), null, context.View),
                    Arrowhead.At(far, looking, style, null, context.View),
                    StrokeLettering.Compose(end.Letter, middle - new Vector2D(width / 2, height / 2), height, 0, null, context.View),
                ],
                null)));
        }

        return all;
    }
}
