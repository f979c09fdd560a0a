namespace LeverDraw.Drafting.Layout;

/// <summary>Moves a few annotations that stand in each other's way together: every combination of their places is tried, but for those that a bound on the price rules out.</summary>
internal sealed class JointMove(ViewField field, Sprawl sprawl, Candidate[][] sorted, Candidate?[] chosen)
{
    /// <summary>Annotations moved together at the most.</summary>
    private const int MostMembers = 6;

    /// <summary>Of each one's places, those looked at for who stands in the way.</summary>
    private const int PlacesAsked = 24;

    /// <summary>Places tried before the search gives up: some milliseconds.</summary>
    private const int Budget = 4000;

    private int _left;
    private double _bestCost;
    private Candidate[]? _best;

    /// <summary>True when a cheaper combination was found, and taken.</summary>
    public bool Try(int sufferer)
    {
        int[] members = Members(sufferer);
        if (members.Length < 2)
            return false;
        Candidate?[] was = [.. members.Select(m => chosen[m])];
        foreach (int member in members)
            chosen[member] = null;
        _bestCost = 0;
        for (int i = 0; i < members.Length; i++)
        {
            _bestCost += OwnCost(was[i]!, double.PositiveInfinity);
            chosen[members[i]] = was[i];
        }

        _bestCost -= 1e-9;
        _best = null;
        _left = Budget;
        foreach (int member in members)
            chosen[member] = null;
        double[] rest = new double[members.Length + 1];
        for (int i = members.Length - 1; i >= 0; i--)
            rest[i] = rest[i + 1] + sorted[members[i]][0].Cost;
        Search(members, 0, 0, rest);
        for (int i = 0; i < members.Length; i++)
            chosen[members[i]] = _best is null ? was[i] : _best[i];
        return _best is not null;
    }

    /// <summary>The sufferer, those it clashes with, and those who stand where one of these could go.</summary>
    private int[] Members(int sufferer)
    {
        List<int> members = [sufferer];
        for (int at = 0; at < members.Count && members.Count < MostMembers; at++)
        {
            IEnumerable<Candidate> places = sorted[members[at]].Take(PlacesAsked).Prepend(chosen[members[at]]!);
            foreach (Candidate place in places.Where(p => p.CostIn(field) < PlacingCosts.Broken))
            {
                for (int j = 0; j < chosen.Length && members.Count < MostMembers; j++)
                {
                    if (!members.Contains(j) && PairCost.Between(place, chosen[j]!) >= PlacingCosts.Broken)
                        members.Add(j);
                }
            }
        }

        return [.. members];
    }

    private void Search(int[] members, int depth, double cost, double[] rest)
    {
        if (depth == members.Length)
        {
            _bestCost = cost - 1e-9;
            _best = [.. members.Select(m => chosen[m]!)];
            return;
        }

        int member = members[depth];
        foreach (Candidate place in sorted[member])
        {
            double room = _bestCost - cost - rest[depth + 1];
            if (place.Cost >= room || _left-- <= 0)
                break;
            double own = OwnCost(place, room);
            if (own >= room)
                continue;
            chosen[member] = place;
            Search(members, depth + 1, cost + own, rest);
            chosen[member] = null;
        }
    }

    /// <summary>A place's price among the view's ink and all that are placed.</summary>
    private double OwnCost(Candidate place, double limit)
    {
        double cost = place.CostIn(field) + sprawl.Of(place.Bounds);
        foreach (Candidate? other in chosen)
        {
            if (cost >= limit)
                break;
            if (other is not null)
                cost += PairCost.Between(place, other);
        }

        return cost;
    }
}
