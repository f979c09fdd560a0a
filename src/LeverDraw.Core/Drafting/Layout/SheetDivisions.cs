namespace LeverDraw.Drafting.Layout;

/// <summary>All ways to divide a sheet by cuts from edge to edge into rows and columns of rows and columns, with the pieces in their reading order.</summary>
/// <remarks>
/// For every subset of the pieces the smallest stacks are kept: those that no other beats in width and in height at once. What does not fit the sheet is dropped at once,
/// and that leaves few where room is short. A cut divides a subset into the part with its first piece, which goes above or to the left, and the rest; so the title block, which comes last, always ends in the lower right corner.
/// </remarks>
internal sealed class SheetDivisions
{
    /// <summary>Whole divisions looked at; never reached by sheets with up to eight pieces on papers they suit.</summary>
    private const int Most = 600;

    private readonly double _width;
    private readonly double _height;
    private readonly List<Cell>[] _smallest;

    /// <param name="pieces">Each with its forms, such as notes wrapped to several widths; in reading order, the title block last.</param>
    public SheetDivisions(double width, double height, IReadOnlyList<IReadOnlyList<Cell>> pieces)
    {
        _width = width + 1e-9;
        _height = height + 1e-9;
        _smallest = new List<Cell>[1 << pieces.Count];
        for (int i = 0; i < pieces.Count; i++)
            _smallest[1 << i] = [.. pieces[i].Where(Fits)];
    }

    /// <summary>Every division that fits, the pieces' smallest stacks combined in every way by the first cut.</summary>
    public List<Cell> All()
    {
        int whole = _smallest.Length - 1;
        for (int set = 1; set < whole; set++)
        {
            if ((set & (set - 1)) == 0)
                continue;
            var kept = new List<Cell>();
            Cuts(set, (vertical, first, rest) =>
            {
                (double width, double height) = SizeOf(vertical, first, rest);
                if (kept.Exists(k => k.MinWidth <= width + 1e-9 && k.MinHeight <= height + 1e-9))
                    return;
                kept.RemoveAll(k => k.MinWidth >= width && k.MinHeight >= height);
                kept.Add(StackCell.Before(vertical, first, rest));
            });
            _smallest[set] = kept;
        }

        if ((whole & (whole - 1)) == 0)
            return _smallest[whole];
        var all = new List<Cell>();
        Cuts(whole, (vertical, first, rest) =>
        {
            if (all.Count < Most)
                all.Add(StackCell.Before(vertical, first, rest));
        });
        return all;
    }

    private void Cuts(int set, Action<bool, Cell, Cell> found)
    {
        int firstPiece = set & -set;
        int others = set ^ firstPiece;
        for (int rest = others; rest > 0; rest = (rest - 1) & others)
        {
            foreach (Cell a in _smallest[set ^ rest])
            {
                // What holds the title block stays with the rest, below or to the right.
                if (a.HoldsTitle)
                    break;
                foreach (Cell b in _smallest[rest])
                {
                    foreach (bool vertical in (ReadOnlySpan<bool>)[true, false])
                    {
                        // A stack before a stack the same way is the same as one long stack: it is met by cutting off its first piece.
                        if (a is StackCell stack && stack.IsVertical == vertical)
                            continue;
                        (double width, double height) = SizeOf(vertical, a, b);
                        if (width <= _width && height <= _height)
                            found(vertical, a, b);
                    }
                }
            }
        }
    }

    private bool Fits(Cell cell) => cell.MinWidth <= _width && cell.MinHeight <= _height;

    private static (double Width, double Height) SizeOf(bool vertical, Cell a, Cell b) => vertical
        ? (Math.Max(a.MinWidth, b.MinWidth), a.MinHeight + Cell.Gap + b.MinHeight)
        : (a.MinWidth + Cell.Gap + b.MinWidth, Math.Max(a.MinHeight, b.MinHeight));
}
