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
    private readonly IReadOnlyList<IReadOnlyList<Cell>> _pieces;
    private readonly Stack[][] _smallest;
    private readonly Cell?[][] _built;

    /// <param name="pieces">Each with its forms, such as notes wrapped to several widths; in reading order, the title block last.</param>
    public SheetDivisions(double width, double height, IReadOnlyList<IReadOnlyList<Cell>> pieces)
    {
        _width = width + 1e-9;
        _height = height + 1e-9;
        _pieces = pieces;
        _smallest = new Stack[1 << pieces.Count][];
        _built = new Cell?[_smallest.Length][];
        for (int i = 0; i < pieces.Count; i++)
            _smallest[1 << i] = [.. pieces[i].Select((cell, form) => Stack.Of(cell, form)).Where(Fits)];
        BuildSubsets();
    }

    private int Whole => _smallest.Length - 1;

    /// <summary>Whether any division fits.</summary>
    public bool Any()
    {
        if (_pieces.Count == 1)
            return _smallest[Whole].Length > 0;
        foreach (Stack _ in Cuts(Whole))
            return true;
        return false;
    }

    /// <summary>Every division that fits, the pieces' smallest stacks combined in every way by the first cut.</summary>
    public IEnumerable<Cell> All() =>
        _pieces.Count == 1 ? _smallest[Whole].Select(s => CellOf(Whole, s)) : Cuts(Whole).Take(Most).Select(s => CellOf(Whole, s));

    private void BuildSubsets()
    {
        var kept = new List<Stack>();
        for (int set = 1; set < Whole; set++)
        {
            if ((set & (set - 1)) == 0)
                continue;
            kept.Clear();
            foreach (Stack found in Cuts(set))
            {
                if (!IsBeaten(kept, found))
                {
                    kept.RemoveAll(k => k.Width >= found.Width && k.Height >= found.Height);
                    kept.Add(found);
                }
            }

            _smallest[set] = [.. kept];
        }
    }

    private static bool IsBeaten(List<Stack> kept, Stack found)
    {
        foreach (Stack k in kept)
        {
            if (k.Width <= found.Width + 1e-9 && k.Height <= found.Height + 1e-9)
                return true;
        }

        return false;
    }

    private IEnumerable<Stack> Cuts(int set)
    {
        int firstPiece = set & -set;
        int others = set ^ firstPiece;
        for (int rest = others; rest > 0; rest = (rest - 1) & others)
        {
            Stack[] firsts = _smallest[set ^ rest], rests = _smallest[rest];
            for (int a = 0; a < firsts.Length; a++)
            {
                // What holds the title block stays with the rest, below or to the right.
                if (firsts[a].HoldsTitle)
                    break;
                for (int b = 0; b < rests.Length; b++)
                {
                    // A stack before a stack the same way is the same as one long stack: it is met by cutting off its first piece.
                    if (firsts[a].Way != Way.Down && Join(Way.Down, set ^ rest, a, rest, b) is { } down && Fits(down))
                        yield return down;
                    if (firsts[a].Way != Way.Across && Join(Way.Across, set ^ rest, a, rest, b) is { } across && Fits(across))
                        yield return across;
                }
            }
        }
    }

    private Stack Join(Way way, int firstSet, int first, int restSet, int rest)
    {
        ref readonly Stack a = ref _smallest[firstSet][first];
        ref readonly Stack b = ref _smallest[restSet][rest];
        return way == Way.Down
            ? new Stack(Math.Max(a.Width, b.Width), a.Height + Cell.Gap + b.Height, way, b.HoldsTitle, firstSet, first, restSet, rest)
            : new Stack(a.Width + Cell.Gap + b.Width, Math.Max(a.Height, b.Height), way, b.HoldsTitle, firstSet, first, restSet, rest);
    }

    private bool Fits(Stack stack) => stack.Width <= _width && stack.Height <= _height;

    private Cell CellOf(int set, Stack stack) => stack.Way == Way.Piece
        ? _pieces[int.TrailingZeroCount(set)][stack.First]
        : StackCell.Before(stack.Way == Way.Down, Kept(stack.FirstSet, stack.First), Kept(stack.RestSet, stack.Rest));

    private Cell Kept(int set, int at)
    {
        Cell?[] built = _built[set] ??= new Cell?[_smallest[set].Length];
        return built[at] ??= CellOf(set, _smallest[set][at]);
    }

    private enum Way : byte
    {
        Piece,
        Down,
        Across,
    }

    /// <summary>The room one stack takes, and from which two it was put together; for a single piece, which of its forms it is.</summary>
    private readonly record struct Stack(double Width, double Height, Way Way, bool HoldsTitle, int FirstSet, int First, int RestSet, int Rest)
    {
        public static Stack Of(Cell piece, int form) => new(piece.MinWidth, piece.MinHeight, Way.Piece, piece.HoldsTitle, 0, form, 0, 0);
    }
}
