using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>What a place costs in its view among the annotations that stand already; while a drawn view settles, blemishes too. Stops as soon as a limit is reached: cheap questions first, and a place's lines are worked out only when its lettering stands clear.</summary>
internal sealed class PlaceWeigher(ViewField field, Sprawl sprawl, Candidate?[] chosen, PlaceShape shape, PlaceShape lines, bool settling = false)
{
    /// <summary>More than rounding can make of a sum of prices.</summary>
    private const double Hair = 1e-9;

    private readonly KnownPairs _pairs = new(chosen.Length);

    /// <summary>A drawn view settles: blemishes count.</summary>
    public bool Settles => settling;

    private double Rows => settling ? PlacingCosts.SeenRows : 1;

    /// <summary>Whose size a number is counts while there is room for it: at a dearer price only once the view settles.</summary>
    private bool MindsRows => settling || Sprawl.PerMillimetre < Sprawl.Thrifty;

    /// <summary>The price of room; what was found out about places at another must be forgotten before it is changed.</summary>
    public Sprawl Sprawl { get; set; } = sprawl;

    /// <summary>The place weighed last; whole where its cost was below the limit.</summary>
    public PlaceShape Shape { get; } = shape;

    /// <summary>Annotations that have made a place dearer since this was last emptied, a bit each (those whose numbers differ by 64 share one).</summary>
    public ulong Hindering { get; private set; }

    /// <summary>The cost of a place of one annotation, or some number not below the limit when it costs no less than that.</summary>
    public double Weigh(PlaceSet set, int rank, int self, double limit)
    {
        ref PlaceFindings found = ref set.FindingsAt(rank);
        if (found.Floor >= limit)
            return found.Floor;
        if (!settling && Sprawl.PerMillimetre >= Sprawl.Stingy && set.WaitsAt(rank))
            return limit;
        if (set.GroupAt(rank) is >= 0 and int group)
        {
            double shared = set.CostAt(rank) + InView(set, group) - Hair;
            if (shared >= limit || shared + AmongOthers(set, group, self) >= limit)
                return limit;
        }

        // What its lettering met before is often still there.
        if (found.InTheWay is { } met && Math.Max(found.Floor, found.Least) + PlacingCosts.Broken - Hair >= limit && Array.IndexOf(chosen, met) is >= 0 and int whose)
        {
            Hindering |= 1UL << whose;
            return limit;
        }

        double own = set.CostAt(rank);
        if (set.PointAt(rank) is { } point && own + Sprawl.Of(Box2D.Of(point)) - Hair is var atPoint && atPoint >= limit)
            return found.Floor = Math.Max(found.Floor, atPoint);
        Shape.Clear();
        if (!set.Letter(rank, Shape))
            return found.Floor = found.Least = double.PositiveInfinity;
        double sprawl = Sprawl.Of(Shape.Bounds);
        // What needs much room is not asked about its lettering.
        if (own + sprawl - Hair >= limit)
            return found.Floor = Math.Max(found.Floor, own + sprawl - Hair);
        if (double.IsNaN(found.Lettering))
        {
            found.Lettering = field.CostOf(Shape.Texts);
            found.Least = own + found.Lettering - Hair;
        }

        double least = own + found.Lettering + sprawl;
        found.Floor = Math.Max(found.Floor, least - Hair);
        if (found.Floor >= limit)
            return limit;
        bool mustStandClear = least + PlacingCosts.Broken - Hair >= limit;
        if (mustStandClear && MeetsLettering(self, ref found))
            return limit;
        if (!set.Line(rank, Shape))
            return found.Floor = found.Least = double.PositiveInfinity;
        if (double.IsNaN(found.InView))
        {
            found.InView = own + (found.Lettering >= PlacingCosts.Broken ? found.Lettering : field.CostOf(Shape.Strokes, found.Lettering));
            found.Least = Math.Max(found.Least, found.InView - Hair);
        }

        double cost = found.InView;
        if (cost < limit)
            cost += Sprawl.Of(Shape.Bounds);
        if (settling && cost < limit)
            cost += Blemish(set, rank, ref found);
        found.Floor = Math.Max(found.Floor, cost - Hair);
        if (cost >= limit)
            return cost;
        // Most of the others are far away: sorted out once for all that is asked of those near.
        Span<int> near = stackalloc int[chosen.Length];
        near = near[..NearTo(Shape.Bounds.Inflated(settling ? PairBlemish.Farthest : 0), self, near)];
        foreach (int i in near)
        {
            cost += Noted(i, mustStandClear ? PairCost.OfLines(Shape, chosen[i]!) : PairCost.Between(Shape, chosen[i]!));
            if (cost >= limit)
                return cost;
        }

        DimensionSpan span = MindsRows ? DimensionSpan.Of(Shape.Texts, Shape.Strokes, Shape.Heads) : default;
        for (int i = 0; !span.IsNone && i < chosen.Length && cost < limit; i++)
        {
            if (i != self && chosen[i] is { } other)
                cost += Noted(i, Rows * RowBlemish.Between(span, other.Span));
        }

        bool isMark = LineBlemish.IsMark(Shape.Strokes);
        for (int i = 0; MindsRows && i < chosen.Length && cost < limit; i++)
        {
            if (i != self && chosen[i] is { } other && (isMark || other.IsMark))
                cost += Noted(i, LineBlemish.OfMark(Shape.Strokes, other));
        }

        if (!settling)
            return cost;
        // Blemishes take longest to find: asked for last.
        foreach (int i in near)
        {
            if (cost >= limit)
                return cost;
            cost += Noted(i, PairBlemish.Between(Shape, chosen[i]!));
        }

        return cost;
    }

    /// <summary>Lists the others whose place comes into a box.</summary>
    /// <returns>How many.</returns>
    private int NearTo(in Box2D box, int self, Span<int> near)
    {
        int count = 0;
        for (int i = 0; i < chosen.Length; i++)
        {
            if (i != self && chosen[i] is { } other && box.Overlaps(other.Bounds))
                near[count++] = i;
        }

        return count;
    }

    /// <summary>What blemishes a place has whatever stands round it in the view; worked out once.</summary>
    private double Blemish(PlaceSet set, int rank, ref PlaceFindings found)
    {
        if (double.IsNaN(found.Blemish))
            found.Blemish = set.BlemishAt(rank) + field.SeenCostOf(Shape.Texts, Shape.Strokes, Shape.Heads);
        return found.Blemish;
    }

    /// <summary>Takes note of who makes a place dearer.</summary>
    private double Noted(int other, double cost)
    {
        if (cost > 0)
            Hindering |= 1UL << other;
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
                cost += Noted(i, PairCost.Least(lines, other));
        }

        return known = cost;
    }

    /// <summary>The cheapest place beside those taken by others, if one costs less than a limit; else the one given.</summary>
    public (Candidate? Place, double Cost) Cheapest(PlaceSet places, int self, Candidate? current, double limit)
    {
        places.ForgetOthers();
        Hindering = 0;
        // Sorted by own cost: once that reaches the limit, nothing further on can be cheaper.
        for (int rank = 0; rank < places.Count && places.CostAt(rank) < limit; rank++)
        {
            double cost = Weigh(places, rank, self, limit);
            if (cost >= limit)
                continue;
            limit = cost;
            current = places.Keep(rank, Shape);
        }

        return (current, limit);
    }

    /// <summary>The cost of a place that is kept.</summary>
    public double CostOf(Candidate place, int self)
    {
        double cost = CostInView(place);
        for (int i = 0; i < chosen.Length; i++)
        {
            if (i != self && chosen[i] is { } other)
                cost += Between(self, place, i, other);
        }

        return cost;
    }

    /// <summary>The same without what it costs among others.</summary>
    public double CostInView(Candidate place) => place.CostIn(field) + Sprawl.Of(place.Bounds) + (settling ? place.BlemishIn(field) : 0);

    /// <summary>What the places of two annotations cost each other.</summary>
    public double Between(int i, Candidate a, int j, Candidate b)
    {
        ref double price = ref _pairs.Price(i, a, j, b);
        if (double.IsNaN(price))
            price = PairCost.Between(a, b) + (MindsRows ? (Rows * RowBlemish.Between(a.Span, b.Span)) + (a.IsMark || b.IsMark ? LineBlemish.OfMark(a.Strokes, b) : 0) : 0) + (settling ? PairBlemish.Between(a, b) : 0);
        return price;
    }

    public bool PaysForRoom(Candidate place) => Sprawl.Of(place.Bounds) > 0;

    /// <summary>The lettering meets the ink of another annotation: a rule is broken whatever the lines do.</summary>
    private bool MeetsLettering(int self, ref PlaceFindings found)
    {
        for (int i = 0; i < chosen.Length; i++)
        {
            if (i != self && chosen[i] is { } other && PairCost.Strikes(Shape.Texts, other))
            {
                found.InTheWay = other;
                Hindering |= 1UL << i;
                return true;
            }
        }

        return false;
    }
}
