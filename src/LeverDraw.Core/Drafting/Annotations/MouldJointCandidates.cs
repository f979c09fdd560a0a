using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>Places for the mark of a mould's joint: near the feature first, further out where dimensions stand; arrows, halves' names and P.L. go together.</summary>
internal static class MouldJointCandidates
{
    /// <summary>From the arrows' line to the words beside it, and from the chain line's end to P.L., paper millimetres.</summary>
    private const double WordGap = 1.2;

    /// <summary>Least distance of an arrow's point from a line that stands beside the feature, paper millimetres.</summary>
    private const double OffLevel = 1;

    public static PlaceSet For(MouldJoint joint, PlacingContext context)
    {
        DraftingStyle style = context.Style;
        Vector2D outward = context.ToBlock.Apply(joint.Outward).Unit(), toward = context.ToBlock.Apply(joint.Toward).Unit();
        Point2D at = context.ToBlock.Apply(joint.At);
        double h = style.LetteringHeight, forward = Shaft(1), back = Shaft(-1);
        var all = new List<Candidate>();
        for (double away = 4; away < 50; away += 2)
        {
            Point2D foot = at + (outward * away), end = foot + (outward * (style.ArrowLength + 2)), start = at + (outward * style.FeatureGap);
            Point2D ahead = foot + (toward * forward), behind = foot - (toward * back);
            (CentredWord Word, Point2D Middle)[] beside = [Beyond(joint.Ahead, ahead, toward), Beyond(joint.Behind, behind, -toward), Beyond(joint.Label.Lines[0], end, outward)];
            (CentredWord Word, Point2D Middle)[] words = [.. beside.Where(w => !w.Word.IsEmpty)];
            bool named = joint.Ahead.Length + joint.Behind.Length > 0;
            // Nothing may part the chain line from its letters either.
            Point2D reach = end + (outward * WordGap);
            Stroke[] strokes = named ? [new(start, reach, StrokeKind.Mark), new(foot, ahead, StrokeKind.Mark), new(foot, behind, StrokeKind.Mark)] : [new(start, reach, StrokeKind.Mark)];
            Stroke[] heads = named ? [Arrowhead.Back(ahead, toward, style), Arrowhead.Back(behind, -toward, style)] : [];
            all.Add(new Candidate(
                [.. words.Select(w => w.Word.Box(w.Middle))],
                strokes,
                away * 0.3,
                () => new AnnotationInk(
                [
                    new PlotStroke(LineRole.Parting, new LineEdge(start, end), null, context.View),
                    .. named ? (PlotItem[])
                    [
                        new PlotStroke(LineRole.Dimension, new LineEdge(foot, ahead), null, context.View),
                        new PlotStroke(LineRole.Dimension, new LineEdge(foot, behind), null, context.View),
                        Arrowhead.At(ahead, toward, style, null, context.View),
                        Arrowhead.At(behind, -toward, style, null, context.View),
                    ] : [],
                    .. words.Select(w => w.Word.Ink(w.Middle, context.View)),
                ],
                null),
                heads));
        }

        return new ReadyPlaces(all);

        // Two arrowheads long, or so much longer that it does not end on another line.
        double Shaft(int way)
        {
            double shaft = 2 * style.ArrowLength;
            foreach (double level in joint.Levels.Select(l => l * way * context.Scale).Order())
            {
                if (Math.Abs(level - shaft) < OffLevel)
                    shaft = level + OffLevel;
            }

            return shaft;
        }

        // A word just beyond a point, the way a line points there.
        (CentredWord Word, Point2D Middle) Beyond(string text, Point2D point, Vector2D way)
        {
            CentredWord word = new(text, h, style);
            return (word, point + new Vector2D(way.X * ((word.Width / 2) + WordGap), way.Y * ((word.Height / 2) + WordGap)));
        }
    }
}
