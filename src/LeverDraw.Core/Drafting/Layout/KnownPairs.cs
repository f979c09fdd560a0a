namespace LeverDraw.Drafting.Layout;

/// <summary>What the places of two annotations cost each other, kept until one of the two is asked about with another place. Not for two threads at once.</summary>
internal sealed class KnownPairs(int annotations)
{
    private readonly Pair[] _pairs = new Pair[annotations * (annotations - 1) / 2];

    /// <summary>The price kept for these two places; NaN, to be filled in, where none is.</summary>
    /// <param name="i">The annotation that may stand at <paramref name="a"/>; not the same as <paramref name="j"/>.</param>
    public ref double Price(int i, Candidate a, int j, Candidate b)
    {
        if (i < j)
            (i, a, j, b) = (j, b, i, a);
        ref Pair pair = ref _pairs[(i * (i - 1) / 2) + j];
        if (!ReferenceEquals(pair.Later, a) || !ReferenceEquals(pair.Earlier, b))
            pair = new Pair { Later = a, Earlier = b, Price = double.NaN };
        return ref pair.Price;
    }

    private struct Pair
    {
        public Candidate? Later, Earlier;
        public double Price;
    }
}
