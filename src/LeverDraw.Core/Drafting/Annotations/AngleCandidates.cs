using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>Angle dimensions: an arc about the vertex at one of several distances, its number level, outside the arc or beside its ends.</summary>
internal static class AngleCandidates
{
    public static PlaceSet For(AngleDimension dimension, string id, PlacingContext context)
    {
        LabelBox label = context.Labels.Plain(dimension.Label, context.Style);
        var arcs = new List<(AngleShape Shape, double Cost)>(20);
        var radii = new List<double>(20);
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
            arcs.Add((new AngleShape(
                label, context.Style, vertex, first, sweep, r,
                AngleShape.Radial(context.Style, vertex, first, firstFrom * context.Scale, r),
                AngleShape.Radial(context.Style, vertex, first + sweep, secondFrom * context.Scale, r)), (r - least) * 0.12));
            radii.Add(r);
        }

        return new AnglePlaces(arcs, context.Circles, id, context.View, at => (onArc, middle) => new PlotDimension(
            id, dimension.Name, PlotDimensionKind.Angle, context.View,
            [vertex, vertex + (Vector2D.FromAngle(first) * radii[at]), vertex + (Vector2D.FromAngle(first + sweep) * radii[at]), onArc],
            0, dimension.Value, dimension.Label.ToString(), middle, dimension.Label.Decimals));
    }
}
