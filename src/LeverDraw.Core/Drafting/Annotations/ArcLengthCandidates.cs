using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>Arc lengths: up to a right angle the dimension arc is the measured one moved out along its bisector, with parallel extension lines; beyond, it is concentric, with radial ones (ISO 129-1, from memory).</summary>
internal static class ArcLengthCandidates
{
    private const int Steps = 12;

    public static List<Candidate> For(ArcLengthDimension dimension, string id, PlacingContext context)
    {
        DraftingStyle style = context.Style;
        var label = new LabelBox(dimension.Label, style);
        ArcEdge arc = dimension.Arc.Transformed(context.ToBlock);
        if (arc.Sweep < 0)
            arc = arc.Reversed();
        var all = new List<Candidate>(7 * Steps);
        for (int step = 0; step < Steps; step++)
        {
            double away = style.FirstTier + (step * style.TierSpacing / 2);
            AngleShape shape = arc.Sweep <= (Math.PI / 2) + 1e-9 ? Parallel(label, style, arc, away) : Radial(label, style, arc, away);
            AngleShape.Meaning says = (onArc, middle) => new PlotDimension(
                id, dimension.Name, PlotDimensionKind.ArcLength, context.View, [arc.Centre, arc.Start, arc.End, onArc], 0, dimension.Value, dimension.Label.ToString(), middle, dimension.Label.Decimals);
            foreach (double along in (ReadOnlySpan<double>)[0.5, 0.3, 0.7, 0.15, 0.85])
                all.Add(shape.Candidate(along, id, context.View, step * 1.5, says));
            all.Add(shape.Candidate(-0.35, id, context.View, 2 + (step * 1.5), says));
            all.Add(shape.Candidate(1.35, id, context.View, 2 + (step * 1.5), says));
        }

        return all;
    }

    private static AngleShape Parallel(LabelBox label, DraftingStyle style, ArcEdge arc, double away)
    {
        Vector2D out_ = Vector2D.FromAngle(arc.StartAngle + (arc.Sweep / 2));
        LineEdge From(Point2D end) => new(end + (out_ * style.FeatureGap), end + (out_ * (away + style.Overshoot)));
        return new AngleShape(label, style, arc.Centre + (out_ * away), arc.StartAngle, arc.Sweep, arc.Radius, From(arc.Start), From(arc.End));
    }

    private static AngleShape Radial(LabelBox label, DraftingStyle style, ArcEdge arc, double away)
    {
        double radius = arc.Radius + away;
        return new AngleShape(
            label, style, arc.Centre, arc.StartAngle, arc.Sweep, radius,
            AngleShape.Radial(style, arc.Centre, arc.StartAngle, arc.Radius, radius),
            AngleShape.Radial(style, arc.Centre, arc.EndAngle, arc.Radius, radius));
    }
}
