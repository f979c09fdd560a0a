namespace LeverDraw.Drafting.Layout;

/// <summary>Chooses one candidate for each annotation of a view so that no lettering meets other lettering or any line, and crossings, lengths and tiers cost least.</summary>
/// <remarks>
/// Greedy in the given order, then rounds of improvement in which each annotation in turn may move to the cheapest place that the others leave
/// (coordinate descent; the total cost never rises, so it ends); where that ends with a broken rule, two move together, and then a few in every combination.
/// Ties fall to the earlier candidate: same input, same sheet.
/// </remarks>
public sealed class AnnotationSolver
{
    /// <summary>Rounds of improvement at the most; more than four has not been seen to change anything.</summary>
    private const int MaxRounds = 6;

    private readonly ViewField _field;
    private readonly Sprawl _sprawl;
    private readonly Candidate[][] _sorted;
    private readonly Candidate?[] _chosen;

    private AnnotationSolver(ViewField field, IReadOnlyList<IReadOnlyList<Candidate>> annotations, Sprawl sprawl)
    {
        _field = field;
        _sprawl = sprawl;
        _sorted = new Candidate[annotations.Count][];
        for (int i = 0; i < _sorted.Length; i++)
            _sorted[i] = ByCost(annotations[i]);
        _chosen = new Candidate?[_sorted.Length];
    }

    /// <summary>The chosen candidate for each annotation, and which of them still break a hard rule.</summary>
    public static (Candidate[] Chosen, int[] Unplaced) Solve(ViewField field, IReadOnlyList<IReadOnlyList<Candidate>> annotations, Sprawl sprawl = default) =>
        new AnnotationSolver(field, annotations, sprawl).Run();

    /// <summary>Cheapest first, equals in their own order.</summary>
    public static Candidate[] ByCost(IReadOnlyList<Candidate> candidates)
    {
        Candidate[] sorted = [.. candidates];
        var keys = new (double Cost, int At)[sorted.Length];
        bool inOrder = true;
        for (int i = 0; i < keys.Length; i++)
        {
            keys[i] = (sorted[i].Cost, i);
            inOrder &= i == 0 || keys[i - 1].Cost <= keys[i].Cost;
        }

        if (!inOrder)
            Array.Sort(keys, sorted);
        return sorted;
    }

    private (Candidate[] Chosen, int[] Unplaced) Run()
    {
        for (int i = 0; i < _sorted.Length; i++)
            _chosen[i] = Cheapest(i, null).Best;

        for (int round = 0; round < MaxRounds; round++)
        {
            if (!MoveEach() && !TryPairs() && !TryTogether())
                break;
        }

        var unplaced = new List<int>();
        for (int i = 0; i < _chosen.Length; i++)
        {
            if (CostAmong(_chosen[i]!, i) >= PlacingCosts.Broken)
                unplaced.Add(i);
        }

        return ([.. _chosen.Select(c => c!)], [.. unplaced]);
    }

    private bool MoveEach()
    {
        bool moved = false;
        for (int i = 0; i < _sorted.Length; i++)
        {
            (Candidate best, double cost) = Cheapest(i, _chosen[i]);
            if (ReferenceEquals(best, _chosen[i]) || cost >= CostAmong(_chosen[i]!, i) - 1e-9)
                continue;
            _chosen[i] = best;
            moved = true;
        }

        return moved;
    }

    /// <summary>Where a hard rule is still broken, moves the other party first and then the sufferer.</summary>
    private bool TryPairs()
    {
        for (int i = 0; i < _sorted.Length; i++)
        {
            if (CostAmong(_chosen[i]!, i) < PlacingCosts.Broken)
                continue;
            for (int j = 0; j < _sorted.Length; j++)
            {
                if (j == i || PairCost.Between(_chosen[i]!, _chosen[j]!) < PlacingCosts.Broken)
                    continue;
                (Candidate? was, Candidate? wasOther) = (_chosen[i], _chosen[j]);
                double before = PairAmong(i, j);
                _chosen[j] = null;
                _chosen[i] = Cheapest(i, was).Best;
                _chosen[j] = Cheapest(j, wasOther).Best;
                if (PairAmong(i, j) < before - 1e-9)
                    return true;
                (_chosen[i], _chosen[j]) = (was, wasOther);
            }
        }

        return false;
    }

    private bool TryTogether()
    {
        for (int i = 0; i < _sorted.Length; i++)
        {
            if (CostAmong(_chosen[i]!, i) >= PlacingCosts.Broken && new JointMove(_field, _sprawl, _sorted, _chosen).Try(i))
                return true;
        }

        return false;
    }

    /// <summary>What two cost together: their own cost to each other stands in both sums and must count once, or a dearer pair could win.</summary>
    private double PairAmong(int i, int j) =>
        CostAmong(_chosen[i]!, i) + CostAmong(_chosen[j]!, j) - PairCost.Between(_chosen[i]!, _chosen[j]!);

    private (Candidate Best, double Cost) Cheapest(int self, Candidate? current)
    {
        Candidate best = current ?? _sorted[self][0];
        double bestCost = CostAmong(best, self);
        foreach (Candidate candidate in _sorted[self])
        {
            // Sorted by own cost: nothing further on can be cheaper.
            if (candidate.Cost >= bestCost)
                break;
            double cost = CostAmong(candidate, self, bestCost);
            if (cost < bestCost)
                (best, bestCost) = (candidate, cost);
        }

        return (best, bestCost);
    }

    private double CostAmong(Candidate candidate, int self, double limit = double.PositiveInfinity)
    {
        double cost = candidate.CostIn(_field);
        if (cost < limit)
            cost += _sprawl.Of(candidate.Bounds);
        for (int i = 0; i < _chosen.Length && cost < limit; i++)
        {
            if (i != self && _chosen[i] is { } other)
                cost += PairCost.Between(candidate, other);
        }

        return cost;
    }
}
