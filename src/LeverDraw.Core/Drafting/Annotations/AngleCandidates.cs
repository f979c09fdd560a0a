using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>Angle dimensions: an arc about the vertex at one of several distances, its number level, outside the arc or beside its ends.</summary>
internal static class AngleCandidates
{
    public static List<Candidate> For(AngleDimension dimension, string id, PlacingContext context)
    {
        var label = new LabelBox(dimension.Label, context.Style);
        var all = new List<Candidate>(64);
        Point2D vertex = context.ToBlock.Apply(dimension.Vertex);
        double first = context.ToBlock.ApplyToDirection(dimension.FirstDirection);
        double second = context.ToBlock.ApplyToDirection(dimension.SecondDirection);
        double? firstFrom = dimension.FirstFrom;
        double? secondFrom = dimension.SecondFrom;
        if (context.ToBlock.Mirrored)
        {
            (first, second) = (second, first);
            (firstFrom, secondFrom) = (secondFrom, firstFrom);
        }

        double sweep = second - first;
        sweep -= 2 * Math.PI * Math.Floor(sweep / (2 * Math.PI));
        double least = (dimension.Reach?.From * context.Scale) ?? 10;
        double most = (dimension.Reach?.To * context.Scale) ?? (least + 60);
        for (double r = least; r <= most + 1e-9; r += 3.5)
        {
            double radius = r;
            var shape = new AngleShape(
                label, context.Style, vertex, first, sweep, r,
                AngleShape.Radial(context.Style, vertex, first, firstFrom * context.Scale, r),
                AngleShape.Radial(context.Style, vertex, first + sweep, secondFrom * context.Scale, r));
            AngleShape.Meaning says = (onArc, middle) => new PlotDimension(
                id, dimension.Name, PlotDimensionKind.Angle, context.View,
                [vertex, vertex + (Vector2D.FromAngle(first) * radius), vertex + (Vector2D.FromAngle(first + sweep) * radius), onArc],
                0, dimension.Value, dimension.Label.ToString(), middle, dimension.Label.Decimals);
            foreach (double along in (ReadOnlySpan<double>)[0.5, 0.3, 0.7, 0.15, 0.85])
                all.Add(shape.Candidate(along, id, context.View, (r - least) * 0.12, says));
            all.Add(shape.Candidate(-0.35, id, context.View, 2 + ((r - least) * 0.12), says));
            all.Add(shape.Candidate(1.35, id, context.View, 2 + ((r - least) * 0.12), says));
        }

        return all;
    }
}
