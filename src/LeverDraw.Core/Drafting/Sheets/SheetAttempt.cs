using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Standards;

namespace LeverDraw.Drafting.Sheets;

/// <summary>One try at a sheet: a paper size, a main scale, a style. Details take the largest enlargement for which all is held.</summary>
internal sealed class SheetAttempt
{
    /// <summary>A sheet whose ink takes three quarters of the field looks crowded; the next try may do better. A little less, since squares are coarse.</summary>
    private const double Crowded = 0.745;

    /// <summary>The same where details must be larger than the views and are: for that the foundry's small sheets may be a little fuller.</summary>
    private const double CrowdedWithDetails = 0.79;

    /// <summary>More than views that are not enlarged save of the field (seen: 0.045).</summary>
    private const double SavedByDetails = 0.06;

    /// <summary>A row this many times too wide is not made to fit by thrift (seen on random levers: it saves a third at most).</summary>
    private const double Hopeless = 1.5;

    /// <summary>Notes lettered smaller than this are legible, but no pleasure (ISO 3098 has 1.8 as its least).</summary>
    private const double EasyNotes = 2.5;

    private readonly SheetContent _content;
    private readonly SheetOptions _options;
    private readonly PaperRoom _room;
    private readonly DrawingScale _scale;
    private readonly DraftingStyle _style;
    private readonly SheetEase _ease;
    private readonly BlockStore _store;
    private readonly Box2D _field;

    /// <summary>In the order in which they stand on the sheet, from the left.</summary>
    private readonly ImmutableArray<ViewSource> _projected;

    /// <summary>Heights of the notes' lettering, the best first.</summary>
    private readonly double[] _letterings;
    private readonly SheetProspect _prospect;

    public SheetAttempt(SheetContent content, SheetOptions options, PaperRoom room, SheetTry wanted, BlockStore store)
    {
        (DrawingScale scale, DraftingStyle style, SheetEase ease) = wanted;
        (_content, _options, _room, _scale, _style, _ease, _store) = (content, options, room, scale, style, ease, store);
        _field = room.Field;
        _projected = options.Projection == ProjectionMethod.ThirdAngle
            ? [.. content.FromLeft, content.Front, .. content.FromRight]
            : [.. content.FromRight, content.Front, .. content.FromLeft];
        _letterings = ease switch
        {
            SheetEase.Full => [.. style.NotesLettering.Where(h => h >= EasyNotes)],
            SheetEase.SmallNotes => [.. style.NotesLettering.Where(h => h < EasyNotes)],
            _ => [.. style.NotesLettering],
        };
        _prospect = new SheetProspect(content, room, scale, style, _projected, store);
    }

    /// <summary>Of a finished sheet: the share of the usable field that its blocks take, each with half the least gap round it.</summary>
    public double Fill { get; private set; }

    /// <summary>Of a finished sheet: the share of the usable field that its ink takes, or the larger <see cref="Fill"/> where that shows it calm already.</summary>
    public double Ink { get; private set; }

    /// <summary>Whether a finished sheet has room to spare; the next try may have more.</summary>
    public bool IsCalm => Ink <= Fullest;

    /// <summary>By how much less ink this try has to take than another that is crowded too: details no larger than the views are not worth a hundredth.</summary>
    public double Handicap => _content.EnlargesDetailsFirst && _ease == SheetEase.PlainDetails ? SavedByDetails : 0;

    private double Fullest => _content.EnlargesDetailsFirst && _ease != SheetEase.PlainDetails ? CrowdedWithDetails : Crowded;

    /// <summary>The finished sheet, or null with the reason when it does not go on this paper at this scale.</summary>
    public PlotSheet? Run(out string? reason)
    {
        if (!IsPossible(out reason))
            return null;
        DrawingScale[] plain = [.. _content.Others.Select(_ => _scale)];
        DrawingScale[][] wanted = Wanted();
        foreach (SheetThrift thrift in SheetThrift.Levels)
        {
            // A scale larger than one that shows small parts well is not worth the least room round the views, where details are larger anyway.
            if (thrift.Main > Sprawl.Thrifty && _scale.Factor > SheetTries.GoodScale && _options.Scale is null && _content.Others.Any(v => v.IsDetail))
                return null;
            if (!_prospect.CouldHold(plain, thrift, _letterings[^1]) || !wanted.Reverse().Any(others => _prospect.CouldHold(others, thrift, _letterings[^1], SheetProspect.Wary)))
                continue;
            PaperBlock[] main = Main(thrift);
            double width = WidthOf(main);
            // Where the usual is too wide, the narrowest tells whether thrift is any use.
            if (width > _field.Width * Hopeless || main.Any(b => b.Bounds.Height > _field.Height) || (width > _field.Width && WidthOf(Main(SheetThrift.Levels[^1])) > _field.Width))
                return null;
            // What finds no clear place with room all round finds none with less.
            if (IsUnclear(main, ref reason))
                return null;
            // What does not go in with nothing enlarged goes in with nothing larger either.
            if (width <= _field.Width && _prospect.CouldHold(plain, thrift, _letterings[^1]) && WithDetails(main, wanted, thrift, ref reason) is { } plot)
                return plot;
        }

        return null;
    }

    /// <summary>Where this try is likely to succeed, places its views: most of them will be drawn so, and their sizes tell which larger scales are not worth placing anything for.</summary>
    /// <returns>Whether it is likely.</returns>
    public bool PlaceIfLikely()
    {
        if (_ease == SheetEase.PlainDetails || !IsPossible(out _) || Wanted() is not [.., var smallest] wanted || !_prospect.IsLikely(smallest, _letterings[^1]))
            return false;
        DrawingScale[] likely = wanted.First(others => _prospect.IsLikely(others, _letterings[^1]));
        SheetThrift usual = SheetThrift.Levels[0];
        (ViewSource View, double Factor, double Thrift)[] all = [.. _projected.Select(v => (v, _scale.Factor, usual.Main)), .. _content.Others.Zip(likely, (view, own) => (view, own.Factor, usual.Details))];
        _store.Ahead(all, _style);
        foreach ((ViewSource view, double factor, double price) in all)
            _store.View(view, factor, _style, price);
        return true;
    }

    /// <summary>Whether this scale is tried with smaller lettering too.</summary>
    private bool SmallerStyleIsTried => _style == DraftingStyle.Large || (_style == DraftingStyle.Small && !_room.IsLarge);

    private bool IsPossible(out string? reason)
    {
        reason = null;
        if (_letterings.Length == 0 || (_ease == SheetEase.PlainDetails && _content.EnlargesDetailsFirst && SmallerStyleIsTried))
            return false;
        string[] tooLong = _store.TooLong(_room.TitleWidth);
        if (tooLong.Length > 0)
            reason = "the title block's entries are too long: " + string.Join(", ", tooLong);
        return reason is null && !_prospect.CannotFit();
    }

    /// <summary>The scales at which the other views may stand, best first.</summary>
    private DrawingScale[][] Wanted()
    {
        var choices = new DetailScales(_content, _scale, _store.Sizes.SizeOf);
        return [.. choices.All().Where(s => choices.Suit(_ease, s))];
    }

    private PaperBlock[] Main(SheetThrift thrift)
    {
        _store.Ahead(_projected.Select(v => (v, _scale.Factor, thrift.Main)), _style);
        double level = _projected.Where(v => v.Title is not null).Select(v => _store.View(v, _scale.Factor, _style, thrift.Main).Bounds.MaxY).DefaultIfEmpty(double.NegativeInfinity).Max();
        return [.. _projected.Select(v => Captioned(v, _scale, thrift.Main, level))];
    }

    private static double WidthOf(PaperBlock[] row) => row.Sum(b => b.Bounds.Width) + ((row.Length + 1) * Cell.Gap);

    private PlotSheet? WithDetails(PaperBlock[] main, DrawingScale[][] wanted, SheetThrift thrift, ref string? reason)
    {
        // Where the smallest do not go in, all the larger are known not to; where they do, half of those left are asked about at a time.
        for (int from = 0, to = wanted.Length; from < to;)
        {
            int middle = to == wanted.Length ? to - 1 : (from + to) / 2;
            (from, to) = _prospect.CouldHold(wanted[middle], thrift, _letterings[^1]) ? (from, middle) : (middle + 1, to);
        }

        PlotSheet? calmest = null;
        double least = double.PositiveInfinity;
        foreach (DrawingScale[] others in wanted)
        {
            if (WithScales(main, others, thrift, ref reason) is not { } plot)
                continue;
            double ink = Fill < Fullest ? Fill : InkShare.Of(plot.Items, _field, _room.Title);
            if (ink < least)
                (calmest, least) = (plot, ink);
            if (ink <= Fullest || ink > Fullest + SavedByDetails)
                break;
        }

        Ink = least;
        return calmest;
    }

    private PlotSheet? WithScales(PaperBlock[] main, DrawingScale[] scales, SheetThrift thrift, ref string? reason)
    {
        if (!_prospect.CouldHold(scales, thrift, _letterings[^1]))
            return null;
        var details = new PaperBlock[scales.Length];
        for (int i = 0; i < details.Length; i++)
        {
            if (i % 2 == 0)
                _store.Ahead(Enumerable.Range(i, Math.Min(2, details.Length - i)).Select(k => (_content.Others[k], scales[k].Factor, thrift.Details)), _style);
            bool isNew = !_store.IsPlaced(_content.Others[i], scales[i].Factor, _style, thrift.Details);
            details[i] = Captioned(_content.Others[i], scales[i], thrift.Details);
            // One that turns out larger than it looked may settle it: then the others need not be placed.
            if (isNew && i + 1 < details.Length && !_prospect.CouldHold(scales, thrift, _letterings[^1], SheetProspect.Wary))
                return null;
        }

        if (IsUnclear(details, ref reason))
            return null;
        foreach (double lettering in _letterings)
        {
            PaperBlock[] tables = [.. _content.Tables.Select((_, i) => _store.Table(i, lettering)), .. _content.Blocks];
            PaperBlock[] notes = [.. _room.Notes(lettering)];
            PaperBlock[] others = [.. details, .. tables];
            if (SheetArrangement.Best(_field, _room.Title, main, others, notes) is not { } placed)
                continue;
            // Where the most even division leaves the sheet crowded, the notes take the form of the least area that goes in.
            if (FillOf(placed) > Crowded)
                placed = notes.OrderBy(n => Area(n)).Select(n => SheetArrangement.Best(_field, _room.Title, main, others, [n])).First(p => p is not null)!;
            Fill = FillOf(placed);
            return new SheetAssembly(_content, _options, _room.Sheet, _scale, _style).Of(placed, _room.Title);
        }

        return null;
    }

    private double FillOf(List<PlacedBlock> placed) =>
        placed.Sum(p => Area(p.Block)) / ((_field.Width * _field.Height) - (_room.Title.Width * _room.Title.Height));

    private static double Area(PaperBlock block) => Cell.AreaWithGap(block.Bounds.Width, block.Bounds.Height);

    private static bool IsUnclear(PaperBlock[] views, ref string? reason)
    {
        string[] unplaced = [.. views.SelectMany(v => v.View!.Unplaced)];
        if (unplaced.Length > 0)
            reason = "no clear place for " + string.Join(", ", unplaced);
        return unplaced.Length > 0;
    }

    /// <param name="level">Of the captions in a row, at the least.</param>
    private PaperBlock Captioned(ViewSource view, DrawingScale own, double thrift, double level = double.NegativeInfinity)
    {
        ViewBlock block = _store.View(view, own.Factor, _style, thrift);
        if (view.Title is { } name)
            block = block.Captioned(name, _style, own == _scale ? "" : "  (" + own.Text + ")", level);
        return PaperBlock.Of(block);
    }
}
