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
    private readonly Dictionary<(string View, DraftingStyle Style), ViewBlock> _first = [];
    private readonly Dictionary<string, (DraftingStyle Style, ViewBlock Block)> _firstOfAll = new(StringComparer.Ordinal);
    private readonly LabelStore _labels = new();
    private readonly PlaceShape _scratch = new(), _lines = new();
    private readonly NotesText _text = new(content.Notes);
    private readonly Dictionary<double, NotesLines> _noteLines = [];
    private readonly Dictionary<(double Width, double Lettering), PaperBlock> _notes = [];
    private readonly Dictionary<double, string[]> _tooLong = [];
    private readonly Dictionary<string, double> _sizes = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Box2D> _bare = new(StringComparer.Ordinal);
    private readonly Dictionary<(int Table, double Lettering), PaperBlock> _tables = [];

    /// <summary>Whether it is already known how a view is placed.</summary>
    public bool IsPlaced(ViewSource view, double factor, DraftingStyle style, double thrift) => _placed.ContainsKey((view.Id, factor, style, thrift));

    /// <summary>Whether a view has been placed at all, at any scale and in any style.</summary>
    public bool IsKnown(ViewSource view) => _firstOfAll.ContainsKey(view.Id);

    public ViewBlock View(ViewSource view, double factor, DraftingStyle style, double thrift)
    {
        if (_placed.TryGetValue((view.Id, factor, style, thrift), out ViewBlock? block))
            return block;
        if (!_views.TryGetValue((view.Id, factor, style), out AnnotatedView? annotated))
            _views.Add((view.Id, factor, style), annotated = new AnnotatedView(view, factor, style, _labels));
        block = annotated.Place(thrift, _scratch, _lines);
        _first.TryAdd((view.Id, style), block);
        _firstOfAll.TryAdd(view.Id, (style, block));
        _placed.Add((view.Id, factor, style, thrift), block);
        return block;
    }

    /// <summary>The least room a view is likely to take: what it takes if it has been placed so; else by what it takes where it was first placed; of one that has not been placed at all, what is drawn.</summary>
    /// <param name="of">Of the estimated room for annotations, what is counted.</param>
    /// <remarks>Lettering and dimension lines round a view hardly depend on its scale. The shares make up for sizes that find room inside a larger view, and for thrift.</remarks>
    public (double Width, double Height) Estimate(ViewSource view, double factor, DraftingStyle style, double thrift, double of = 1)
    {
        double caption = view.Title is null ? 0 : (ViewBlock.CaptionGap + 1) * style.CaptionLettering;
        if (_placed.TryGetValue((view.Id, factor, style, thrift), out ViewBlock? placed))
            return (placed.Bounds.Width, placed.Bounds.Height + caption);
        double share = SameStyle;
        if (!_first.TryGetValue((view.Id, style), out ViewBlock? known))
        {
            if (!_firstOfAll.TryGetValue(view.Id, out (DraftingStyle Style, ViewBlock Block) other))
                return (Bare(view).Width * factor, (Bare(view).Height * factor) + caption);
            known = other.Block;
            share = OtherStyle * style.LetteringHeight / other.Style.LetteringHeight;
        }

        share *= of;
        double grown = factor / known.Scale;
        return (
            (known.Core.Width * grown) + ((known.Bounds.Width - known.Core.Width) * share),
            (known.Core.Height * grown) + ((known.Bounds.Height - known.Core.Height) * share) + caption);
    }

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
