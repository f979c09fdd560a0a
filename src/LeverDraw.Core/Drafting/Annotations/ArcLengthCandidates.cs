using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>Arc lengths: up to a right angle the dimension arc is the measured one moved out along its bisector, with parallel extension lines; beyond, it is concentric, with radial ones (ISO 129-1, from memory).</summary>
internal static class ArcLengthCandidates
{
    private const int Steps = 12;

    public static PlaceSet For(ArcLengthDimension dimension, string id, PlacingContext context)
    {
        DraftingStyle style = context.Style;
        LabelBox label = context.Labels.Stacked(dimension.Label, style);
        ArcEdge arc = dimension.Arc.Transformed(context.ToBlock);
        if (arc.Sweep < 0)
            arc = arc.Reversed();
        var arcs = new List<(AngleShape Shape, double Cost)>(Steps);
        for (int step = 0; step < Steps; step++)
        {
            double away = style.FirstTier + (step * style.TierSpacing / 2);
            arcs.Add((arc.Sweep <= (Math.PI / 2) + 1e-9 ? Parallel(label, style, arc, away) : Radial(label, style, arc, away), step * 1.5));
        }

        return new AnglePlaces(arcs, context.Circles, id, context.View, _ => (onArc, middle) => new PlotDimension(
            id, dimension.Name, PlotDimensionKind.ArcLength, context.View, [arc.Centre, arc.Start, arc.End, onArc], 0, dimension.Value, label.Label.ToString(), middle, label.Label.Decimals));
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
