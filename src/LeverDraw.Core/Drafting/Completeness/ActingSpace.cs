using System.Collections.Immutable;

namespace LeverDraw.Drafting.Completeness;

/// <summary>The directions in parameter space that move metal. Parameters that do not act drop out, and of those that only act together one freedom is left.</summary>
/// <param name="Columns">The acting parameters.</param>
/// <param name="Scale">For each of them, the change that moves the shape by one millimetre in all.</param>
/// <param name="Directions">Orthonormal, in scaled parameters.</param>
internal sealed record ActingSpace(ImmutableArray<string> Names, int[] Columns, double[] Scale, double[][] Directions)
{
    /// <summary>Movement, in millimetres for each millimetre, that is the differences' error.</summary>
    private const double Still = 1e-7;

    public static ActingSpace? Of(double[,] shape, ImmutableArray<ShapeParameter> parameters)
    {
        double[] lengths = [.. parameters.Select((_, j) => Math.Sqrt(Enumerable.Range(0, shape.GetLength(0)).Sum(i => shape[i, j] * shape[i, j])))];
        int[] columns = [.. Enumerable.Range(0, lengths.Length).Where(j => lengths[j] * parameters[j].Unit > Still)];
        double[] scale = [.. columns.Select(j => 1 / lengths[j])];
        double[][] rows = [.. Enumerable.Range(0, shape.GetLength(0)).Select(i => columns.Select((c, j) => shape[i, c] * scale[j]).ToArray())];
        return Rank.Of(rows, columns.Length) is { } rank
            ? new ActingSpace([.. columns.Select(c => parameters[c].Name)], columns, scale, rank.Seen)
            : null;
    }

    /// <summary>A size's slopes along the directions, made length one; null when it says nothing that moves metal.</summary>
    public double[]? Row(double[,] slopes, int row)
    {
        double[] along = [.. Directions.Select(d => d.Select((x, j) => x * scale(j)).Sum())];
        double length = Math.Sqrt(along.Sum(x => x * x));
        return length > Still ? [.. along.Select(x => x / length)] : null;
        double scale(int j) => slopes[row, Columns[j]] * Scale[j];
    }

    /// <summary>A direction given along <see cref="Directions"/>, in scaled parameters.</summary>
    public double[] Parameters(double[] direction) =>
        [.. Columns.Select((_, j) => Directions.Select((d, k) => d[j] * direction[k]).Sum())];
}
