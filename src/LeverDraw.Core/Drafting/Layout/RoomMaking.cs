namespace LeverDraw.Drafting.Layout;

/// <summary>Puts one annotation where it would stand well if it were alone, takes out those in its way, and places these anew: taken when all together cost less. It gets out of corners that moving one at a time does not.</summary>
internal sealed class RoomMaking(PlaceWeigher weigher, PlaceSet[] sets, Candidate?[] chosen)
{
    /// <summary>One that costs less than this stands well enough while a view settles: it has at most one blemish.</summary>
    public const double Bad = 18;

    /// <summary>What is mended even while it is not known whether the view is drawn: a leader across the whole part.</summary>
    public const double VeryBad = 3 * PlacingCosts.LeaderOverFeature;

    /// <summary>What it must save to be worth moving others about; while a view settles less will do.</summary>
    private const double Worthwhile = PlacingCosts.LeaderOverFeature / 2, WorthwhileSettling = 6;

    /// <summary>Good places that are tried for one annotation, each of another group; while a view settles, where more annotations are tried, fewer.</summary>
    private const int PlacesTried = 16, PlacesTriedSettling = 6;

    /// <summary>While a view settles, by how much a place may be dearer than the best one and still be tried.</summary>
    private const double Good = 12;

    /// <summary>While a view settles, places nearer to each other than this are not both tried, millimetres.</summary>
    private const double Apart = 4;

    /// <summary>More than rounding can make of a sum of prices.</summary>
    private const double Hair = 1e-9;

    private readonly Candidate?[] _before = new Candidate?[chosen.Length];

    /// <summary>What each costs at the least wherever the others stand; NaN until it is asked for.</summary>
    private readonly double[] _alone = [.. sets.Select(_ => double.NaN)];

    /// <summary>True when all was made cheaper.</summary>
    public bool Try(int sufferer)
    {
        chosen.CopyTo(_before, 0);
        double limit = Total() - (weigher.Settles ? WorthwhileSettling : Worthwhile);
        double others = 0;
        for (int i = 0; i < sets.Length; i++)
            others += i == sufferer ? 0 : Alone(i);
        foreach (Candidate good in GoodPlaces(sufferer, limit - others + Hair))
        {
            chosen[sufferer] = good;
            List<int> inTheWay = [];
            for (int i = 0; i < chosen.Length; i++)
            {
                if (i != sufferer && weigher.Between(sufferer, good, i, _before[i]!) > 0)
                    inTheWay.Add(i);
            }

            foreach (int i in inTheWay)
                chosen[i] = null;
            if (PlaceAnew(inTheWay, limit))
                return true;
            _before.CopyTo(chosen, 0);
        }

        return false;
    }

    /// <summary>The least that one costs if there were no other annotations.</summary>
    private double Alone(int self)
    {
        if (!double.IsNaN(_alone[self]))
            return _alone[self];
        Array.Clear(chosen);
        _alone[self] = weigher.Cheapest(sets[self], self, null, double.PositiveInfinity).Cost;
        _before.CopyTo(chosen, 0);
        return _alone[self];
    }

    /// <summary>The cheapest place of each group if there were no other annotations; the cheapest groups only.</summary>
    /// <param name="hopeless">A place at this price would make nothing cheaper.</param>
    private List<Candidate> GoodPlaces(int self, double hopeless)
    {
        PlaceSet places = sets[self];
        Array.Clear(chosen);
        places.ForgetOthers();
        var best = weigher.Settles ? new ShortList(PlacesTriedSettling, Apart) : new ShortList(PlacesTried, 0);
        for (int rank = 0; rank < places.Count; rank++)
        {
            double limit = best.Limit(Math.Min(PlacingCosts.Broken, hopeless), weigher.Settles ? Good : double.PositiveInfinity);
            if (places.CostAt(rank) >= limit)
                break;
            int group = places.GroupAt(rank);
            // Its price is known mostly, and then whether another of its group is cheaper.
            if (best.HasCheaper(group, places.FindingsAt(rank).Floor))
                continue;
            double cost = weigher.Weigh(places, rank, self, limit);
            if (cost < limit)
                best.Offer(cost, group, rank, weigher.Shape.Bounds.Centre);
        }

        _before.CopyTo(chosen, 0);
        return [.. best.Ranks.Select(rank => places.Make(rank, weigher.Shape)!)];
    }

    /// <summary>Places these one after the other, as long as all together may still cost less than a limit.</summary>
    private bool PlaceAnew(List<int> these, double limit)
    {
        double total = Total();
        double rest = these.Sum(i => _alone[i]);
        foreach (int i in these)
        {
            rest -= _alone[i];
            if (weigher.Cheapest(sets[i], i, null, limit - total - rest + Hair) is not ({ } place, var cost))
                return false;
            chosen[i] = place;
            total += cost;
        }

        return total < limit;
    }

    /// <summary>What all that have a place cost together, each pair counted once.</summary>
    private double Total()
    {
        double total = 0;
        for (int i = 0; i < chosen.Length; i++)
        {
            if (chosen[i] is not { } place)
                continue;
            total += weigher.CostInView(place);
            for (int j = 0; j < i; j++)
            {
                if (chosen[j] is { } other)
                    total += weigher.Between(i, place, j, other);
            }
        }

        return total;
    }
}
