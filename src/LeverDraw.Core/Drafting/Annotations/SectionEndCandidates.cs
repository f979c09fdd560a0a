using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>Places for a cutting plane's end along its line: near the feature first, further out where dimensions use the line (ISO 128-3 practice, from memory).</summary>
internal static class SectionEndCandidates
{
    private const double ThickLength = 4;

    /// <summary>From the feature, millimetres: past the tiers of a large view on large paper.</summary>
    private const double Farthest = 84;

    public static PlaceSet For(SectionEnd end, PlacingContext context)
    {
        DraftingStyle style = context.Style;
        Vector2D outward = context.ToBlock.Apply(end.Outward).Unit();
        Vector2D looking = context.ToBlock.Apply(end.Looking).Unit();
        Point2D at = context.ToBlock.Apply(end.At);
        var letter = new CentredWord(end.Letter, style.CaptionLettering, style);
        var all = new List<Candidate>();
        for (double away = 3; away < Farthest; away += 2)
        {
            Point2D near = at + (outward * away);
            Point2D far = near + (outward * ThickLength);
            Point2D tail = far - (looking * (style.ArrowLength * 2));
            Point2D middle = tail - (looking * ((letter.Height / 2) + 1.2));
            Stroke[] strokes = [new(near, far, StrokeKind.Mark), new(tail, far, StrokeKind.Mark)];
            all.Add(new Candidate([letter.Box(middle)], strokes, away * 0.3, () => new AnnotationInk(
                [
                    new PlotStroke(LineRole.CuttingPlane, new LineEdge(near, far), null, context.View),
                    new PlotStroke(LineRole.Dimension, new LineEdge(tail, far), null, context.View),
                    Arrowhead.At(far, looking, style, null, context.View),
                    letter.Ink(middle, context.View),
                ],
                null),
                Arrowhead.Back(far, looking, style)));
        }

        return new ReadyPlaces(all);
    }
}
