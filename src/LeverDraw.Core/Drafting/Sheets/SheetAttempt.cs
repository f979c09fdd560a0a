using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Standards;

namespace LeverDraw.Drafting.Sheets;

/// <summary>One try at a sheet: a paper size, a main scale, a style. Details take the largest enlargement for which all is held.</summary>
internal sealed class SheetAttempt(SheetContent content, SheetOptions options, SheetFormat sheet, DrawingScale scale, DraftingStyle style, SheetEase ease, BlockStore store)
{
    /// <summary>Prices of width: the usual one, and those for paper that is too narrow for that.</summary>
    private const double Generous = 0.25;

    private const double Thrifty = 2;

    private const double Stingy = 8;

    /// <summary>A row this many times too wide is not made to fit by thrift (seen on random levers: it saves a third at most).</summary>
    private const double Hopeless = 1.5;

    /// <summary>Of the room that a view's annotations are estimated to take, what is counted on where others have turned out larger.</summary>
    private const double Wary = 0.6;

    /// <summary>Widths to which notes are wrapped, in heights of their lettering: from a narrow column to one long line each.</summary>
    private static readonly double[] NoteWidths = [30, 38, 48, 60, 72, 90, 110];

    /// <summary>Notes lettered smaller than this are legible, but no pleasure (ISO 3098 has 1.8 as its least).</summary>
    private const double EasyNotes = 2.5;

    private readonly Dictionary<double, (double Width, double Height)[]> _notesSizes = [];

    private (double, double)[]? _lastAsked;

    private bool _lastAnswer;

    private readonly Box2D _field = SheetFrame.Field(sheet);

    /// <summary>Whether this scale is tried once more with smaller lettering.</summary>
    private bool SmallerStyleComes => style == DraftingStyle.Large || (style == DraftingStyle.Small && sheet.Width.Millimetres * sheet.Height.Millimetres <= SheetComposer.LargeSheet);

    /// <summary>Of a finished sheet: the share of the field that its blocks take, each with half the least gap round it.</summary>
    public double Fill { get; private set; }

    /// <summary>The finished sheet, or null with the reason when it does not go on this paper at this scale.</summary>
    public PlotSheet? Run(out string? reason)
    {
        reason = null;
        double[] letterings = Letterings();
        if (letterings.Length == 0 || (ease == SheetEase.PlainDetails && content.EnlargesDetailsFirst && SmallerStyleComes))
            return null;
        double titleWidth = _field.Width < TitleBlockInk.FullWidth + 60 ? _field.Width : TitleBlockInk.FullWidth;
        var title = new Box2D(_field.MaxX - titleWidth, _field.MinY, _field.MaxX, _field.MinY + (TitleBlockInk.RowsOf(content.Title) * TitleBlockInk.RowHeight));
        string[] tooLong = store.TooLong(titleWidth);
        if (tooLong.Length > 0)
        {
            reason = "the title block's entries are too long: " + string.Join(", ", tooLong);
            return null;
        }

        ImmutableArray<ViewSource> projected = options.Projection == ProjectionMethod.ThirdAngle
            ? [.. content.FromLeft, content.Front, .. content.FromRight]
            : [.. content.FromRight, content.Front, .. content.FromLeft];
        DrawingScale[] plain = [.. content.Others.Select(_ => scale)];
        if (CannotFit(projected, title))
            return null;
        foreach (double thrift in (double[])[Generous, Thrifty, Stingy])
        {
            if (!CouldHold(projected, title, plain, thrift, letterings[^1]))
                continue;
            PaperBlock[] main = Main(projected, thrift);
            double width = WidthOf(main);
            // Where the usual is too wide, the narrowest tells whether thrift is any use.
            if (width > _field.Width * Hopeless || main.Any(b => b.Bounds.Height > _field.Height) || (width > _field.Width && WidthOf(Main(projected, Stingy)) > _field.Width))
                return null;
            // What finds no clear place with room all round finds none with less.
            if (IsUnclear(main, ref reason))
                return null;
            // What does not go in with nothing enlarged goes in with nothing larger either.
            if (width <= _field.Width && CouldHold(projected, title, plain, thrift, letterings[^1]) && WithDetails(title, projected, main, letterings, thrift, ref reason) is { } plot)
                return plot;
        }

        return null;
    }

    private PaperBlock[] Main(ImmutableArray<ViewSource> projected, double thrift) =>
        [.. projected.Select(v => PaperBlock.Of(store.View(v, scale.Factor, style, thrift)))];

    private static double WidthOf(PaperBlock[] row) => row.Sum(b => b.Bounds.Width) + ((row.Length + 1) * Cell.Gap);

    private PlotSheet? WithDetails(Box2D title, ImmutableArray<ViewSource> projected, PaperBlock[] main, double[] letterings, double thrift, ref string? reason)
    {
        var choices = new DetailScales(content, scale, store.SizeOf);
        foreach (DrawingScale[] others in choices.All().Where(s => choices.EnlargesDetails(s) == (ease != SheetEase.PlainDetails)))
        {
            if (WithScales(title, projected, main, others, letterings, thrift, ref reason) is { } plot)
                return plot;
        }

        return null;
    }

    private double[] Letterings() => ease switch
    {
        SheetEase.Full => [.. style.NotesLettering.Where(h => h >= EasyNotes)],
        SheetEase.SmallNotes => [.. style.NotesLettering.Where(h => h < EasyNotes)],
        _ => [.. style.NotesLettering],
    };

    private PlotSheet? WithScales(Box2D title, ImmutableArray<ViewSource> projected, PaperBlock[] main, DrawingScale[] others, double[] letterings, double thrift, ref string? reason)
    {
        if (!CouldHold(projected, title, others, thrift, letterings[^1]))
            return null;
        var details = new PaperBlock[others.Length];
        for (int i = 0; i < details.Length; i++)
        {
            bool isNew = !store.IsPlaced(content.Others[i], others[i].Factor, style, ForDetails(thrift));
            details[i] = Detail(content.Others[i], others[i], ForDetails(thrift));
            // One that turns out larger than it looked may settle it: then the others need not be placed.
            if (isNew && i + 1 < details.Length && content.Others.All(store.IsKnown) && !CouldHold(projected, title, others, thrift, letterings[^1], Wary))
                return null;
        }

        if (IsUnclear(details, ref reason))
            return null;
        foreach (double lettering in letterings)
        {
            PaperBlock[] tables = [.. content.Tables.Select((_, i) => store.Table(i, lettering)), .. content.Blocks];
            PaperBlock[] notes = [.. Widths(lettering).Select(w => store.Notes(w, lettering))];
            if (SheetArrangement.Best(_field, title, main, [.. details, .. tables], notes) is not { } placed)
                continue;
            Fill = placed.Select(p => p.Block.Bounds).Append(title).Sum(b => (b.Width + Cell.Gap) * (b.Height + Cell.Gap)) / (_field.Width * _field.Height);
            return new SheetAssembly(content, options, sheet, scale, style).Of(placed, title);
        }

        return null;
    }

    /// <summary>Details are narrow anyway: they follow the main views' thrift late.</summary>
    private static double ForDetails(double thrift) => thrift == Stingy ? Thrifty : Generous;

    /// <summary>What is known of the views' sizes leaves hope.</summary>
    /// <param name="share">Of the room that annotations are estimated to take.</param>
    private bool CouldHold(ImmutableArray<ViewSource> projected, Box2D title, DrawingScale[] others, double thrift, double least, double share = 1)
    {
        (double Width, double Height) row = (-Cell.Gap, 0);
        foreach (ViewSource view in projected)
        {
            (double width, double height) = store.Estimate(view, scale.Factor, style, thrift, share);
            row = (row.Width + Cell.Gap + width, Math.Max(row.Height, height));
        }

        var rest = new List<(double, double)>(others.Length + content.Tables.Length);
        for (int i = 0; i < others.Length; i++)
            rest.Add(store.Estimate(content.Others[i], others[i].Factor, style, ForDetails(thrift), share));
        for (int i = 0; i < content.Tables.Length; i++)
            rest.Add((store.Table(i, least).Bounds.Width, store.Table(i, least).Bounds.Height));
        rest.AddRange(content.Blocks.Select(b => (b.Bounds.Width, b.Bounds.Height)));
        // Thrift often changes nothing that is known: the same question has the same answer.
        (double, double)[] asked = [row, (least, 0), .. rest];
        if (_lastAsked is { } last && last.AsSpan().SequenceEqual(asked))
            return _lastAnswer;
        _lastAsked = asked;
        return _lastAnswer = SheetArrangement.CouldHold(_field, title, row, rest, NotesSizes(least));
    }

    /// <summary>The sizes of the notes that no other form beats in width and in height at once.</summary>
    private (double Width, double Height)[] NotesSizes(double lettering)
    {
        if (_notesSizes.TryGetValue(lettering, out (double Width, double Height)[]? known))
            return known;
        (double Width, double Height)[] all = [.. Widths(lettering).Select(w => store.Notes(w, lettering).Bounds).Select(b => (b.Width, b.Height)).Distinct()];
        known = [.. all.Where(a => !all.Any(b => b != a && b.Width <= a.Width && b.Height <= a.Height))];
        _notesSizes.Add(lettering, known);
        return known;
    }

    private static bool IsUnclear(PaperBlock[] views, ref string? reason)
    {
        string[] unplaced = [.. views.SelectMany(v => v.View!.Unplaced)];
        if (unplaced.Length > 0)
            reason = "no clear place for " + string.Join(", ", unplaced);
        return unplaced.Length > 0;
    }

    private IEnumerable<double> Widths(double lettering)
    {
        double most = _field.Width - (2 * Cell.Gap) - 4;
        return NoteWidths.Select(w => Math.Min(w * lettering, most)).Distinct();
    }

    /// <summary>Bare views plus one tier all round: cheap to know before anything is placed.</summary>
    private bool CannotFit(ImmutableArray<ViewSource> views, Box2D title)
    {
        double ring = style.FirstTier + 4;
        double width = 0;
        double height = 0;
        foreach (ViewSource view in views)
        {
            Box2D box = store.Bare(view);
            width += (box.Width * scale.Factor) + ring;
            height = Math.Max(height, (box.Height * scale.Factor) + ring);
        }

        return width > _field.Width || height > _field.Height || (height > _field.Height - title.Height && width > title.MinX - _field.MinX + 1 && title.Width >= _field.Width);
    }

    private PaperBlock Detail(ViewSource view, DrawingScale own, double thrift)
    {
        ViewBlock block = store.View(view, own.Factor, style, thrift);
        if (view.Title is { } name)
            block = block.Captioned(own == scale ? name : name + "  (" + own.Text + ")", style);
        return PaperBlock.Of(block);
    }
}
