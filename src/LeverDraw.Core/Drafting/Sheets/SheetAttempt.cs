using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Standards;

namespace LeverDraw.Drafting.Sheets;

/// <summary>One try at a sheet: a paper size, a main scale, a style. Details take the largest enlargement for which all is held.</summary>
internal sealed class SheetAttempt(SheetContent content, SheetOptions options, SheetFormat sheet, DrawingScale scale, DraftingStyle style, BlockStore store)
{
    /// <summary>Prices of width: the usual one, and those for paper that is too narrow for that.</summary>
    private const double Generous = 0.25;

    private const double Thrifty = 2;

    private const double Stingy = 8;

    /// <summary>A row this many times too wide is not made to fit by thrift (seen on random levers: it saves a third at most).</summary>
    private const double Hopeless = 1.5;

    /// <summary>Widths to which notes are wrapped, in heights of their lettering: from a narrow column to one long line each.</summary>
    private static readonly double[] NoteWidths = [30, 38, 48, 60, 72, 90, 110];

    /// <summary>Notes lettered smaller than this are legible, but no pleasure (ISO 3098 has 1.8 as its least).</summary>
    private const double EasyNotes = 2.5;

    private readonly Box2D _field = SheetFrame.Field(sheet);

    /// <summary>Whether this scale is tried once more with smaller lettering.</summary>
    private bool SmallerStyleComes => style == DraftingStyle.Large || (style == DraftingStyle.Small && sheet.Width.Millimetres * sheet.Height.Millimetres <= SheetComposer.LargeSheet);

    /// <summary>Of a finished sheet: the share of the field that its blocks take, each with half the least gap round it.</summary>
    public double Fill { get; private set; }

    /// <summary>The finished sheet, or null with the reason when it does not go on this paper at this scale.</summary>
    public PlotSheet? Run(out string? reason)
    {
        reason = null;
        double titleWidth = _field.Width < TitleBlockInk.FullWidth + 60 ? _field.Width : TitleBlockInk.FullWidth;
        var title = new Box2D(_field.MaxX - titleWidth, _field.MinY, _field.MaxX, _field.MinY + (TitleBlockInk.RowsOf(content.Title) * TitleBlockInk.RowHeight));
        string[] tooLong = [.. TitleBlockInk.TooLong(content.Title, titleWidth)];
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
            if (!CouldHold(projected, title, plain, thrift, style.NotesLettering[^1]))
                continue;
            PaperBlock[] main = Main(projected, thrift);
            double width = WidthOf(main);
            // Where the usual is too wide, the narrowest tells whether thrift is any use.
            if (width > _field.Width * Hopeless || main.Any(b => b.Bounds.Height > _field.Height) || (width > _field.Width && WidthOf(Main(projected, Stingy)) > _field.Width))
                return null;
            if (width > _field.Width || IsUnclear(main, ref reason))
                continue;
            if (WithDetails(title, projected, main, thrift, ref reason) is { } plot)
                return plot;
        }

        return null;
    }

    private PaperBlock[] Main(ImmutableArray<ViewSource> projected, double thrift) =>
        [.. projected.Select(v => PaperBlock.Of(store.View(v, scale.Factor, style, thrift)))];

    private static double WidthOf(PaperBlock[] row) => row.Sum(b => b.Bounds.Width) + ((row.Length + 1) * Cell.Gap);

    /// <summary>Details are to be enlarged and notes to be read with ease; small notes come before details that show nothing more, and those last.</summary>
    private PlotSheet? WithDetails(Box2D title, ImmutableArray<ViewSource> projected, PaperBlock[] main, double thrift, ref string? reason)
    {
        var choices = new DetailScales(content, scale);
        DrawingScale[][] all = [.. choices.All()];
        DrawingScale[][] enlarged = [.. all.Where(choices.EnlargesDetails)];
        double[] usual = [.. style.NotesLettering.Where(h => h >= EasyNotes)], small = [.. style.NotesLettering.Where(h => h < EasyNotes)];
        DrawingScale[][] rest = content.EnlargesDetailsFirst && SmallerStyleComes ? [] : [.. all.Except(enlarged)];
        foreach ((DrawingScale[][] scales, double[] letterings) in ((DrawingScale[][], double[])[])[(enlarged, usual), (enlarged, small), (rest, [.. style.NotesLettering])])
        {
            foreach (DrawingScale[] others in letterings.Length == 0 ? [] : scales)
            {
                if (WithScales(title, projected, main, others, letterings, thrift, ref reason) is { } plot)
                    return plot;
            }
        }

        return null;
    }

    private PlotSheet? WithScales(Box2D title, ImmutableArray<ViewSource> projected, PaperBlock[] main, DrawingScale[] others, double[] letterings, double thrift, ref string? reason)
    {
        if (!CouldHold(projected, title, others, thrift, letterings[^1]))
            return null;
        PaperBlock[] details = [.. content.Others.Select((v, i) => Detail(v, others[i], ForDetails(thrift)))];
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

    /// <summary>What is known of the views' sizes leaves hope; views not yet placed anywhere do too.</summary>
    private bool CouldHold(ImmutableArray<ViewSource> projected, Box2D title, DrawingScale[] others, double thrift, double least)
    {
        (double Width, double Height) row = (-Cell.Gap, 0);
        foreach (ViewSource view in projected)
        {
            if (store.Estimate(view, scale.Factor, style, thrift) is not { } size)
                return true;
            row = (row.Width + Cell.Gap + size.Width, Math.Max(row.Height, size.Height));
        }

        var rest = new List<(double, double)>();
        for (int i = 0; i < others.Length; i++)
        {
            if (store.Estimate(content.Others[i], others[i].Factor, style, ForDetails(thrift)) is not { } size)
                return true;
            rest.Add(size);
        }

        rest.AddRange(content.Tables.Select((_, i) => store.Table(i, least).Bounds).Concat(content.Blocks.Select(b => b.Bounds)).Select(b => (b.Width, b.Height)));
        return SheetArrangement.CouldHold(_field, title, row, rest, [.. Widths(least).Select(w => store.Notes(w, least).Bounds).Select(b => (b.Width, b.Height))]);
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
            Box2D box = view.Outlines.Aggregate(Box2D.Empty, (b, o) => b.Union(o.Contour.Transformed(view.Orientation).Box));
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
