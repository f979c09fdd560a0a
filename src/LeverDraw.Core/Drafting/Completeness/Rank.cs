namespace LeverDraw.Drafting.Completeness;

/// <summary>Which directions a matrix sees and which it does not, with a gap between them or no answer.</summary>
/// <param name="Seen">Orthonormal directions, each of the length of a row.</param>
/// <param name="Unseen">Those in which nothing changes.</param>
internal sealed record Rank(double[][] Seen, double[][] Unseen)
{
    /// <summary>For rows or columns of length one: below <see cref="None"/> a singular value is the differences' error, above <see cref="Some"/> it is real; between them nobody can tell.</summary>
    public const double None = 1e-6, Some = 2e-5;

    /// <returns>Null when a singular value lies between the two thresholds.</returns>
    public static Rank? Of(IReadOnlyList<double[]> rows, int columns)
    {
        double[,] matrix = new double[rows.Count, columns];
        for (int i = 0; i < rows.Count; i++)
        {
            for (int j = 0; j < columns; j++)
                matrix[i, j] = rows[i][j];
        }

        SingularValues parts = SingularValues.Of(matrix);
        if (parts.Values.Any(v => v is > None and < Some))
            return null;
        double[][] directions = [.. Enumerable.Range(0, columns).Select(j => Enumerable.Range(0, columns).Select(i => parts.Right[i, j]).ToArray())];
        return new Rank(
            [.. directions.Where((_, j) => parts.Values[j] >= Some)],
            [.. directions.Where((_, j) => parts.Values[j] <= None)]);
    }
}
