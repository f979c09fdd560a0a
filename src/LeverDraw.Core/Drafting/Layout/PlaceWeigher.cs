using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>What a place costs in its view among the annotations that stand already. Stops as soon as a limit is reached: cheap questions first, and a place's lines are worked out only when its lettering stands clear.</summary>
internal sealed class PlaceWeigher(ViewField field, Sprawl sprawl, Candidate?[] chosen, PlaceShape shape, PlaceShape lines)
{
    /// <summary>More than rounding can make of a sum of prices.</summary>
    private const double Hair = 1e-9;

    /// <summary>The place weighed last; whole where its cost was below the limit.</summary>
    public PlaceShape Shape { get; } = shape;

    /// <summary>The cost of a place of one annotation, or some number not below the limit when it costs no less than that.</summary>
    public double Weigh(PlaceSet set, int rank, int self, double limit)
    {
        ref double floor = ref set.FloorAt(rank);
        if (floor >= limit)
            return floor;
        if (set.GroupAt(rank) is >= 0 and int group)
        {
            double shared = set.CostAt(rank) + InView(set, group) - Hair;
            if (shared >= limit || shared + AmongOthers(set, group, self) >= limit)
                return limit;
        }

        Shape.Clear();
        if (!set.Letter(rank, Shape))
            return floor = double.PositiveInfinity;
        double own = set.CostAt(rank);
        double lettering = field.CostOf(Shape.Texts);
        double least = own + lettering + sprawl.Of(Shape.Bounds);
        floor = Math.Max(floor, least - Hair);
        if (floor >= limit || (least + PlacingCosts.Broken - Hair >= limit && MeetsLettering(self)))
            return limit;
        if (!set.Line(rank, Shape))
            return floor = double.PositiveInfinity;
        double cost = own + (lettering >= PlacingCosts.Broken ? lettering : field.CostOf(Shape.Strokes, lettering));
        if (cost < limit)
            cost += sprawl.Of(Shape.Bounds);
        floor = Math.Max(floor, cost - Hair);
        for (int i = 0; i < chosen.Length && cost < limit; i++)
        {
            if (i != self && chosen[i] is { } other)
                cost += PairCost.Between(Shape, other);
        }

        return cost;
    }

    private double InView(PlaceSet set, int group)
    {
        ref double known = ref set.GroupInView(group);
        if (!double.IsNaN(known))
            return known;
        lines.Clear();
        set.LineGroup(group, lines);
        return known = field.LeastOf(lines.Strokes);
    }

    private double AmongOthers(PlaceSet set, int group, int self)
    {
        ref double known = ref set.GroupAmongOthers(group);
        if (!double.IsNaN(known))
            return known;
        lines.Clear();
        set.LineGroup(group, lines);
        double cost = 0;
        for (int i = 0; i < chosen.Length; i++)
        {
            if (i != self && chosen[i] is { } other)
                cost += PairCost.Least(lines, other);
        }

        return known = cost;
    }

    /// <summary>The cost of a place that is kept.</summary>
    public double CostOf(Candidate place, int self)
    {
        double cost = place.CostIn(field) + sprawl.Of(place.Bounds);
        for (int i = 0; i < chosen.Length; i++)
        {
            if (i != self && chosen[i] is { } other)
                cost += PairCost.Between(place, other);
        }

        return cost;
    }

    /// <summary>The lettering meets the ink of another annotation: a rule is broken whatever the lines do.</summary>
    private bool MeetsLettering(int self)
    {
        for (int i = 0; i < chosen.Length; i++)
        {
            if (i != self && chosen[i] is { } other && PairCost.Strikes(Shape.Texts, other))
                return true;
        }

        return false;
    }
}
