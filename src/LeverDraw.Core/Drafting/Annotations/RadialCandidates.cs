using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>Leaders in line with a centre, for radii and diameters.</summary>
internal static class RadialCandidates
{
    private static readonly double[] PlacesOnArc = [0.5, 0.35, 0.65, 0.2, 0.8, 0.08, 0.92, 0.14, 0.86, 0.27, 0.73];

    /// <summary>Less the cosine between a leader and the way off its line: from here on it comes along the line, or through the part.</summary>
    private const double Flat = 0.7;

    /// <summary>Slants that a note's leader may have, the diagonals first.</summary>
    private static ReadOnlySpan<double> LeaderDegrees => [45, 135, 225, 315, 60, 120, 240, 300, 30, 150, 210, 330];

    public static PlaceSet For(RadiusDimension dimension, string id, PlacingContext context)
    {
        LabelBox label = context.Labels.Stacked(dimension.Label, context.Style);
        var leaders = new LeaderList();
        var centres = new List<Point2D>();
        double order = 0;
        foreach (ArcEdge viewArc in dimension.Arcs)
        {
            ArcEdge arc = viewArc.Transformed(context.ToBlock);
            bool inHollow = dimension.MaterialAtCentre == false && 2 * arc.Radius > label.Width;
            foreach (double place in PlacesOnArc)
            {
                Point2D tip = arc.PointAt(place);
                Vector2D outward = (tip - arc.Centre).Unit();
                double seen = PlacingCosts.OnArc(arc.Length, place, context.Style.ArrowLength);
                Add(outward, dimension.MaterialAtCentre == false, 0, false);
                Add(-outward, dimension.MaterialAtCentre == true, 0.2, inHollow);
                order += 0.1;

                void Add(Vector2D direction, bool throughPart, double besides, bool hollow)
                {
                    if (throughPart && dimension.OnlyFromOutside)
                        return;
                    leaders.Add(tip, direction, order + (throughPart ? PlacingCosts.ThroughPart : besides), seen + (throughPart ? PlacingCosts.SeenThroughPart : 0), hollow);
                    centres.Add(arc.Centre);
                }
            }
        }

        return new LeaderPlaces(leaders, label, context.Style, (leader, ray) => new AnnotationInk(
            leader.Ink(id, context.View, false),
            new PlotDimension(id, dimension.Name, PlotDimensionKind.Radius, context.View, [centres[ray], leaders.Rays[ray].Tip], 0, dimension.Value, label.Label.ToString(), leader.TextMiddle, label.Label.Decimals)));
    }

    public static PlaceSet For(DiameterDimension dimension, string id, PlacingContext context)
    {
        LabelBox label = context.Labels.Stacked(dimension.Label, context.Style);
        var leaders = new LeaderList();
        Point2D centre = context.ToBlock.Apply(dimension.Centre);
        double radius = dimension.Radius * context.Scale;
        double order = 0;
        foreach ((double turn, double arc, double place) in Turns(dimension, context))
        {
            Vector2D outward = Vector2D.FromAngle(turn);
            leaders.Add(centre + (outward * radius), outward, order, PlacingCosts.OnArc(arc, place, context.Style.ArrowLength));
            order += 0.05;
        }

        PlotDimensionKind kind = dimension.IsCallout ? PlotDimensionKind.Note : PlotDimensionKind.Diameter;
        return new LeaderPlaces(leaders, label, context.Style, (leader, ray) =>
        {
            (Point2D tip, Vector2D outward) = leaders.Rays[ray];
            ImmutableArray<Point2D> points = dimension.IsCallout ? [tip] : [centre - (outward * radius), tip];
            return new AnnotationInk(
                leader.Ink(id, context.View, false),
                new PlotDimension(id, dimension.Name, kind, context.View, points, 0, dimension.Value, label.Label.ToString(), leader.TextMiddle, label.Label.Decimals));
        });
    }

    public static PlaceSet For(DetailLetter detail, string id, PlacingContext context)
    {
        var all = new List<Candidate>();
        Point2D centre = context.ToBlock.Apply(detail.Centre);
        var letter = new CentredWord(detail.Letter, context.Style.CaptionLettering, context.Style);
        ChordScanner part = ChordScanner.Horizontal(detail.Part.Transformed(context.ToBlock));
        for (int ring = 0; ring < 4; ring++)
        {
            for (int i = 0; i < 24; i++)
            {
                Vector2D outward = Vector2D.FromAngle((Math.PI / 4) + (i * Math.PI / 12));
                Point2D middle = centre + (outward * ((detail.Radius * context.Scale) + (letter.Height * 0.8) + 1 + (ring * 3)));
                all.Add(new Candidate([letter.Box(middle)], [], (i * 0.05) + (ring * 8) + (part.Contains(middle) ? PlacingCosts.LetterOnPart : 0), () => new AnnotationInk([letter.Ink(middle, context.View)], null)));
            }
        }

        return new ReadyPlaces(all);
    }

    public static PlaceSet For(LeaderNote note, string id, PlacingContext context)
    {
        var leaders = new LeaderList();
        double order = 0;
        for (int i = 0; i < note.Targets.Length; i++)
        {
            Point2D tip = context.ToBlock.Apply(note.Targets[i]);
            Vector2D? grain = note.Grain is { } run ? Vector2D.FromAngle(context.ToBlock.ApplyToDirection(run.Angle)) : null;
            Vector2D? outward = note.Outward.IsEmpty ? null : Vector2D.FromAngle(context.ToBlock.ApplyToDirection(note.Outward[i].Angle));
            foreach (double degrees in LeaderDegrees)
            {
                Vector2D direction = Vector2D.FromAngle(degrees * Math.PI / 180);
                double askew = outward is { } off ? 1 - off.Dot(direction) : 0;
                // On its own line, or in line with it, the two would read as one.
                double over = note.Lines.IsEmpty || Math.Abs(direction.Dot(context.ToBlock.Apply(note.Lines[i].To - note.Lines[i].From).Unit())) < 0.9 ? 0 : PlacingCosts.BesideExtension;
                if (grain is { } along && Math.Abs(along.Cross(direction)) < PlacingCosts.AlongLiningSine)
                    over += PlacingCosts.AlongLining;
                leaders.Add(tip, direction, order + over + (PlacingCosts.LeaderAskew * askew), (askew > Flat ? PlacingCosts.SeenThroughPart : 0) + (i < note.SecondBest ? 0 : PlacingCosts.SecondBest));
                order += 0.02;
            }
        }

        return new LeaderPlaces(leaders, context.Labels.Plain(note.Label, context.Style), context.Style, (leader, ray) => new AnnotationInk(
            [
                .. note.Lines.IsEmpty ? [] : Span((LineEdge)note.Lines[ray / LeaderDegrees.Length].Transformed(context.ToBlock), context),
                .. leader.Ink(id, context.View, note.OnFace),
            ],
            new PlotDimension(id, note.Name, PlotDimensionKind.Note, context.View, [leaders.Rays[ray].Tip], 0, note.Value, note.Label.ToString(), leader.TextMiddle, note.Label.Decimals)));
    }

    /// <summary>The line a note speaks of, from the leader's tip to a dot, by which it can be told from lining and axes.</summary>
    private static IEnumerable<PlotItem> Span(LineEdge line, PlacingContext context) =>
        [new PlotStroke(LineRole.Dimension, line, null, context.View), Arrowhead.Dot(line.End, context.Style, null, context.View, least: 0.6)];

    /// <summary>Directions from the centre in which the leader may leave: along the drawn arcs, or all round with the diagonals first. Each with the length of its arc on paper and its share along it.</summary>
    private static IEnumerable<(double Turn, double Arc, double Place)> Turns(DiameterDimension dimension, PlacingContext context)
    {
        foreach (ArcEdge arc in dimension.Arcs)
        {
            ArcEdge onPaper = arc.Transformed(context.ToBlock);
            foreach (double place in PlacesOnArc)
                yield return (onPaper.StartAngle + (onPaper.Sweep * place), onPaper.Length, place);
        }

        if (!dimension.Arcs.IsEmpty)
            yield break;
        foreach (double aside in (double[])[0, 0.26, -0.26, 0.52, -0.52, 0.7])
        {
            for (int quarter = 0; quarter < 4; quarter++)
                yield return ((quarter * Math.PI / 2) + (Math.PI / 4) + aside, double.PositiveInfinity, 0.5);
        }
    }
}
