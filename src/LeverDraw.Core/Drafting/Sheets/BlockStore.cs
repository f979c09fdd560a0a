using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;

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
    private readonly Dictionary<(double Width, double Lettering), PaperBlock> _notes = [];
    private readonly Dictionary<(int Table, double Lettering), PaperBlock> _tables = [];

    public ViewBlock View(ViewSource view, double factor, DraftingStyle style, double thrift)
    {
        if (_placed.TryGetValue((view.Id, factor, style, thrift), out ViewBlock? block))
            return block;
        if (!_views.TryGetValue((view.Id, factor, style), out AnnotatedView? annotated))
            _views.Add((view.Id, factor, style), annotated = new AnnotatedView(view, factor, style));
        block = annotated.Place(thrift);
        _first.TryAdd((view.Id, style), block);
        _firstOfAll.TryAdd(view.Id, (style, block));
        _placed.Add((view.Id, factor, style, thrift), block);
        return block;
    }

    /// <summary>The least room a view is likely to take: what it takes if it has been placed so; else by what it takes where it was first placed. Null when it has not been placed at all.</summary>
    /// <remarks>Lettering and dimension lines round a view hardly depend on its scale. The shares make up for sizes that find room inside a larger view, and for thrift.</remarks>
    public (double Width, double Height)? Estimate(ViewSource view, double factor, DraftingStyle style, double thrift)
    {
        double caption = view.Title is null ? 0 : (ViewBlock.CaptionGap + 1) * style.CaptionLettering;
        if (_placed.TryGetValue((view.Id, factor, style, thrift), out ViewBlock? placed))
            return (placed.Bounds.Width, placed.Bounds.Height + caption);
        double share = SameStyle;
        if (!_first.TryGetValue((view.Id, style), out ViewBlock? known))
        {
            if (!_firstOfAll.TryGetValue(view.Id, out (DraftingStyle Style, ViewBlock Block) other))
                return null;
            known = other.Block;
            share = OtherStyle * style.LetteringHeight / other.Style.LetteringHeight;
        }

        double grown = factor / known.Scale;
        return (
            (known.Core.Width * grown) + ((known.Bounds.Width - known.Core.Width) * share),
            (known.Core.Height * grown) + ((known.Bounds.Height - known.Core.Height) * share) + caption);
    }

    public PaperBlock Notes(double width, double lettering)
    {
        if (!_notes.TryGetValue((width, lettering), out PaperBlock? block))
            _notes.Add((width, lettering), block = NotesBlock.Build(content.Notes, width, lettering, unit, content.Signs));
        return block;
    }

    public PaperBlock Table(int index, double lettering)
    {
        if (!_tables.TryGetValue((index, lettering), out PaperBlock? block))
            _tables.Add((index, lettering), block = TableBlock.Build(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"table-{index + 1}"), content.Tables[index], lettering));
        return block;
    }
}
