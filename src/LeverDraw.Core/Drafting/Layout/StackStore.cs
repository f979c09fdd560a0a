namespace LeverDraw.Drafting.Layout;

/// <summary>The stacks of all subsets of a sheet's pieces, one subset after the other.</summary>
internal sealed class StackStore
{
    private Stack[] _stacks = new Stack[128];

    public int Count { get; private set; }

    public ReadOnlySpan<Stack> Span(int start, int count) => _stacks.AsSpan(start, count);

    public void Add(in Stack stack)
    {
        Grow();
        _stacks[Count++] = stack;
    }

    /// <summary>Adds a stack to the last subset, which begins at a place in the store, unless another is no larger in width and in height; takes those out that it beats so. The subset's stacks are kept sorted: ever wider and lower.</summary>
    public void AddSmallest(int start, in Stack stack)
    {
        int at = start;
        while (at < Count && _stacks[at].Width < stack.Width)
            at++;
        int last = at;
        while (last < Count && _stacks[last].Width <= stack.Width + 1e-9)
            last++;
        if (last > start && _stacks[last - 1].Height <= stack.Height + 1e-9)
            return;
        int beaten = at;
        while (beaten < Count && _stacks[beaten].Height >= stack.Height)
            beaten++;
        if (beaten == at)
            Grow();
        Array.Copy(_stacks, beaten, _stacks, at + 1, Count - beaten);
        _stacks[at] = stack;
        Count += 1 - (beaten - at);
    }

    private void Grow()
    {
        if (Count == _stacks.Length)
            Array.Resize(ref _stacks, 2 * Count);
    }
}
