using LeverDraw.Standards;

namespace LeverDraw.Drafting.Sheets;

/// <summary>One way to draw a sheet on a paper.</summary>
internal readonly record struct SheetTry(DrawingScale Scale, DraftingStyle Style, SheetEase Ease);

/// <summary>In which order a sheet is tried on one paper, the easiest to read first (docs/adr/0006-layout.md, order of wishes).</summary>
internal static class SheetTries
{
    /// <summary>Twice full size shows these parts well.</summary>
    public const double GoodScale = 2;

    /// <summary>Below half size these small parts can no longer be read; a smaller scale has to be asked for.</summary>
    private const double SmallestAutomatic = 0.5;

    /// <summary>What makes a sheet easy comes first, a little at a time: details enlarged and good notes, then smaller ones, then small sections and plain details. Where a larger paper may be taken, that comes before anything less easy.</summary>
    private static readonly SheetEase[][] _eases = [[SheetEase.Full, SheetEase.SmallNotes], [SheetEase.SmallSections, SheetEase.PlainDetails]], _fullOnly = [[SheetEase.Full]];

    public static IEnumerable<SheetTry> On(PaperRoom room, SheetOptions options) =>
        from range in Ranges(room, options)
        from eases in room.HasLarger ? _fullOnly : _eases
        from styles in Styles(room, range)
        from ease in eases
        from scale in Scales(options).Where(range.Holds)
        from style in styles
        where options.Scale is not null || (scale.Factor > GoodScale && style != Usual(room)[0]) == range.IsForScaleAlone
        select new SheetTry(scale, style, ease);

    /// <summary>A scale that shows these parts well comes before all else, with the lettering that is usual for it; smaller lettering is not worth a scale above that one as long as that one holds all; only then smaller scales.</summary>
    private static ScaleRange[] Ranges(PaperRoom room, SheetOptions options)
    {
        ScaleRange good = new(GoodScale, double.PositiveInfinity);
        return options.Scale is not null ? [new(0, double.PositiveInfinity)]
            : room.HasLarger ? [good]
            : [good, good with { IsForScaleAlone = true }, new(1, GoodScale), new(SmallestAutomatic, 1)];
    }

    /// <summary>The sheet's own lettering or the next smaller, then the least; at full size on a small sheet, where the usual one crowds a part no larger than it is, the least first.</summary>
    private static DraftingStyle[][] Styles(PaperRoom room, ScaleRange range)
    {
        DraftingStyle[] usual = Usual(room), least = room.IsLarge || room.HasLarger ? [] : [DraftingStyle.Tiny];
        return range.Below > GoodScale || room.IsLarge ? [usual, least] : [least, usual];
    }

    private static DraftingStyle[] Usual(PaperRoom room) => room.IsLarge ? [DraftingStyle.Large, DraftingStyle.Small] : [DraftingStyle.Small];

    private static IEnumerable<DrawingScale> Scales(SheetOptions options) => options.Scale is { } fixedScale ? [fixedScale] : DrawingScales.All;

    /// <param name="IsForScaleAlone">The scales above a good one, in lettering smaller than usual.</param>
    private readonly record struct ScaleRange(double Least, double Below, bool IsForScaleAlone = false)
    {
        public bool Holds(DrawingScale scale) => scale.Factor >= Least && scale.Factor < Below;
    }
}
