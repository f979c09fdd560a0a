using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>The view's own ink, for collision tests, in the block's paper millimetres. Holds no state of a question: any number of threads may ask.</summary>
public sealed partial class ViewField
{
    private readonly StrokeGrid _ink;
    private readonly Box2D _reach;

    public ViewField(IEnumerable<Stroke> strokes)
    {
        _ink = new StrokeGrid(strokes);
        _reach = _ink.Bounds.Inflated(1e-6);
    }

    public Box2D Bounds => _ink.Bounds;

    /// <summary>What a candidate costs among the view's own ink.</summary>
    public double CostOf(Candidate candidate)
    {
        double lettering = CostOf(candidate.Texts);
        return lettering >= PlacingCosts.Broken ? lettering : CostOf(candidate.Strokes, lettering);
    }

    /// <summary>What lettering costs among the view's own ink: the price of a broken rule, or that of standing close to outlines.</summary>
    internal double CostOf(ReadOnlySpan<OrientedBox> texts)
    {
        double cost = 0;
        foreach (ref readonly OrientedBox text in texts)
        {
            double own = CostOf(text);
            if (own >= PlacingCosts.Broken)
                return own;
            cost += own;
        }

        return cost;
    }

    /// <summary>What lines cost among the view's own ink, added to what their lettering does.</summary>
    internal double CostOf(ReadOnlySpan<Stroke> strokes, double lettering)
    {
        double cost = lettering;
        foreach (ref readonly Stroke stroke in strokes)
            cost += CostOf(stroke);
        return cost;
    }

    /// <summary>The least that lines cost, whatever they are lengthened by.</summary>
    internal double LeastOf(ReadOnlySpan<Stroke> strokes)
    {
        double cost = 0;
        foreach (ref readonly Stroke stroke in strokes)
        {
            // One that runs along a line is asked for nothing else; a longer one might first be found to do that.
            cost += Math.Min(CostOf(stroke, crossingsOnly: true), PlacingCosts.AlongFeature);
        }

        return cost;
    }

    private double CostOf(in OrientedBox text)
    {
        OrientedBox round = text.Inflated(PlacingCosts.ComfortableDistance);
        if (!round.Bounds.Overlaps(_reach))
            return 0;
        double cost = 0;
        StrokeGrid.Walk near = _ink.In(round.Bounds);
        while (near.Next())
        {
            foreach (int i in near.Cell)
            {
                ref readonly Stroke stroke = ref _ink[i];
                if (text.Meets(stroke.A, stroke.B))
                    return PlacingCosts.Broken;
                if (cost == 0 && stroke.Kind == StrokeKind.Feature && round.Meets(stroke.A, stroke.B))
                    cost = PlacingCosts.CloseToFeature;
            }
        }

        return cost;
    }

    private double CostOf(in Stroke stroke, bool crossingsOnly = false)
    {
        // A level or upright line's box has no area: it is asked for with a hair round it.
        bool leader = stroke.Kind == StrokeKind.Leader;
        Box2D round = stroke.Bounds.Inflated(leader ? PlacingCosts.BesideLight : 1e-6);
        if (!round.Overlaps(_reach))
            return 0;
        double cost = 0;
        StrokeGrid.Walk near = _ink.In(round);
        while (near.Next())
        {
            foreach (int i in near.Cell)
            {
                if (!near.MeetsFirst(i))
                    continue;
                ref readonly Stroke other = ref _ink[i];
                if (!stroke.IsNear(other, leader ? PlacingCosts.BesideLight : 0.5))
                    continue;
                bool light = other.Kind is StrokeKind.Light or StrokeKind.Lining;
                if (!light && stroke.Crosses(other))
                    cost += PlacingCosts.CrossingFeature(stroke.Kind);
                else if (leader && !crossingsOnly && stroke.LiesBeside(other, light ? PlacingCosts.BesideLight : PlacingCosts.BesideFeature))
                    return cost + PlacingCosts.AlongFeature;
                else if (!crossingsOnly && (!light || stroke.Kind is StrokeKind.DimensionLine) && stroke.RunsAlong(other, 0.4))
                    return cost + PlacingCosts.AlongFeature;
                else if (other.Kind == StrokeKind.Lining && stroke.Crosses(other))
                    cost += PlacingCosts.CrossingLining(stroke.Kind);
            }
        }

        return cost;
    }
}
