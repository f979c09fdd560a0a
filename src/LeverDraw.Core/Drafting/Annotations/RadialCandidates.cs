using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>Leaders in line with a centre, for radii and diameters.</summary>
internal static class RadialCandidates
{
    private static readonly double[] Lengths = [7, 11, 16, 22, 29, 37, 46, 56, 68];

    private static readonly double[] PlacesOnArc = [0.5, 0.35, 0.65, 0.2, 0.8, 0.08, 0.92];

    public static List<Candidate> For(RadiusDimension dimension, string id, PlacingContext context)
    {
        var label = new LabelBox(dimension.Label, context.Style);
        var all = new List<Candidate>(256);
        double order = 0;
        foreach (ArcEdge viewArc in dimension.Arcs)
        {
            ArcEdge arc = viewArc.Transformed(context.ToBlock);
            foreach (double place in PlacesOnArc)
            {
                Point2D tip = arc.PointAt(place);
                Vector2D outward = (tip - arc.Centre).Unit();
                AddLeaders(all, label, context.Style, tip, outward, order, leader => Ink(dimension, id, context.View, leader, arc.Centre, tip));
                AddLeaders(all, label, context.Style, tip, -outward, order + 0.2, leader => Ink(dimension, id, context.View, leader, arc.Centre, tip));
                order += 0.1;
            }
        }

        return all;
    }

    public static List<Candidate> For(DiameterDimension dimension, string id, PlacingContext context)
    {
        var label = new LabelBox(dimension.Label, context.Style);
        var all = new List<Candidate>(256);
        Point2D centre = context.ToBlock.Apply(dimension.Centre);
        double radius = dimension.Radius * context.Scale;
        double order = 0;
        foreach (double turn in Turns(dimension, context))
        {
            Vector2D outward = Vector2D.FromAngle(turn);
            Point2D tip = centre + (outward * radius);
            PlotDimensionKind kind = dimension.IsCallout ? PlotDimensionKind.Note : PlotDimensionKind.Diameter;
            ImmutableArray<Point2D> points = dimension.IsCallout ? [tip] : [centre - (outward * radius), tip];
            AddLeaders(all, label, context.Style, tip, outward, order, leader => new AnnotationInk(
                leader.Ink(id, context.View, false),
                new PlotDimension(id, dimension.Name, kind, context.View, points, 0, dimension.Value, dimension.Label.ToString(), leader.TextMiddle, dimension.Label.Decimals)));
            order += 0.05;
        }

        return all;
    }

    public static List<Candidate> For(DetailLetter detail, string id, PlacingContext context)
    {
        var all = new List<Candidate>();
        Point2D centre = context.ToBlock.Apply(detail.Centre);
        var letter = new CentredLetter(detail.Letter, context.Style);
        for (int ring = 0; ring < 4; ring++)
        {
            for (int i = 0; i < 24; i++)
            {
                Vector2D outward = Vector2D.FromAngle((Math.PI / 4) + (i * Math.PI / 12));
                Point2D middle = centre + (outward * ((detail.Radius * context.Scale) + (letter.Height * 0.8) + 1 + (ring * 3)));
                all.Add(new Candidate([letter.Box(middle)], [], (i * 0.05) + (ring * 4), () => new AnnotationInk([letter.Ink(middle, context.View)], null)));
            }
        }

        return all;
    }

    public static List<Candidate> For(LeaderNote note, string id, PlacingContext context)
    {
        var label = new LabelBox(note.Label, context.Style);
        var all = new List<Candidate>(256);
        double order = 0;
        foreach (Point2D target in note.Targets)
        {
            Point2D tip = context.ToBlock.Apply(target);
            foreach (double degrees in (ReadOnlySpan<double>)[45, 135, 225, 315, 60, 120, 240, 300, 30, 150, 210, 330])
            {
                Vector2D direction = Vector2D.FromAngle(degrees * Math.PI / 180);
                AddLeaders(all, label, context.Style, tip, direction, order, leader => new AnnotationInk(
                    leader.Ink(id, context.View, note.OnFace),
                    new PlotDimension(id, note.Name, PlotDimensionKind.Note, context.View, [tip], 0, note.Value, note.Label.ToString(), leader.TextMiddle, note.Label.Decimals)));
                order += 0.02;
            }
        }

        return all;
    }

    /// <summary>Directions from the centre in which the leader may leave: along the drawn arcs, or all round with the diagonals first.</summary>
    private static IEnumerable<double> Turns(DiameterDimension dimension, PlacingContext context)
    {
        foreach (ArcEdge arc in dimension.Arcs)
        {
            ArcEdge onPaper = arc.Transformed(context.ToBlock);
            foreach (double place in PlacesOnArc)
                yield return onPaper.StartAngle + (onPaper.Sweep * place);
        }

        if (!dimension.Arcs.IsEmpty)
            yield break;
        foreach (double aside in (double[])[0, 0.26, -0.26, 0.52, -0.52, 0.7])
        {
            for (int quarter = 0; quarter < 4; quarter++)
                yield return (quarter * Math.PI / 2) + (Math.PI / 4) + aside;
        }
    }

    private static void AddLeaders(List<Candidate> all, LabelBox label, DraftingStyle style, Point2D tip, Vector2D direction, double cost, Func<LeaderShape, AnnotationInk> ink)
    {
        // A leader nearly level with its shoulder, or nearly upright, looks like an extension line.
        double slope = Math.Abs(direction.Y);
        double awkward = slope < 0.2 || slope > 0.985 ? 2 : 0;
        foreach (double length in Lengths)
        {
            double from = Math.Max(length, style.ArrowLength + 2);
            foreach (bool toRight in (ReadOnlySpan<bool>)[direction.X >= 0, direction.X < 0])
            {
                bool folded = toRight != direction.X >= 0;
                if (folded && Math.Abs(direction.X) > 0.5)
                    continue;
                double own = cost + awkward + (folded ? 3 : 0) + (length * 0.16);
                all.Add(new Candidate(own, () =>
                {
                    var leader = new LeaderShape(label, style, tip, direction, from, toRight);
                    return leader.StrikesItself ? null : new Candidate(leader.Boxes, leader.Strokes, own, () => ink(leader), Arrowhead.Back(tip, -direction, style));
                }));
            }
        }
    }

    private static AnnotationInk Ink(RadiusDimension dimension, string id, string view, LeaderShape leader, Point2D centre, Point2D tip) =>
        new(
            leader.Ink(id, view, false),
            new PlotDimension(id, dimension.Name, PlotDimensionKind.Radius, view, [centre, tip], 0, dimension.Value, dimension.Label.ToString(), leader.TextMiddle, dimension.Label.Decimals));
}
