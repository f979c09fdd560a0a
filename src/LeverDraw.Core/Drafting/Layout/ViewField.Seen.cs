using LeverDraw.Drafting.Annotations;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <content>What is asked only while a drawn view settles: whether a leader is seen, and seen to mean what it points at.</content>
public sealed partial class ViewField
{
    /// <summary>What a place costs besides among the view's own ink, where the view settles: its lettering, its leaders' lines, and the tip of a leader's arrow.</summary>
    /// <param name="heads">The backs of its arrowheads.</param>
    internal double SeenCostOf(ReadOnlySpan<OrientedBox> texts, ReadOnlySpan<Stroke> strokes, ReadOnlySpan<Stroke> heads) =>
        SeenCostOf(texts) + SeenCostOf(strokes) + (HeadBlemish.IsLeader(strokes) ? TipCostOf(heads) : 0);

    /// <summary>What lettering costs besides where the view settles: close beside a narrow line a dash or a dot of that seems to belong to it.</summary>
    internal double SeenCostOf(ReadOnlySpan<OrientedBox> texts)
    {
        double cost = 0;
        foreach (ref readonly OrientedBox text in texts)
        {
            OrientedBox round = text.Inflated(PlacingCosts.ComfortableFromLight);
            if (round.Bounds.Overlaps(_reach) && IsNearLight(round))
                cost += PlacingCosts.CloseToLight;
        }

        return cost;
    }

    private bool IsNearLight(in OrientedBox round)
    {
        StrokeGrid.Walk near = _ink.In(round.Bounds);
        while (near.Next())
        {
            foreach (int i in near.Cell)
            {
                if (_ink[i].Kind == StrokeKind.Light && round.Meets(_ink[i].A, _ink[i].B))
                    return true;
            }
        }

        return false;
    }

    /// <summary>What leaders cost besides among the view's own ink, where the view settles: outlines crossed, or touched by a shoulder's end or the knee before it, and section lines at a slant that hides the leader among them.</summary>
    internal double SeenCostOf(ReadOnlySpan<Stroke> strokes)
    {
        double cost = 0;
        foreach (ref readonly Stroke stroke in strokes)
        {
            if (stroke.Kind == StrokeKind.Leader && stroke.Bounds.Inflated(1e-6).Overlaps(_reach))
                cost += SeenCostOf(stroke);
        }

        return cost;
    }

    private double SeenCostOf(in Stroke leader)
    {
        const double Between = 3;
        double cost = 0;
        bool along = false, ends = false, level = leader.A.Y == leader.B.Y;
        StrokeGrid.Walk near = _ink.In(leader.Bounds);
        while (near.Next())
        {
            foreach (int i in near.Cell)
            {
                if (!near.MeetsFirst(i))
                    continue;
                ref readonly Stroke other = ref _ink[i];
                if (other.Kind == StrokeKind.Feature && leader.Crosses(other))
                    cost += PlacingCosts.SeenOverFeature + (other.Length > PlacingCosts.Corner && other.FromEnd(leader) < PlacingCosts.Corner ? PlacingCosts.ThroughCorner : 0);
                else if (other.Kind == StrokeKind.Feature)
                {
                    ends |= level && Math.Min(other.DistanceTo(leader.A), other.DistanceTo(leader.B)) < PlacingCosts.Touching;
                }
                else if (other.Kind == StrokeKind.Lining)
                {
                    along |= leader.SineTo(other) < PlacingCosts.AlongLiningSine && leader.RunsBeside(other, Between);
                    if (leader.Crosses(other))
                        cost += PlacingCosts.SeenAmongLining(leader, other);
                }
            }
        }

        return cost + (along ? PlacingCosts.AlongLining : 0) + (ends ? PlacingCosts.Touches : 0);
    }

    /// <summary>What leaders' tips cost that lie where another line of the view begins or passes, where the view settles.</summary>
    /// <param name="heads">The backs of their arrowheads.</param>
    internal double TipCostOf(ReadOnlySpan<Stroke> heads)
    {
        double cost = 0;
        foreach (ref readonly Stroke head in heads)
            cost += TipCostOf(Arrowhead.Tip(head));
        return cost;
    }

    private double TipCostOf(Point2D tip)
    {
        const double Across = 0.5;
        var round = Box2D.Of(tip).Inflated(PlacingCosts.TipClear);
        if (!round.Overlaps(_reach))
            return 0;
        int own = -1;
        double nearest = double.PositiveInfinity, cost = 0;
        StrokeGrid.Walk near = _ink.In(round);
        while (near.Next())
        {
            foreach (int i in near.Cell)
            {
                if (_ink[i].Kind == StrokeKind.Feature && _ink[i].DistanceTo(tip) is var distance && distance < nearest)
                    (own, nearest) = (i, distance);
            }
        }

        near = _ink.In(round);
        while (own >= 0 && near.Next())
        {
            foreach (int i in near.Cell)
            {
                if (_ink[i].Kind != StrokeKind.Lining && _ink[i].SineTo(_ink[own]) > Across)
                    cost = Math.Max(cost, PlacingCosts.TipAtLine(_ink[i].DistanceTo(tip), _ink[i].Kind));
            }
        }

        return cost;
    }
}
