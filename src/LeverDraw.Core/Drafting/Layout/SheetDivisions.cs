using System.Runtime.InteropServices;

namespace LeverDraw.Drafting.Layout;

/// <summary>All ways to divide a sheet by cuts from edge to edge into rows and columns of rows and columns, with the pieces in their reading order.</summary>
/// <remarks>
/// For every subset of the pieces the smallest stacks are kept: those that no other beats in width and in height at once. What does not fit the sheet, or leaves too little of it for the other pieces, is dropped at once,
/// and that leaves few where room is short. A cut divides a subset into the part with its first piece, which goes above or to the left, and the rest; so the title block, which comes last, always ends in the lower right corner.
/// </remarks>
internal sealed class SheetDivisions
{
    /// <summary>Whole divisions looked at; never reached by sheets with up to eight pieces on papers they suit.</summary>
    private const int Most = 600;

    private readonly double _width;
    private readonly double _height;
    private readonly double _room;
    private readonly IReadOnlyList<IReadOnlyList<Cell>> _pieces;

    /// <summary>Of each subset: where its smallest stacks stand in the store, and how many; none made yet where the number is below zero.</summary>
    private readonly (int Start, int Count)[] _smallest;

    private readonly List<Stack> _store = new(128);
    private readonly List<Stack> _kept = [];

    /// <summary>The least room that the pieces of each subset take, each with half a gap all round.</summary>
    private readonly double[] _least;

    /// <param name="pieces">Each with its forms, such as notes wrapped to several widths; in reading order, the title block last.</param>
    public SheetDivisions(double width, double height, IReadOnlyList<IReadOnlyList<Cell>> pieces)
    {
        _width = width + 1e-9;
        _height = height + 1e-9;
        _room = (_width + Cell.Gap) * (_height + Cell.Gap);
        _pieces = pieces;
        _smallest = new (int, int)[1 << pieces.Count];
        _least = new double[_smallest.Length];
        Array.Fill(_smallest, (0, -1));
        for (int i = 0; i < pieces.Count; i++)
        {
            double least = double.PositiveInfinity;
            foreach (Cell form in pieces[i])
                least = Math.Min(least, RoomOf(form.MinWidth, form.MinHeight));
            for (int set = 1 << i; set < 2 << i; set++)
                _least[set] = least + _least[set ^ (1 << i)];
        }

        for (int i = 0; i < pieces.Count; i++)
            StoreForms(1 << i, pieces[i]);
    }

    private int Whole => _smallest.Length - 1;

    /// <summary>Some division that fits, or null.</summary>
    public DivisionPlan? Any()
    {
        var found = new List<Stack>(1);
        if (_pieces.Count == 1)
            found.AddRange(Smallest(Whole));
        else if (_least[Whole] <= _room && EachPairFits())
            Collect(Whole, found, 1);
        return found.Count > 0 ? PlanOf(Whole, found[0]) : null;
    }

    /// <summary>Every division that fits, the pieces' smallest stacks combined in every way by the first cut.</summary>
    public IEnumerable<Cell> All()
    {
        var found = new List<Stack>();
        if (_pieces.Count == 1)
            found.AddRange(Smallest(Whole));
        else if (_least[Whole] <= _room)
            Collect(Whole, found, Most);
        var built = new Cell?[_store.Count];
        return found.Select(s => CellOf(Whole, s, built));
    }

    /// <summary>Any two pieces must go side by side or one above the other: soon asked, and often enough to tell.</summary>
    private bool EachPairFits()
    {
        for (int i = 1; i < _pieces.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                if (!PairFits(Smallest(1 << i), Smallest(1 << j)))
                    return false;
            }
        }

        return true;
    }

    private bool PairFits(ReadOnlySpan<Stack> ones, ReadOnlySpan<Stack> others)
    {
        foreach (ref readonly Stack one in ones)
        {
            foreach (ref readonly Stack other in others)
            {
                if (one.Width + Cell.Gap + other.Width <= _width || one.Height + Cell.Gap + other.Height <= _height)
                    return true;
            }
        }

        return false;
    }

    private void StoreForms(int set, IReadOnlyList<Cell> forms)
    {
        int start = _store.Count;
        for (int i = 0; i < forms.Count; i++)
        {
            Stack stack = Stack.Of(forms[i], i);
            if (Fits(stack.Width, stack.Height, _least[Whole ^ set]))
                _store.Add(stack);
        }

        _smallest[set] = (start, _store.Count - start);
    }

    private ReadOnlySpan<Stack> Smallest(int set) =>
        CollectionsMarshal.AsSpan(_store).Slice(_smallest[set].Start, _smallest[set].Count);

    /// <summary>Sees to it that a subset's smallest stacks are in the store.</summary>
    private void Make(int set)
    {
        if (_smallest[set].Count >= 0)
            return;
        int firstPiece = set & -set, others = set ^ firstPiece;
        for (int rest = others; rest > 0; rest = (rest - 1) & others)
        {
            Make(set ^ rest);
            Make(rest);
        }

        _kept.Clear();
        Collect(set, _kept, int.MaxValue);
        _smallest[set] = (_store.Count, _kept.Count);
        _store.AddRange(_kept);
    }

    private static void Keep(List<Stack> kept, in Stack found)
    {
        foreach (ref readonly Stack k in CollectionsMarshal.AsSpan(kept))
        {
            if (k.Width <= found.Width + 1e-9 && k.Height <= found.Height + 1e-9)
                return;
        }

        int left = 0;
        for (int i = 0; i < kept.Count; i++)
        {
            if (kept[i].Width < found.Width || kept[i].Height < found.Height)
                kept[left++] = kept[i];
        }

        kept.RemoveRange(left, kept.Count - left);
        kept.Add(found);
    }

    /// <summary>Cuts a subset in two in every way. Of the whole sheet all stacks are kept that fit, up to a number; of a part only the smallest.</summary>
    /// <returns>True when the number was reached.</returns>
    private bool Collect(int set, List<Stack> found, int most)
    {
        int firstPiece = set & -set;
        int others = set ^ firstPiece;
        double left = _least[Whole ^ set];
        for (int rest = others; rest > 0; rest = (rest - 1) & others)
        {
            Make(set ^ rest);
            // What holds the title block stays with the rest, below or to the right.
            if (_smallest[set ^ rest].Count == 0 || Smallest(set ^ rest)[0].HoldsTitle)
                continue;
            Make(rest);
            ReadOnlySpan<Stack> firsts = Smallest(set ^ rest), rests = Smallest(rest);
            for (int i = 0; i < firsts.Length; i++)
            {
                ref readonly Stack a = ref firsts[i];
                for (int j = 0; j < rests.Length; j++)
                {
                    ref readonly Stack b = ref rests[j];
                    // A stack before a stack the same way is the same as one long stack: it is met by cutting off its first piece.
                    if (a.Way != Way.Down)
                        Take(Math.Max(a.Width, b.Width), a.Height + Cell.Gap + b.Height, Way.Down, i, j, b.HoldsTitle);
                    if (found.Count >= most)
                        return true;
                    if (a.Way != Way.Across)
                        Take(a.Width + Cell.Gap + b.Width, Math.Max(a.Height, b.Height), Way.Across, i, j, b.HoldsTitle);
                    if (found.Count >= most)
                        return true;
                }
            }

            void Take(double width, double height, Way way, int first, int second, bool holdsTitle)
            {
                if (!Fits(width, height, left))
                    return;
                var stack = new Stack(width, height, way, holdsTitle, (ushort)(set ^ rest), (ushort)first, (ushort)rest, (ushort)second);
                if (set == Whole)
                    found.Add(stack);
                else
                    Keep(found, stack);
            }
        }

        return false;
    }

    /// <summary>It fits the sheet, and leaves room for all that is not in it.</summary>
    /// <param name="left">The least room that this takes.</param>
    private bool Fits(double width, double height, double left) =>
        width <= _width && height <= _height && RoomOf(width, height) + left <= _room;

    private static double RoomOf(double width, double height) => (width + Cell.Gap) * (height + Cell.Gap);

    private DivisionPlan PlanOf(int set, in Stack stack) => stack.Way == Way.Piece
        ? new PiecePlan(int.TrailingZeroCount(set))
        : new CutPlan(
            stack.Way == Way.Down,
            PlanOf(stack.FirstSet, _store[_smallest[stack.FirstSet].Start + stack.First]),
            PlanOf(stack.RestSet, _store[_smallest[stack.RestSet].Start + stack.Rest]));

    private Cell CellOf(int set, in Stack stack, Cell?[] built) => stack.Way == Way.Piece
        ? _pieces[int.TrailingZeroCount(set)][stack.First]
        : StackCell.Before(stack.Way == Way.Down, Kept(stack.FirstSet, stack.First, built), Kept(stack.RestSet, stack.Rest, built));

    private Cell Kept(int set, int at, Cell?[] built)
    {
        int place = _smallest[set].Start + at;
        return built[place] ??= CellOf(set, _store[place], built);
    }

    private enum Way : byte
    {
        Piece,
        Down,
        Across,
    }

    /// <summary>The room one stack takes, and from which two it was put together; for a single piece, which of its forms it is.</summary>
    private readonly record struct Stack(double Width, double Height, Way Way, bool HoldsTitle, ushort FirstSet, ushort First, ushort RestSet, ushort Rest)
    {
        public static Stack Of(Cell piece, int form) => new(piece.MinWidth, piece.MinHeight, Way.Piece, piece.HoldsTitle, 0, (ushort)form, 0, 0);
    }
}
