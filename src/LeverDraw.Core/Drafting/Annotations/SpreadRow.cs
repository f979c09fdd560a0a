namespace LeverDraw.Drafting.Annotations;

/// <summary>Moves the members of a row apart as little as can be so that none meet.</summary>
internal static class SpreadRow
{
    /// <param name="wanted">Where the middles would stand, in ascending order.</param>
    /// <param name="room">What each takes along the row.</param>
    /// <returns>Middles in the same order, neighbours clear of each other, least sum of squared shifts (isotonic regression by pooling neighbours).</returns>
    public static double[] Apart(IReadOnlyList<double> wanted, IReadOnlyList<double> room)
    {
        int n = wanted.Count;
        double[] offset = new double[n];
        for (int i = 1; i < n; i++)
            offset[i] = offset[i - 1] + ((room[i - 1] + room[i]) / 2);
        var pools = new List<(double Sum, int Count)>(n);
        for (int i = 0; i < n; i++)
        {
            (double Sum, int Count) pool = (wanted[i] - offset[i], 1);
            while (pools.Count > 0 && pools[^1].Sum / pools[^1].Count > pool.Sum / pool.Count)
            {
                pool = (pool.Sum + pools[^1].Sum, pool.Count + pools[^1].Count);
                pools.RemoveAt(pools.Count - 1);
            }

            pools.Add(pool);
        }

        double[] placed = new double[n];
        int at = 0;
        foreach ((double sum, int count) in pools)
        {
            for (int i = 0; i < count; i++, at++)
                placed[at] = (sum / count) + offset[at];
        }

        return placed;
    }
}
