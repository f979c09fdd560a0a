using System.Collections.Immutable;

namespace LeverDraw.Drafting.Completeness;

/// <summary>Weighs the sizes of a sheet against the freedoms of its part.</summary>
internal sealed class SizeWeighing(ActingSpace space, ImmutableArray<SheetSize> sizes, double[,] slopes)
{
    private readonly double[]?[] _rows = [.. sizes.Select((_, i) => space.Row(slopes, i))];

    /// <returns>Null when a singular value lies in the gap.</returns>
    public Dimensioning? Verdict()
    {
        int freedoms = space.Directions.Length;
        int[] full = [.. Standing(SizeStanding.Full)];
        if (Rank.Of(Transposed(full, freedoms), full.Length) is not { } among || Rank.Of([.. full.Select(i => _rows[i]!)], freedoms) is not { } held)
            return null;

        List<int> holding = [.. full];
        foreach (int note in Standing(SizeStanding.General).Where(i => Sees(i, held)))
        {
            // A general note counts only where no other size holds.
            if (!Sees(note, held))
                continue;
            holding.Add(note);
            if (Rank.Of([.. holding.Select(i => _rows[i]!)], freedoms) is not { } more)
                return null;
            held = more;
        }

        int[] wrong = [.. Standing(SizeStanding.Reference).Where(i => Sees(i, held))];
        holding.AddRange(wrong);
        if (wrong.Length > 0)
        {
            if (Rank.Of([.. holding.Select(i => _rows[i]!)], freedoms) is not { } more)
                return null;
            held = more;
        }

        return new Dimensioning(
            freedoms,
            [.. Circuits.Of(held.Unseen.Select(space.Parameters)).Select(c => c.Select(j => space.Names[j]).ToImmutableArray())],
            [.. Circuits.Of(among.Unseen).Select(c => c.Select(j => sizes[full[j]].Name).ToImmutableArray())],
            [.. wrong.Select(i => sizes[i].Name)],
            null);
    }

    /// <summary>Sizes of a standing that say something about metal.</summary>
    private IEnumerable<int> Standing(SizeStanding standing) =>
        Enumerable.Range(0, sizes.Length).Where(i => sizes[i].Standing == standing && _rows[i] is not null);

    /// <summary>Whether a size changes in a direction that nothing holds yet.</summary>
    private bool Sees(int size, Rank held) =>
        Math.Sqrt(held.Unseen.Sum(d => Math.Pow(d.Select((x, j) => x * _rows[size]![j]).Sum(), 2))) > Rank.Some;

    private double[][] Transposed(int[] rows, int freedoms) =>
        [.. Enumerable.Range(0, freedoms).Select(k => rows.Select(i => _rows[i]![k]).ToArray())];
}
