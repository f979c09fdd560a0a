using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>Places for the arrow of an auxiliary view: square to the face it looks at, near it first, its letter behind it.</summary>
internal static class ViewArrowCandidates
{
    public static PlaceSet For(ViewArrow arrow, PlacingContext context)
    {
        DraftingStyle style = context.Style;
        Vector2D looking = context.ToBlock.Apply(arrow.Looking).Unit();
        Point2D at = context.ToBlock.Apply(arrow.At);
        var letter = new CentredWord(arrow.Letter, style.CaptionLettering, style);
        var all = new List<Candidate>();
        for (double away = 2; away < 40; away += 2)
        {
            foreach (double aside in (ReadOnlySpan<double>)[0, 3, -3, 6, -6, 9, -9])
            {
                Point2D tip = at - (looking * away) + (looking.Left * aside);
                Point2D tail = tip - (looking * (style.ArrowLength * 2.5));
                Point2D middle = tail - (looking * ((0.7 * letter.Height) + 1.2));
                // Nothing may touch its ends or its head either.
                Vector2D clear = looking * style.Clearance;
                Vector2D wide = looking.Left * (style.ArrowLength / 3);
                Stroke[] strokes = [new(tail - clear, tip + clear, StrokeKind.Mark), new(tip - clear - wide, tip - clear + wide, StrokeKind.Mark)];
                all.Add(new Candidate([letter.Box(middle)], strokes, (away * 0.3) + (Math.Abs(aside) * 0.1), () => new AnnotationInk(
                    [
                        new PlotStroke(LineRole.Dimension, new LineEdge(tail, tip), null, context.View),
                        Arrowhead.At(tip, looking, style, null, context.View),
                        letter.Ink(middle, context.View),
                    ],
                    null)));
            }
        }

        return new ReadyPlaces(all);
    }
}
