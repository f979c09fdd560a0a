namespace LeverDraw.Drafting.Layout;

/// <summary>Chooses one candidate for each annotation of a view so that no lettering meets other lettering or any line, and crossings, lengths and tiers cost least.</summary>
/// <remarks>
/// Greedy in the given order, then rounds of improvement in which each annotation in turn may move to the cheapest place that the others leave
/// (coordinate descent; the total cost never rises, so it ends). Ties fall to the earlier candidate: same input, same sheet.
/// </remarks>
public static class AnnotationSolver
{
    /// <summary>Rounds of improvement at the most; more than four has not been seen to change anything.</summary>
    private const int MaxRounds = 6;

    /// <summary>The chosen candidate for each annotation, and which of them still break a hard rule.</summary>
    public static (Candidate[] Chosen, int[] Unplaced) Solve(ViewField field, IReadOnlyList<IReadOnlyList<Candidate>> annotations)
    {
        Candidate[][] sorted = [.. annotations.Select(a => a.OrderBy(c => c.Cost).ToArray())];
        var chosen = new Candidate?[sorted.Length];
        for (int i = 0; i < sorted.Length; i++)
            chosen[i] = Cheapest(field, sorted[i], chosen, i, null).Best;

        for (int round = 0; round < MaxRounds; round++)
        {
            bool moved = false;
            for (int i = 0; i < sorted.Length; i++)
            {
                (Candidate best, double cost) = Cheapest(field, sorted[i], chosen, i, chosen[i]);
                if (ReferenceEquals(best, chosen[i]))
                    continue;
                if (cost < CostAmong(field, chosen[i]!, chosen, i, double.PositiveInfinity) - 1e-9)
                {
                    chosen[i] = best;
                    moved = true;
                }
            }

            if (!moved && !TryPairs(field, sorted, chosen))
                break;
        }

        var unplaced = new List<int>();
        for (int i = 0; i < chosen.Length; i++)
        {
            if (CostAmong(field, chosen[i]!, chosen, i, double.PositiveInfinity) >= PlacingCosts.Broken)
                unplaced.Add(i);
        }

        return ([.. chosen.Select(c => c!)], [.. unplaced]);
    }

    /// <summary>Where a hard rule is still broken, moves the other party first and then the sufferer.</summary>
    private static bool TryPairs(ViewField field, Candidate[][] sorted, Candidate?[] chosen)
    {
        for (int i = 0; i < sorted.Length; i++)
        {
            if (CostAmong(field, chosen[i]!, chosen, i, double.PositiveInfinity) < PlacingCosts.Broken)
                continue;
            for (int j = 0; j < sorted.Length; j++)
            {
                if (j == i || Between(chosen[i]!, chosen[j]!) < PlacingCosts.Broken)
                    continue;
                (Candidate? was, Candidate? wasOther) = (chosen[i], chosen[j]);
                // What the two cost each other stands in both sums: it must count once, or a dearer pair could win.
                double before = CostAmong(field, was!, chosen, i, double.PositiveInfinity) + CostAmong(field, wasOther!, chosen, j, double.PositiveInfinity) - Between(was!, wasOther!);
                chosen[j] = null;
                chosen[i] = Cheapest(field, sorted[i], chosen, i, was).Best;
                chosen[j] = Cheapest(field, sorted[j], chosen, j, wasOther).Best;
                double after = CostAmong(field, chosen[i]!, chosen, i, double.PositiveInfinity) + CostAmong(field, chosen[j]!, chosen, j, double.PositiveInfinity) - Between(chosen[i]!, chosen[j]!);
                if (after < before - 1e-9)
                    return true;
                (chosen[i], chosen[j]) = (was, wasOther);
            }
        }

        return false;
    }

    private static (Candidate Best, double Cost) Cheapest(ViewField field, Candidate[] candidates, Candidate?[] chosen, int self, Candidate? current)
    {
        Candidate best = current ?? candidates[0];
        double bestCost = CostAmong(field, best, chosen, self, double.PositiveInfinity);
        foreach (Candidate candidate in candidates)
        {
            // Sorted by own cost: nothing further on can be cheaper.
            if (candidate.Cost >= bestCost)
                break;
            double cost = CostAmong(field, candidate, chosen, self, bestCost);
            if (cost < bestCost)
                (best, bestCost) = (candidate, cost);
        }

        return (best, bestCost);
    }

    private static double CostAmong(ViewField field, Candidate candidate, Candidate?[] chosen, int self, double limit)
    {
        double cost = candidate.CostIn(field);
        for (int i = 0; i < chosen.Length && cost < limit; i++)
        {
            if (i != self && chosen[i] is { } other)
                cost += Between(candidate, other);
        }

        return cost;
    }

    private static double Between(Candidate a, Candidate b)
    {
        if (!a.Bounds.Overlaps(b.Bounds))
            return 0;
        double cost = 0;
        foreach (OrientedBox text in a.Texts)
        {
            foreach (OrientedBox other in b.Texts)
            {
                if (text.Overlaps(other))
                    cost += PlacingCosts.Broken;
            }

            cost += Strikes(b.Strokes, text) + Strikes(b.Heads, text);
        }

        foreach (OrientedBox text in b.Texts)
            cost += Strikes(a.Strokes, text) + Strikes(a.Heads, text);

        foreach (Stroke s in a.Strokes)
        {
            foreach (Stroke t in b.Strokes)
            {
                if (!s.IsNear(t, 1))
                    continue;
                if (s.Crosses(t))
                    cost += PlacingCosts.CrossingOther(s.Kind, t.Kind);
                else if (MayNotRunAlong(s.Kind, t.Kind) && s.RunsAlong(t, 0.8))
                    cost += PlacingCosts.AlongOther;
            }
        }

        return cost;
    }

    private static double Strikes(Stroke[] strokes, in OrientedBox text)
    {
        double cost = 0;
        foreach (Stroke stroke in strokes)
        {
            if (text.Meets(stroke.A, stroke.B))
                cost += PlacingCosts.Broken;
        }

        return cost;
    }

    /// <summary>Extension lines may share a line with others; anything else may not.</summary>
    private static bool MayNotRunAlong(StrokeKind a, StrokeKind b) =>
        a == StrokeKind.Mark || b == StrokeKind.Mark || (a != StrokeKind.ExtensionLine && b != StrokeKind.ExtensionLine);
}
