using LeverDraw.Drafting.Layout;
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
        for (int i = 0; i < 24; i++)
        {
            // 45° first, then outwards from the diagonals.
            double turn = (i % 4 * Math.PI / 2) + (Math.PI / 4) + ((i / 4) switch { 0 => 0, 1 => 0.26, 2 => -0.26, 3 => 0.52, 4 => -0.52, _ => 0.7 });
            Vector2D outward = Vector2D.FromAngle(turn);
            Point2D tip = centre + (outward * radius);
            AddLeaders(all, label, context.Style, tip, outward, i * 0.05, leader => new AnnotationInk(
                leader.Ink(id, context.View, false),
                new PlotDimension(id, dimension.Name, PlotDimensionKind.Diameter, context.View, [centre - (outward * radius), tip], 0, dimension.Value, dimension.Label.ToString(), leader.TextMiddle, dimension.Label.Decimals)));
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
                var leader = new LeaderShape(label, style, tip, direction, from, toRight);
                all.Add(new Candidate([leader.Box], leader.Strokes, cost + awkward + (folded ? 3 : 0) + (length * 0.16), () => ink(leader)));
            }
        }
    }

    private static AnnotationInk Ink(RadiusDimension dimension, string id, string view, LeaderShape leader, Point2D centre, Point2D tip) =>
        new(
            leader.Ink(id, view, false),
            new PlotDimension(id, dimension.Name, PlotDimensionKind.Radius, view, [centre, tip], 0, dimension.Value, dimension.Label.ToString(), leader.TextMiddle, dimension.Label.Decimals));
}
