using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;

namespace LeverDraw.Drafting.Sheets;

/// <summary>Every block that the tries at one sheet have in common, made once. Lives as long as one composing.</summary>
internal sealed class BlockStore(SheetContent content, SheetUnit unit)
{
    private readonly Dictionary<(string View, double Factor, DraftingStyle Style), AnnotatedView> _views = [];
    private readonly Dictionary<(string View, double Factor, DraftingStyle Style, double Thrift), ViewBlock> _placed = [];
    private readonly Dictionary<(double Width, double Lettering), PaperBlock> _notes = [];
    private readonly Dictionary<(int Table, double Lettering), PaperBlock> _tables = [];

    public ViewBlock View(ViewSource view, double factor, DraftingStyle style, double thrift)
    {
        if (_placed.TryGetValue((view.Id, factor, style, thrift), out ViewBlock? block))
            return block;
        if (!_views.TryGetValue((view.Id, factor, style), out AnnotatedView? annotated))
            _views.Add((view.Id, factor, style), annotated = new AnnotatedView(view, factor, style));
        block = annotated.Place(thrift);
        _placed.Add((view.Id, factor, style, thrift), block);
        return block;
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
