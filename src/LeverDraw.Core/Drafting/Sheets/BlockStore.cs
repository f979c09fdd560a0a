using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Sheets;

/// <summary>Every block that the tries at one sheet have in common, made once. Lives as long as one composing.</summary>
internal sealed class BlockStore(SheetContent content, SheetUnit unit)
{
    /// <summary>Of the room that annotations take round a view, how much is surely needed at another scale, and (per lettering height) in another style.</summary>
    private const double SameStyle = 0.85, OtherStyle = 0.8;

    private readonly Dictionary<(string View, double Factor, DraftingStyle Style), AnnotatedView> _views = [];
    private readonly Dictionary<(string View, double Factor, DraftingStyle Style, double Thrift), ViewBlock> _placed = [];

    /// <summary>Placed ahead of being asked for; not yet counted among what is known.</summary>
    private readonly Dictionary<(string View, double Factor, DraftingStyle Style, double Thrift), ViewBlock> _ahead = [];
    private readonly Dictionary<(string View, DraftingStyle Style), PlacedView> _first = [];
    private readonly Dictionary<string, PlacedView> _firstOfAll = new(StringComparer.Ordinal);
    private readonly LabelStore _labels = new();
    private readonly NotesText _text = new(content.Notes);
    private readonly Dictionary<double, NotesLines> _noteLines = [];
    private readonly Dictionary<(double Width, double Lettering), PaperBlock> _notes = [];
    private readonly Dictionary<double, string[]> _tooLong = [];
    private readonly Dictionary<string, double> _sizes = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Box2D> _bare = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Box2D> _drawn = new(StringComparer.Ordinal);
    private readonly Dictionary<(int Table, double Lettering), PaperBlock> _tables = [];

    /// <summary>Whether it is already known how a view is placed.</summary>
    public bool IsPlaced(ViewSource view, double factor, DraftingStyle style, double thrift) => _placed.ContainsKey((view.Id, factor, style, thrift));

    public ViewBlock View(ViewSource view, double factor, DraftingStyle style, double thrift)
    {
        if (!_placed.TryGetValue((view.Id, factor, style, thrift), out ViewBlock? block))
            Keep(block = _ahead.Remove((view.Id, factor, style, thrift), out ViewBlock? ready) ? ready : Annotated(view, factor, style).Place(thrift), style, thrift);
        return block;
    }

    /// <summary>Places views that will be asked for next, side by side on the processors there are. What is known, and so every sheet, is the same as without it.</summary>
    /// <param name="wanted">Each view once.</param>
    public void Ahead(IEnumerable<(ViewSource View, double Factor)> wanted, DraftingStyle style, double thrift)
    {
        (ViewSource View, double Factor)[] missing =
        [
            .. wanted.Where(w => !_placed.ContainsKey((w.View.Id, w.Factor, style, thrift)) && !_ahead.ContainsKey((w.View.Id, w.Factor, style, thrift))),
        ];
        if (missing.Length < 2)
            return;
        var annotated = new AnnotatedView?[missing.Length];
        for (int i = 0; i < missing.Length; i++)
            annotated[i] = _views.GetValueOrDefault((missing[i].View.Id, missing[i].Factor, style));
        ViewBlock[] blocks = SideBySide.Make(missing.Length, i => (annotated[i] ??= new AnnotatedView(missing[i].View, missing[i].Factor, style, _labels)).Place(thrift));
        for (int i = 0; i < missing.Length; i++)
        {
            _views[(missing[i].View.Id, missing[i].Factor, style)] = annotated[i]!;
            _ahead.Add((missing[i].View.Id, missing[i].Factor, style, thrift), blocks[i]);
        }
    }

    private AnnotatedView Annotated(ViewSource view, double factor, DraftingStyle style)
    {
        if (!_views.TryGetValue((view.Id, factor, style), out AnnotatedView? annotated))
            _views.Add((view.Id, factor, style), annotated = new AnnotatedView(view, factor, style, _labels));
        return annotated;
    }

    private void Keep(ViewBlock block, DraftingStyle style, double thrift)
    {
        var placed = new PlacedView(block, style);
        _first.TryAdd((block.Source.Id, style), placed);
        _firstOfAll.TryAdd(block.Source.Id, placed);
        _placed.Add((block.Source.Id, block.Scale, style, thrift), block);
    }

    /// <summary>The least room a view is likely to take: what it takes if it has been placed so; else by what it takes where it was first placed; of one that has not been placed at all, what is drawn (of a main view, its outlines).</summary>
    /// <param name="of">Of the estimated room for annotations, what is counted.</param>
    /// <remarks>Lettering and dimension lines round a view hardly depend on its scale. The shares make up for sizes that find room inside a larger view, and for thrift.</remarks>
    public (double Width, double Height) Estimate(ViewSource view, double factor, DraftingStyle style, double thrift, double of = 1)
    {
        double caption = view.Title is null ? 0 : (ViewBlock.CaptionGap + 1) * style.CaptionLettering;
        if (_placed.TryGetValue((view.Id, factor, style, thrift), out ViewBlock? placed))
            return (placed.Bounds.Width, placed.Bounds.Height + caption);
        foreach (double cheaper in (double[])[Sprawl.Thrifty, Sprawl.Generous])
        {
            if (cheaper < thrift && _placed.TryGetValue((view.Id, factor, style, cheaper), out placed))
            {
                Box2D free = Sprawl.Around(placed.Core, style, thrift).Free;
                Box2D kept = new(Math.Max(placed.Bounds.MinX, free.MinX), Math.Max(placed.Bounds.MinY, free.MinY), Math.Min(placed.Bounds.MaxX, free.MaxX), Math.Min(placed.Bounds.MaxY, free.MaxY));
                return (kept.Width, kept.Height + caption);
            }
        }

        double share = SameStyle;
        if (!_first.TryGetValue((view.Id, style), out PlacedView? known))
        {
            if (!_firstOfAll.TryGetValue(view.Id, out known))
            {
                Box2D box = view.IsMain ? Bare(view) : Drawn(view);
                return (box.Width * factor, (box.Height * factor) + caption);
            }

            share = OtherStyle * style.LetteringHeight / known.Style.LetteringHeight;
        }

        share *= of;
        Box2D core = known.Block.Core, bounds = known.Block.Bounds;
        double grown = factor / known.Block.Scale;
        return (
            (core.Width * grown) + ((bounds.Width - core.Width) * share),
            (core.Height * grown) + ((bounds.Height - core.Height) * share) + caption);
    }

    /// <summary>What a view is likely to take, guessed from how many annotations it has: good enough to choose where to begin.</summary>
    public (double Width, double Height) Guess(ViewSource view, double factor, DraftingStyle style)
    {
        Box2D box = view.IsMain ? Bare(view) : Drawn(view);
        double caption = view.Title is null ? 0 : (ViewBlock.CaptionGap + 1) * style.CaptionLettering;
        double room = Math.Sqrt(view.Annotations.Length) * style.LetteringHeight;
        (double wide, double high) = view.IsMain ? (GuessW, GuessH) : (GuessDW, GuessDH);
        return ((box.Width * factor) + (wide * room), (box.Height * factor) + (high * room) + caption);
    }
    private const double GuessW = 4.7, GuessH = 2.2, GuessDW = 6, GuessDH = 3;

    /// <summary>Entries of the title block that are too long for a width.</summary>
    public string[] TooLong(double titleWidth)
    {
        if (!_tooLong.TryGetValue(titleWidth, out string[]? entries))
            _tooLong.Add(titleWidth, entries = [.. TitleBlockInk.TooLong(content.Title, titleWidth)]);
        return entries;
    }

    /// <summary>The box of a view's outlines as it stands on the sheet, view millimetres.</summary>
    public Box2D Bare(ViewSource view)
    {
        if (!_bare.TryGetValue(view.Id, out Box2D box))
            _bare.Add(view.Id, box = view.Outlines.Aggregate(Box2D.Empty, (b, o) => b.Union(o.Contour.Transformed(view.Orientation).Box)));
        return box;
    }

    /// <summary>The box of all lines of a view as it stands on the sheet, view millimetres: its block is never smaller.</summary>
    private Box2D Drawn(ViewSource view)
    {
        if (!_drawn.TryGetValue(view.Id, out Box2D box))
        {
            box = view.Loops.Aggregate(Bare(view), (b, l) => b.Union(l.Contour.Transformed(view.Orientation).Box));
            _drawn.Add(view.Id, box = view.Edges.Aggregate(box, (b, e) => b.Union(e.Edge.Transformed(view.Orientation).Box)));
        }

        return box;
    }

    /// <summary>Greater side of what is seen in a view, centre lines apart; view millimetres.</summary>
    public double SizeOf(ViewSource view)
    {
        if (_sizes.TryGetValue(view.Id, out double size))
            return size;
        Box2D box = Box2D.Empty;
        foreach (PlotOutline outline in view.Outlines)
        {
            foreach (Edge edge in outline.Contour.Edges)
                box = box.Union(edge.Box);
        }

        foreach (ViewEdge edge in view.Edges)
        {
            if (edge.Role != LineRole.Centre)
                box = box.Union(edge.Edge.Box);
        }

        _sizes.Add(view.Id, size = Math.Max(box.Width, box.Height));
        return size;
    }

    public PaperBlock Notes(double width, double lettering)
    {
        if (_notes.TryGetValue((width, lettering), out PaperBlock? block))
            return block;
        // The same lines serve every height: only their width in heights counts.
        double room = Math.Round(NotesBlock.WrapWidth(width, lettering), 6);
        if (!_noteLines.TryGetValue(room, out NotesLines? lines))
            _noteLines.Add(room, lines = _text.Wrapped(room));
        _notes.Add((width, lettering), block = NotesBlock.Build(_text, lines, lettering, unit, content.Signs));
        return block;
    }

    public PaperBlock Table(int index, double lettering)
    {
        if (!_tables.TryGetValue((index, lettering), out PaperBlock? block))
            _tables.Add((index, lettering), block = TableBlock.Build(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"table-{index + 1}"), content.Tables[index], lettering));
        return block;
    }
}

/// <summary>A view as it was placed, and in which style.</summary>
internal sealed record PlacedView(ViewBlock Block, DraftingStyle Style);
