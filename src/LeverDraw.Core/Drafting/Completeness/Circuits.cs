namespace LeverDraw.Drafting.Completeness;

/// <summary>Few-membered vectors of a space, so that a finding names only what belongs together.</summary>
internal static class Circuits
{
    /// <summary>Share of the largest member below which one does not take part.</summary>
    private const double Share = 1e-3;

    /// <summary>For each vector of a basis with as many zeros as elimination with pivots gives: its members' places.</summary>
    public static IEnumerable<int[]> Of(IEnumerable<double[]> basis)
    {
        double[][] rows = [.. basis.Select(b => (double[])b.Clone())];
        bool[] used = new bool[rows.Length == 0 ? 0 : rows[0].Length];
        for (int r = 0; r < rows.Length; r++)
        {
            int pivot = -1;
            for (int j = 0; j < used.Length; j++)
            {
                if (!used[j] && (pivot < 0 || Math.Abs(rows[r][j]) > Math.Abs(rows[r][pivot])))
                    pivot = j;
            }

            used[pivot] = true;
            for (int other = 0; other < rows.Length; other++)
            {
                double factor = rows[other][pivot] / rows[r][pivot];
                if (other == r || factor == 0)
                    continue;
                for (int j = 0; j < used.Length; j++)
                    rows[other][j] -= factor * rows[r][j];
            }
        }

        foreach (double[] row in rows)
        {
            double largest = row.Max(Math.Abs);
            yield return [.. Enumerable.Range(0, row.Length).Where(j => Math.Abs(row[j]) > Share * largest)];
        }
    }
}
