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

    /// <summary>Cost of breaking a hard rule; far above any sum of soft costs, so that a broken rule is only ever left when nothing else is possible.</summary>
    private const double Broken = 10_000;

    /// <summary>The chosen candidate for each annotation, and which of them still break a hard rule.</summary>
    public static (Candidate[] Chosen, int[] Unplaced) Solve(ViewField field, IReadOnlyList<IReadOnlyList<Candidate>> annotations)
    {
        Candidate[][] sorted = [.. annotations.Select(a => Prepare(field, a))];
        var chosen = new Candidate?[sorted.Length];
        for (int i = 0; i < sorted.Length; i++)
            chosen[i] = Cheapest(sorted[i], chosen, i, null).Best;

        for (int round = 0; round < MaxRounds; round++)
        {
            bool moved = false;
            for (int i = 0; i < sorted.Length; i++)
            {
                (Candidate best, double cost) = Cheapest(sorted[i], chosen, i, chosen[i]);
                if (ReferenceEquals(best, chosen[i]))
                    continue;
                if (cost < CostAmong(chosen[i]!, chosen, i, double.PositiveInfinity) - 1e-9)
                {
                    chosen[i] = best;
                    moved = true;
                }
            }

            if (!moved && !TryPairs(sorted, chosen))
                break;
        }

        var unplaced = new List<int>();
        for (int i = 0; i < chosen.Length; i++)
        {
            if (CostAmong(chosen[i]!, chosen, i, double.PositiveInfinity) >= Broken)
                unplaced.Add(i);
        }

        return ([.. chosen.Select(c => c!)], [.. unplaced]);
    }

    /// <summary>Where a hard rule is still broken, moves the other party first and then the sufferer.</summary>
    private static bool TryPairs(Candidate[][] sorted, Candidate?[] chosen)
    {
        for (int i = 0; i < sorted.Length; i++)
        {
            if (CostAmong(chosen[i]!, chosen, i, double.PositiveInfinity) < Broken)
                continue;
            for (int j = 0; j < sorted.Length; j++)
            {
                if (j == i || Between(chosen[i]!, chosen[j]!) < Broken)
                    continue;
                (Candidate? was, Candidate? wasOther) = (chosen[i], chosen[j]);
                double before = CostAmong(was!, chosen, i, double.PositiveInfinity) + CostAmong(wasOther!, chosen, j, double.PositiveInfinity);
                chosen[j] = null;
                chosen[i] = Cheapest(sorted[i], chosen, i, was).Best;
                chosen[j] = Cheapest(sorted[j], chosen, j, wasOther).Best;
                double after = CostAmong(chosen[i]!, chosen, i, double.PositiveInfinity) + CostAmong(chosen[j]!, chosen, j, double.PositiveInfinity);
                if (after < before - 1e-9)
                    return true;
                (chosen[i], chosen[j]) = (was, wasOther);
            }
        }

        return false;
    }

    /// <summary>Adds what the view's own ink costs and sorts; places whose lettering would meet the view are kept only as a last resort.</summary>
    private static Candidate[] Prepare(ViewField field, IReadOnlyList<Candidate> candidates)
    {
        foreach (Candidate candidate in candidates)
        {
            double cost = 0;
            foreach (OrientedBox text in candidate.Texts)
            {
                if (field.StrikesText(text))
                    cost += Broken;
            }

            if (cost == 0)
            {
                foreach (Stroke stroke in candidate.Strokes)
                {
                    (int crossings, bool runsAlong) = field.Count(stroke);
                    cost += crossings * CrossingFeature(stroke.Kind);
                    if (runsAlong)
                        cost += 60;
                }
            }

            candidate.Cost += cost;
        }

        return [.. candidates.OrderBy(c => c.Cost)];
    }

    private static (Candidate Best, double Cost) Cheapest(Candidate[] candidates, Candidate?[] chosen, int self, Candidate? current)
    {
        Candidate best = current ?? candidates[0];
        double bestCost = CostAmong(best, chosen, self, double.PositiveInfinity);
        foreach (Candidate candidate in candidates)
        {
            // Sorted by own cost: nothing further on can be cheaper.
            if (candidate.Cost >= bestCost)
                break;
            double cost = CostAmong(candidate, chosen, self, bestCost);
            if (cost < bestCost)
                (best, bestCost) = (candidate, cost);
        }

        return (best, bestCost);
    }

    private static double CostAmong(Candidate candidate, Candidate?[] chosen, int self, double limit)
    {
        double cost = candidate.Cost;
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
                    cost += Broken;
            }

            foreach (Stroke stroke in b.Strokes)
            {
                if (text.Meets(stroke.A, stroke.B))
                    cost += Broken;
            }
        }

        foreach (OrientedBox text in b.Texts)
        {
            foreach (Stroke stroke in a.Strokes)
            {
                if (text.Meets(stroke.A, stroke.B))
                    cost += Broken;
            }
        }

        foreach (Stroke s in a.Strokes)
        {
            foreach (Stroke t in b.Strokes)
            {
                if (s.Crosses(t))
                    cost += CrossingOther(s.Kind, t.Kind);
                else if (s.Kind == t.Kind && s.Kind != StrokeKind.ExtensionLine && s.RunsAlong(t, 0.8))
                    cost += 80;
            }
        }

        return cost;
    }

    private static double CrossingFeature(StrokeKind kind) => kind switch
    {
        StrokeKind.ExtensionLine => 4,
        StrokeKind.Leader => 9,
        _ => 9,
    };

    private static double CrossingOther(StrokeKind a, StrokeKind b) => (a, b) switch
    {
        (StrokeKind.ExtensionLine, StrokeKind.ExtensionLine) => 4,
        (StrokeKind.DimensionLine, StrokeKind.DimensionLine) => 40,
        (StrokeKind.Leader, StrokeKind.Leader) => 60,
        (StrokeKind.Leader, _) or (_, StrokeKind.Leader) => 22,
        _ => 16,
    };
}
