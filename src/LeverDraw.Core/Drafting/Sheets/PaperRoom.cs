using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Geometry;
using LeverDraw.Standards;

namespace LeverDraw.Drafting.Sheets;

/// <summary>The room on one paper, and whether blocks of given sizes go into it. That is asked often while a sheet is composed: what earlier answers settle is not worked out again.</summary>
internal sealed class PaperRoom
{
    /// <summary>Widths to which notes are wrapped, in heights of their lettering: from a narrow column to one long line each.</summary>
    private static readonly double[] NoteWidths = [30, 38, 48, 60, 72, 90, 110];

    /// <summary>Areas from which a sheet is large, square millimetres.</summary>
    private const double LargeSheet = 70_000, VeryLargeSheet = 200_000;

    private readonly BlockStore _store;
    private readonly Dictionary<double, (double Width, double Height)[]> _notesSizes = [];
    private readonly List<((double Width, double Height)[] Blocks, double Lettering)> _refused = [];

    /// <summary>Divisions by which blocks went in, the last one first.</summary>
    private readonly List<DivisionPlan> _plans = [];

    public PaperRoom(SheetFormat sheet, SheetContent content, BlockStore store, bool hasLarger)
    {
        HasLarger = hasLarger;
        _store = store;
        Sheet = sheet;
        Field = SheetFrame.Field(sheet);
        TitleWidth = Field.Width < TitleBlockInk.FullWidth + 60 ? Field.Width : TitleBlockInk.FullWidth;
        Title = new Box2D(Field.MaxX - TitleWidth, Field.MinY, Field.MaxX, Field.MinY + (TitleBlockInk.RowsOf(content.Title) * TitleBlockInk.RowHeight));
    }

    public SheetFormat Sheet { get; }

    /// <summary>It takes the large lettering: A3 and tabloid, not A4 and letter.</summary>
    public bool IsLarge => IsLargeSheet(Sheet);

    /// <summary>It may take lettering one size larger still: A2, not A3 and tabloid.</summary>
    public bool IsVeryLarge => Area(Sheet) > VeryLargeSheet;

    /// <summary>A larger paper may be taken instead: nothing need be squeezed onto this one.</summary>
    public bool HasLarger { get; }

    /// <summary>Inside the frame.</summary>
    public Box2D Field { get; }

    /// <summary>The title block's box, in the field's lower right corner.</summary>
    public Box2D Title { get; }

    public double TitleWidth { get; }

    /// <summary>The notes in every form they may take, each block made once.</summary>
    public IEnumerable<PaperBlock> Notes(double lettering)
    {
        double most = Field.Width - (2 * Cell.Gap) - 4;
        return NoteWidths.Select(w => Math.Min(w * lettering, most)).Distinct().Select(w => _store.Notes(w, lettering));
    }

    /// <summary>The form of the notes that takes the least area.</summary>
    public (double Width, double Height) SmallestNotes(double lettering) => NotesSizes(lettering).MinBy(n => n.Width * n.Height);

    /// <summary>Whether any division of the sheet holds blocks of these sizes and the notes.</summary>
    /// <param name="blocks">The row of projected views first.</param>
    /// <param name="lettering">Height of the notes' lettering.</param>
    public bool CouldHold((double Width, double Height)[] blocks, double lettering)
    {
        // A division by which others went in is likely to serve again, and what is nowhere smaller than what was refused is refused too.
        (double Width, double Height)[] notes = NotesSizes(lettering);
        foreach (DivisionPlan plan in _plans)
        {
            if (SheetArrangement.Holds(plan, Field, Title, blocks, notes))
                return true;
        }

        foreach (((double Width, double Height)[] refused, double its) in _refused)
        {
            if (its == lettering && IsNowhereSmaller(blocks, refused))
                return false;
        }

        // Where there is room, one form of the notes finds a division much sooner than all.
        if ((SheetArrangement.PlanFor(Field, Title, blocks, [SmallestNotes(lettering)]) ?? SheetArrangement.PlanFor(Field, Title, blocks, notes)) is not { } found)
        {
            _refused.Add((blocks, lettering));
            return false;
        }

        _plans.Insert(0, found);
        return true;
    }

    /// <summary>A3 and tabloid are, A4 and letter are not.</summary>
    public static bool IsLargeSheet(SheetFormat sheet) => Area(sheet) > LargeSheet;

    private static double Area(SheetFormat sheet) => sheet.Width.Millimetres * sheet.Height.Millimetres;

    private static bool IsNowhereSmaller((double Width, double Height)[] blocks, (double Width, double Height)[] than)
    {
        for (int i = 0; i < blocks.Length; i++)
        {
            if (blocks[i].Width < than[i].Width || blocks[i].Height < than[i].Height)
                return false;
        }

        return true;
    }

    /// <summary>The sizes of the notes that no other form beats in width and in height at once.</summary>
    private (double Width, double Height)[] NotesSizes(double lettering)
    {
        if (_notesSizes.TryGetValue(lettering, out (double Width, double Height)[]? known))
            return known;
        (double Width, double Height)[] all = [.. Notes(lettering).Select(n => (n.Bounds.Width, n.Bounds.Height)).Distinct()];
        known = [.. all.Where(a => !all.Any(b => b != a && b.Width <= a.Width && b.Height <= a.Height))];
        _notesSizes.Add(lettering, known);
        return known;
    }
}
