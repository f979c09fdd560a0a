using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Drafting.Views;

namespace LeverDraw.Drafting.Sheets;

/// <summary>Every block that the tries at one sheet have in common, made once. Lives as long as one composing.</summary>
internal sealed class BlockStore(SheetContent content, SheetUnit unit)
{
    private readonly Dictionary<(string View, double Factor, DraftingStyle Style), AnnotatedView> _views = [];

    /// <summary>Placed ahead of being asked for; not yet counted among what is known.</summary>
    private readonly Dictionary<ViewKey, ViewBlock> _ahead = [];
    private readonly LabelStore _labels = new();
    private readonly NotesText _text = new(content.Notes);
    private readonly Dictionary<double, NotesLines> _noteLines = [];
    private readonly Dictionary<(double Width, double Lettering), PaperBlock> _notes = [];
    private readonly Dictionary<double, string[]> _tooLong = [];
    private readonly Dictionary<(int Table, double Lettering), PaperBlock> _tables = [];

    /// <summary>What is known of the views' sizes, by those that have been asked for.</summary>
    public ViewSizes Sizes { get; } = new();

    /// <summary>Whether it is already known how a view is placed.</summary>
    public bool IsPlaced(ViewSource view, double factor, DraftingStyle style, double thrift) => Sizes.Placed(new ViewKey(view.Id, factor, style, thrift)) is not null;

    public ViewBlock View(ViewSource view, double factor, DraftingStyle style, double thrift)
    {
        var key = new ViewKey(view.Id, factor, style, thrift);
        if (Sizes.Placed(key) is { } known)
            return known;
        ViewBlock block = _ahead.Remove(key, out ViewBlock? ready) ? ready : Annotated(view, factor, style).Place(thrift);
        Sizes.Keep(key, block);
        return block;
    }

    /// <summary>Places views that will be asked for next, side by side on the processors there are. What is known, and so every sheet, is the same as without it.</summary>
    /// <param name="wanted">Each view once.</param>
    public void Ahead(IEnumerable<(ViewSource View, double Factor, double Thrift)> wanted, DraftingStyle style)
    {
        (ViewSource View, ViewKey Key)[] missing =
        [
            .. wanted.Select(w => (w.View, Key: new ViewKey(w.View.Id, w.Factor, style, w.Thrift))).Where(w => Sizes.Placed(w.Key) is null && !_ahead.ContainsKey(w.Key)),
        ];
        if (missing.Length < 2)
            return;
        var annotated = new AnnotatedView?[missing.Length];
        for (int i = 0; i < missing.Length; i++)
            annotated[i] = _views.GetValueOrDefault((missing[i].Key.View, missing[i].Key.Factor, style));
        ViewBlock[] blocks = SideBySide.Make(missing.Length, i => SideBySide.WorkOn(missing[i].View), i => (annotated[i] ??= new AnnotatedView(missing[i].View, missing[i].Key.Factor, style, _labels)).Place(missing[i].Key.Thrift));
        for (int i = 0; i < missing.Length; i++)
        {
            _views[(missing[i].Key.View, missing[i].Key.Factor, style)] = annotated[i]!;
            _ahead.Add(missing[i].Key, blocks[i]);
        }
    }

    private AnnotatedView Annotated(ViewSource view, double factor, DraftingStyle style)
    {
        if (!_views.TryGetValue((view.Id, factor, style), out AnnotatedView? annotated))
            _views.Add((view.Id, factor, style), annotated = new AnnotatedView(view, factor, style, _labels));
        return annotated;
    }

    /// <summary>Entries of the title block that are too long for a width.</summary>
    public string[] TooLong(double titleWidth)
    {
        if (!_tooLong.TryGetValue(titleWidth, out string[]? entries))
            _tooLong.Add(titleWidth, entries = [.. TitleBlockInk.TooLong(content.Title, titleWidth)]);
        return entries;
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
