namespace LeverDraw.Diagnostics;

/// <summary>The known name a mistyped one was most likely meant to be.</summary>
public static class NearestName
{
    private const int LongestCompared = 80;

    /// <summary>The nearest candidate, or null when none is near. Ties go to the first in order.</summary>
    /// <remarks>Near: at most a third of the longer name's letters (and at least one) are to be changed. Case and the difference of '_' and '-' cost nothing.</remarks>
    public static string? Of(string wrong, IEnumerable<string> candidates)
    {
        if (wrong.Length is 0 or > LongestCompared)
            return null;
        string plain = Plain(wrong);
        string? best = null;
        int bestCost = int.MaxValue;
        foreach (string candidate in candidates)
        {
            int allowed = Math.Max(1, Math.Max(plain.Length, candidate.Length) / 3);
            int cost = Distance(plain, Plain(candidate));
            if (cost <= allowed && cost < bestCost)
                (best, bestCost) = (candidate, cost);
        }
        return best;
    }

    /// <summary>Least number of single letters put in, left out, changed, or swapped with their neighbour.</summary>
    public static int Distance(string a, string b)
    {
        int[] beforeLast = new int[b.Length + 1];
        int[] last = new int[b.Length + 1];
        int[] row = new int[b.Length + 1];
        for (int j = 0; j <= b.Length; j++)
            last[j] = j;
        for (int i = 1; i <= a.Length; i++)
        {
            row[0] = i;
            for (int j = 1; j <= b.Length; j++)
            {
                int change = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                row[j] = Math.Min(change, Math.Min(last[j], row[j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    row[j] = Math.Min(row[j], beforeLast[j - 2] + 1);
            }
            (beforeLast, last, row) = (last, row, beforeLast);
        }
        return last[b.Length];
    }

    private static string Plain(string name) => name.ToLowerInvariant().Replace('-', '_');
}
