using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>Places for the arrow of an auxiliary view: square to the view's plane, aimed at the face it looks at, near it and at its middle first, its letter behind it.</summary>
internal static class ViewArrowCandidates
{
    /// <summary>From the arrow's tip to the face, millimetres: farther off it no longer shows what is looked at.</summary>
    private const double Far = 22;

    /// <summary>What a place farther off costs besides: a last resort.</summary>
    private const double FarCost = 60;

    public static PlaceSet For(ViewArrow arrow, PlacingContext context)
    {
        DraftingStyle style = context.Style;
        Vector2D looking = context.ToBlock.Apply(arrow.Looking).Unit();
        var letter = new CentredWord(arrow.Letter, style.CaptionLettering, style);
        var all = new List<Candidate>();
        for (double away = 2; away < 40; away += away < Far ? 2 : 4)
        {
            foreach (double aside in (ReadOnlySpan<double>)[0, 1, -1, 2, -2, 3, -3])
            {
                Point2D aim = context.ToBlock.Apply(arrow.Face.PointAt(0.5 + (aside / 6)));
                Point2D tip = aim - (looking * away);
                Point2D tail = tip - (looking * (style.ArrowLength * 2.5));
                Point2D middle = tail - (looking * ((0.7 * letter.Height) + 1.2));
                // Nothing may touch its ends or its head either.
                Vector2D clear = looking * style.Clearance;
                Vector2D wide = looking.Left * (style.ArrowLength / 3);
                Stroke shaft = new(tail - clear, tip + clear, StrokeKind.Mark), head = new(tip - clear - wide, tip - clear + wide, StrokeKind.Mark);
                // Between tip and face the eye goes on: what stands there is crossed as by a leader.
                Stroke[] strokes = away <= Far ? [shaft, head, new(tip + clear, aim - (looking * 0.5), StrokeKind.Leader)] : [shaft, head];
                double cost = (away * 0.3) + (Math.Abs(aside) * 0.3) + (away <= Far ? 0 : FarCost);
                all.Add(new Candidate([letter.Box(middle)], strokes, cost, () => new AnnotationInk(
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
