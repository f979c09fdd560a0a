using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Standards;

namespace LeverDraw.Drafting.Sheets;

/// <summary>One try at a sheet: a paper size, a main scale, a style. Details take the largest enlargement for which all is held.</summary>
internal sealed class SheetAttempt(SheetContent content, SheetOptions options, PaperRoom room, DrawingScale scale, DraftingStyle style, SheetEase ease, BlockStore store)
{
    /// <summary>A row this many times too wide is not made to fit by thrift (seen on random levers: it saves a third at most).</summary>
    private const double Hopeless = 1.5;

    /// <summary>Of the room that a view's annotations are estimated to take, what is counted on where others have turned out larger.</summary>
    private const double Wary = 0.6;

    /// <summary>Notes lettered smaller than this are legible, but no pleasure (ISO 3098 has 1.8 as its least).</summary>
    private const double EasyNotes = 2.5;

    private readonly Box2D _field = room.Field;

    /// <summary>Whether this scale is tried once more with smaller lettering.</summary>
    private bool SmallerStyleComes => style == DraftingStyle.Large || (style == DraftingStyle.Small && room.Sheet.Width.Millimetres * room.Sheet.Height.Millimetres <= SheetComposer.LargeSheet);

    /// <summary>A sheet whose ink takes three quarters of the field looks crowded; the next try may do better. A little less, since squares are coarse.</summary>
    public const double Crowded = 0.749;

    /// <summary>More than views that are not enlarged save of the field (seen: 0.045).</summary>
    private const double SavedByDetails = 0.06;

    /// <summary>Of a finished sheet: the share of the field that its blocks take, each with half the least gap round it.</summary>
    public double Fill { get; private set; }

    /// <summary>Of a finished sheet: the share of the field that its ink takes, or the larger <see cref="Fill"/> where that shows it calm already.</summary>
    public double Ink { get; private set; }

    /// <summary>The finished sheet, or null with the reason when it does not go on this paper at this scale.</summary>
    public PlotSheet? Run(out string? reason)
    {
        reason = null;
        double[] letterings = Letterings();
        if (letterings.Length == 0 || (ease == SheetEase.PlainDetails && content.EnlargesDetailsFirst && SmallerStyleComes))
            return null;
        string[] tooLong = store.TooLong(room.TitleWidth);
        if (tooLong.Length > 0)
        {
            reason = "the title block's entries are too long: " + string.Join(", ", tooLong);
            return null;
        }

        ImmutableArray<ViewSource> projected = options.Projection == ProjectionMethod.ThirdAngle
            ? [.. content.FromLeft, content.Front, .. content.FromRight]
            : [.. content.FromRight, content.Front, .. content.FromLeft];
        if (CannotFit(projected))
            return null;
        DrawingScale[] plain = [.. content.Others.Select(_ => scale)];
        var choices = new DetailScales(content, scale, store.SizeOf);
        DrawingScale[][] wanted = [.. choices.All().Where(s => choices.EnlargesDetails(s) == (ease != SheetEase.PlainDetails))];
        foreach (double thrift in (double[])[Sprawl.Generous, Sprawl.Thrifty, Sprawl.Stingy])
        {
            if (!CouldHold(projected, plain, thrift, letterings[^1]) || !wanted.Reverse().Any(others => CouldHold(projected, others, thrift, letterings[^1], Wary)))
                continue;
            PaperBlock[] main = Main(projected, thrift);
            double width = WidthOf(main);
            // Where the usual is too wide, the narrowest tells whether thrift is any use.
            if (width > _field.Width * Hopeless || main.Any(b => b.Bounds.Height > _field.Height) || (width > _field.Width && WidthOf(Main(projected, Sprawl.Stingy)) > _field.Width))
                return null;
            // What finds no clear place with room all round finds none with less.
            if (IsUnclear(main, ref reason))
                return null;
            // What does not go in with nothing enlarged goes in with nothing larger either.
            if (width <= _field.Width && CouldHold(projected, plain, thrift, letterings[^1]) && WithDetails(projected, main, wanted, letterings, thrift, ref reason) is { } plot)
                return plot;
        }

        return null;
    }

    private PaperBlock[] Main(ImmutableArray<ViewSource> projected, double thrift)
    {
        store.Ahead(projected.Select(v => (v, scale.Factor)), style, thrift);
        return [.. projected.Select(v => Captioned(v, scale, thrift))];
    }

    private static double WidthOf(PaperBlock[] row) => row.Sum(b => b.Bounds.Width) + ((row.Length + 1) * Cell.Gap);

    private PlotSheet? WithDetails(ImmutableArray<ViewSource> projected, PaperBlock[] main, DrawingScale[][] wanted, double[] letterings, double thrift, ref string? reason)
    {
        // Where the smallest do not go in, all the larger are known not to; where they do, half of those left are asked about at a time.
        for (int from = 0, to = wanted.Length; from < to;)
        {
            int middle = to == wanted.Length ? to - 1 : (from + to) / 2;
            (from, to) = CouldHold(projected, wanted[middle], thrift, letterings[^1]) ? (from, middle) : (middle + 1, to);
        }

        PlotSheet? calmest = null;
        double least = double.PositiveInfinity;
        foreach (DrawingScale[] others in wanted)
        {
            if (WithScales(projected, main, others, letterings, thrift, ref reason) is not { } plot)
                continue;
            double ink = Fill < Crowded ? Fill : InkShare.Of(plot.Items, _field);
            if (ink < least)
                (calmest, least) = (plot, ink);
            if (ink <= Crowded || ink > Crowded + SavedByDetails)
                break;
        }

        Ink = least;
        return calmest;
    }

    private double[] Letterings() => ease switch
    {
        SheetEase.Full => [.. style.NotesLettering.Where(h => h >= EasyNotes)],
        SheetEase.SmallNotes => [.. style.NotesLettering.Where(h => h < EasyNotes)],
        _ => [.. style.NotesLettering],
    };

    private PlotSheet? WithScales(ImmutableArray<ViewSource> projected, PaperBlock[] main, DrawingScale[] others, double[] letterings, double thrift, ref string? reason)
    {
        if (!CouldHold(projected, others, thrift, letterings[^1]))
            return null;
        var details = new PaperBlock[others.Length];
        for (int i = 0; i < details.Length; i++)
        {
            if (i % 2 == 0)
                store.Ahead(Enumerable.Range(i, Math.Min(2, details.Length - i)).Select(k => (content.Others[k], others[k].Factor)), style, ForDetails(thrift));
            bool isNew = !store.IsPlaced(content.Others[i], others[i].Factor, style, ForDetails(thrift));
            details[i] = Captioned(content.Others[i], others[i], ForDetails(thrift));
            // One that turns out larger than it looked may settle it: then the others need not be placed.
            if (isNew && i + 1 < details.Length && !CouldHold(projected, others, thrift, letterings[^1], Wary))
                return null;
        }

        if (IsUnclear(details, ref reason))
            return null;
        foreach (double lettering in letterings)
        {
            PaperBlock[] tables = [.. content.Tables.Select((_, i) => store.Table(i, lettering)), .. content.Blocks];
            PaperBlock[] notes = [.. room.Notes(lettering)];
            if (SheetArrangement.Best(_field, room.Title, main, [.. details, .. tables], notes) is not { } placed)
                continue;
            Fill = placed.Select(p => p.Block.Bounds).Append(room.Title).Sum(b => (b.Width + Cell.Gap) * (b.Height + Cell.Gap)) / (_field.Width * _field.Height);
            return new SheetAssembly(content, options, room.Sheet, scale, style).Of(placed, room.Title);
        }

        return null;
    }

    /// <summary>Details are narrow anyway: they follow the main views' thrift late.</summary>
    private static double ForDetails(double thrift) => thrift == Sprawl.Stingy ? Sprawl.Thrifty : Sprawl.Generous;

    /// <summary>What is known of the views' sizes leaves hope.</summary>
    /// <param name="share">Of the room that annotations are estimated to take.</param>
    private bool CouldHold(ImmutableArray<ViewSource> projected, DrawingScale[] others, double thrift, double least, double share = 1)
    {
        (double Width, double Height) row = (-Cell.Gap, 0);
        foreach (ViewSource view in projected)
        {
            (double width, double height) = store.Estimate(view, scale.Factor, style, thrift, share);
            row = (row.Width + Cell.Gap + width, Math.Max(row.Height, height));
        }

        var blocks = new List<(double Width, double Height)>(1 + others.Length + content.Tables.Length + content.Blocks.Length) { row };
        for (int i = 0; i < others.Length; i++)
            blocks.Add(store.Estimate(content.Others[i], others[i].Factor, style, ForDetails(thrift), share));
        for (int i = 0; i < content.Tables.Length; i++)
            blocks.Add((store.Table(i, least).Bounds.Width, store.Table(i, least).Bounds.Height));
        foreach (PaperBlock block in content.Blocks)
            blocks.Add((block.Bounds.Width, block.Bounds.Height));
        return room.CouldHold([.. blocks], least);
    }

    private static bool IsUnclear(PaperBlock[] views, ref string? reason)
    {
        string[] unplaced = [.. views.SelectMany(v => v.View!.Unplaced)];
        if (unplaced.Length > 0)
            reason = "no clear place for " + string.Join(", ", unplaced);
        return unplaced.Length > 0;
    }

    /// <summary>Bare views plus one tier all round: cheap to know before anything is placed.</summary>
    private bool CannotFit(ImmutableArray<ViewSource> views)
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

        return width > _field.Width || height > _field.Height || (height > _field.Height - room.Title.Height && width > room.Title.MinX - _field.MinX + 1 && room.Title.Width >= _field.Width);
    }

    private PaperBlock Captioned(ViewSource view, DrawingScale own, double thrift)
    {
        ViewBlock block = store.View(view, own.Factor, style, thrift);
        if (view.Title is { } name)
            block = block.Captioned(name, style, own == scale ? "" : "  (" + own.Text + ")");
        return PaperBlock.Of(block);
    }
}
