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

    /// <summary>The bit of the title block, which is the last piece; zero where there is none.</summary>
    private readonly int _title;

    /// <summary>What is known of each subset, filled from the smallest on: a subset's own subsets have smaller numbers.</summary>
    private readonly Part[] _parts;

    private readonly StackStore _store = new();

    /// <param name="pieces">Each with its forms, such as notes wrapped to several widths; in reading order, the title block last.</param>
    public SheetDivisions(double width, double height, IReadOnlyList<IReadOnlyList<Cell>> pieces)
    {
        _width = width + 1e-9;
        _height = height + 1e-9;
        _room = Cell.AreaWithGap(_width, _height);
        _pieces = pieces;
        _parts = new Part[1 << pieces.Count];
        foreach (ref Part part in _parts.AsSpan())
            (part.Narrowest, part.Lowest) = (double.PositiveInfinity, double.PositiveInfinity);
        for (int i = 0; i < pieces.Count; i++)
        {
            (double narrowest, double lowest) = (double.PositiveInfinity, double.PositiveInfinity);
            foreach (Cell form in pieces[i])
                (narrowest, lowest) = (Math.Min(narrowest, form.MinWidth), Math.Min(lowest, form.MinHeight));
            for (int set = 1 << i; set < 2 << i; set++)
            {
                ref readonly Part others = ref _parts[set ^ (1 << i)];
                (_parts[set].Narrowest, _parts[set].Lowest) = (Math.Min(narrowest, others.Narrowest), Math.Min(lowest, others.Lowest));
            }
        }

        for (int i = 0; i < pieces.Count; i++)
        {
            double least = double.PositiveInfinity;
            foreach (Cell form in pieces[i])
                least = Math.Min(least, new Limit(this, _parts[Whole ^ (1 << i)]).RoomOf(form.MinWidth, form.MinHeight));
            for (int set = 1 << i; set < 2 << i; set++)
                _parts[set].Least = least + _parts[set ^ (1 << i)].Least;
        }

        _title = pieces[^1][0].HoldsTitle ? 1 << (pieces.Count - 1) : 0;
        for (int i = 0; i < pieces.Count; i++)
            StoreForms(1 << i, pieces[i]);
    }

    private int Whole => _parts.Length - 1;

    /// <summary>Some division that fits, or null.</summary>
    public DivisionPlan? Any()
    {
        if (_pieces.Count > 1 && _parts[Whole].Least <= _room && EachPairFits())
            CombineAll(1);
        return _parts[Whole].Count > 0 ? PlanOf(Whole, Smallest(Whole)[0]) : null;
    }

    /// <summary>Every division that fits, the pieces' smallest stacks combined in every way by the first cut.</summary>
    public IEnumerable<Cell> All()
    {
        if (_pieces.Count > 1 && _parts[Whole].Least <= _room)
            CombineAll(Most);
        var built = new Cell?[_store.Count];
        return Smallest(Whole).ToArray().Select(s => CellOf(Whole, s, built));
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
        ref Part part = ref _parts[set];
        part.Start = _store.Count;
        var limit = new Limit(this, _parts[Whole ^ set]);
        for (int i = 0; i < forms.Count; i++)
        {
            Stack stack = Stack.Of(forms[i], i);
            if (limit.Holds(stack.Width, stack.Height))
                _store.AddSmallest(part.Start, stack);
        }

        part.Count = _store.Count - part.Start;
    }

    private ReadOnlySpan<Stack> Smallest(int set) => _store.Span(_parts[set].Start, _parts[set].Count);

    /// <summary>Puts every subset's smallest stacks into the store, and of the whole all stacks, up to a number.</summary>
    private void CombineAll(int most)
    {
        for (int set = 6; set < Whole; set += 2)
            Combine(set, int.MaxValue);
        // The first piece is the row of main views, mostly as wide as the sheet: all else below it is soon asked.
        if (most == 1 && FirstAlone())
            return;
        for (int set = 3; set < Whole; set += 2)
            Combine(set, int.MaxValue);
        Combine(Whole, most);
    }

    private bool FirstAlone()
    {
        _parts[Whole].Start = _store.Count;
        CutInTwo(Whole, Whole ^ 1, 1, new Limit(this, _parts[0]));
        _parts[Whole].Count = _store.Count - _parts[Whole].Start;
        return _parts[Whole].Count > 0;
    }

    /// <summary>Cuts a subset in two in every way. Of the whole sheet all stacks are kept that fit, up to a number; of a part only the smallest.</summary>
    private void Combine(int set, int most)
    {
        if ((set & (set - 1)) == 0)
            return;
        ref Part part = ref _parts[set];
        part.Start = _store.Count;
        var limit = new Limit(this, _parts[Whole ^ set]);
        // What holds the title block stays with the rest, below or to the right.
        int title = set & _title, others = (set ^ title) & (set - 1);
        for (int rest = others | title; rest != 0 && _store.Count - part.Start < most; rest = rest == title ? 0 : (((rest ^ title) - 1) & others) | title)
            CutInTwo(set, rest, most, limit);

        part.Count = _store.Count - part.Start;
    }

    private void CutInTwo(int set, int rest, int most, in Limit limit)
    {
        ReadOnlySpan<Stack> a = Smallest(set ^ rest), b = Smallest(rest);
        if (a.IsEmpty || b.IsEmpty)
            return;
        // Sorted by width: the first is the narrowest, the last the lowest.
        ref readonly Stack lowA = ref a[^1];
        ref readonly Stack lowB = ref b[^1];
        bool down = limit.Holds(double.MaxNative(a[0].Width, b[0].Width), lowA.Height + Cell.Gap + lowB.Height);
        bool across = limit.Holds(a[0].Width + Cell.Gap + b[0].Width, double.MaxNative(lowA.Height, lowB.Height));
        if (set == Whole && most > 1)
        {
            JoinAll(a, b, rest, down, across, _parts[Whole].Start + most);
            return;
        }

        if (down)
            JoinDown(set, rest, a, b, limit);
        if (across)
            JoinAcross(set, rest, a, b, limit);
    }

    /// <summary>Every stack of a part above or before every stack of the rest of the whole, until the store holds so many.</summary>
    private void JoinAll(ReadOnlySpan<Stack> firsts, ReadOnlySpan<Stack> rests, int rest, bool down, bool across, int most)
    {
        for (int i = 0; i < firsts.Length; i++)
        {
            ref readonly Stack a = ref firsts[i];
            bool canDown = down && a.Way != Way.Down, canAcross = across && a.Way != Way.Across;
            for (int j = 0; j < rests.Length; j++)
            {
                ref readonly Stack b = ref rests[j];
                if (canDown && _store.Count < most)
                    TakeWhole(a.Above(b), Way.Down, i, j);
                if (canAcross && _store.Count < most)
                    TakeWhole(a.Before(b), Way.Across, i, j);
            }
        }

        void TakeWhole((double Width, double Height) size, Way way, int first, int second)
        {
            if (size.Width <= _width && size.Height <= _height)
                _store.Add(new Stack(size.Width, size.Height, way, (ushort)(Whole ^ rest), (ushort)first, (ushort)rest, (ushort)second));
        }
    }

    /// <summary>The smallest stacks of a part above the rest: for each width the lowest of both that are no wider.</summary>
    private void JoinDown(int set, int rest, ReadOnlySpan<Stack> firsts, ReadOnlySpan<Stack> rests, in Limit limit)
    {
        int start = _parts[set].Start, i = Next(firsts, -1, Way.Down, 1), j = 0;
        if (i == firsts.Length)
            return;
        double width = Math.Max(firsts[i].Width, rests[0].Width);
        while (true)
        {
            int next = Next(firsts, i, Way.Down, 1);
            while (next < firsts.Length && firsts[next].Width <= width)
                next = Next(firsts, i = next, Way.Down, 1);
            while (j + 1 < rests.Length && rests[j + 1].Width <= width)
                j++;
            (double w, double h) = firsts[i].Above(rests[j]);
            if (limit.Holds(w, h))
                _store.AddSmallest(start, new Stack(w, h, Way.Down, (ushort)(set ^ rest), (ushort)i, (ushort)rest, (ushort)j));
            if (next == firsts.Length && j + 1 == rests.Length)
                return;
            width = Math.Min(next < firsts.Length ? firsts[next].Width : double.PositiveInfinity, j + 1 < rests.Length ? rests[j + 1].Width : double.PositiveInfinity);
        }
    }

    /// <summary>The smallest stacks of a part before the rest: for each height the narrowest of both that are no higher.</summary>
    private void JoinAcross(int set, int rest, ReadOnlySpan<Stack> firsts, ReadOnlySpan<Stack> rests, in Limit limit)
    {
        int start = _parts[set].Start, i = Next(firsts, firsts.Length, Way.Across, -1), j = rests.Length - 1;
        if (i < 0)
            return;
        double height = Math.Max(firsts[i].Height, rests[j].Height);
        while (true)
        {
            int next = Next(firsts, i, Way.Across, -1);
            while (next >= 0 && firsts[next].Height <= height)
                next = Next(firsts, i = next, Way.Across, -1);
            while (j > 0 && rests[j - 1].Height <= height)
                j--;
            (double w, double h) = firsts[i].Before(rests[j]);
            if (limit.Holds(w, h))
                _store.AddSmallest(start, new Stack(w, h, Way.Across, (ushort)(set ^ rest), (ushort)i, (ushort)rest, (ushort)j));
            if (next < 0 && j == 0)
                return;
            height = Math.Min(next >= 0 ? firsts[next].Height : double.PositiveInfinity, j > 0 ? rests[j - 1].Height : double.PositiveInfinity);
        }
    }

    /// <summary>The next stack up or down that is not itself cut the same way: a stack before one the same way is the same as one long stack, which is met by cutting off its first piece.</summary>
    private static int Next(ReadOnlySpan<Stack> stacks, int from, Way but, int step)
    {
        int at = from + step;
        while (at >= 0 && at < stacks.Length && stacks[at].Way == but)
            at += step;
        return at;
    }

    private DivisionPlan PlanOf(int set, in Stack stack) => stack.Way == Way.Piece
        ? new PiecePlan(int.TrailingZeroCount(set))
        : new CutPlan(
            stack.Way == Way.Down,
            PlanOf(stack.FirstSet, Smallest(stack.FirstSet)[stack.First]),
            PlanOf(stack.RestSet, Smallest(stack.RestSet)[stack.Rest]));

    private Cell CellOf(int set, in Stack stack, Cell?[] built) => stack.Way == Way.Piece
        ? _pieces[int.TrailingZeroCount(set)][stack.First]
        : StackCell.Before(stack.Way == Way.Down, Kept(stack.FirstSet, stack.First, built), Kept(stack.RestSet, stack.Rest, built));

    private Cell Kept(int set, int at, Cell?[] built)
    {
        int place = _parts[set].Start + at;
        return built[place] ??= CellOf(set, Smallest(set)[at], built);
    }

    /// <summary>What is known of a subset of the pieces.</summary>
    private struct Part
    {
        /// <summary>Where its smallest stacks stand in the store, the narrowest first.</summary>
        public int Start;

        /// <summary>How many these are.</summary>
        public int Count;

        /// <summary>The width of its narrowest piece; of the empty subset infinite, as nothing goes beside anything.</summary>
        public double Narrowest;

        /// <summary>The height of its lowest piece.</summary>
        public double Lowest;

        /// <summary>The least room that its pieces take one by one.</summary>
        public double Least;
    }

    /// <summary>How large a stack may be: it fits the sheet, and leaves room for all that is not in it.</summary>
    private readonly struct Limit
    {
        private readonly double _width;
        private readonly double _height;
        private readonly double _wide;
        private readonly double _high;
        private readonly double _room;

        /// <param name="left">What is not in the stack.</param>
        public Limit(SheetDivisions sheet, in Part left)
        {
            (_width, _height) = (sheet._width, sheet._height);
            (_wide, _high) = (_width - Cell.Gap - left.Narrowest, _height - Cell.Gap - left.Lowest);
            _room = sheet._room - left.Least;
        }

        public bool Holds(double width, double height) => width <= _width && height <= _height && RoomOf(width, height) <= _room;

        /// <summary>The room a stack takes with half a gap all round; where nothing that is left goes beside it, from edge to edge, and likewise where nothing goes above or below it.</summary>
        public double RoomOf(double width, double height) =>
            Cell.AreaWithGap(width > _wide ? _width : width, height > _high ? _height : height);
    }
}
