using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Standards;

namespace LeverDraw.Drafting.Sheets;

/// <summary>Puts a sheet's content on paper: the largest scale whose annotated views all fit, arranged evenly. What cannot be placed without a clash is a diagnostic, never a silent overlap.</summary>
public static class SheetComposer
{
    private static readonly ImmutableArray<SheetFormat> AutomaticSheets = [IsoSheets.A4, IsoSheets.A3, IsoSheets.A2, IsoSheets.A1];

    /// <summary>Below half size these small parts can no longer be read; a smaller scale has to be asked for.</summary>
    private const double SmallestAutomatic = 0.5;

    /// <summary>Twice full size shows these parts well.</summary>
    internal const double GoodScale = 2;

    /// <summary>A sheet whose blocks take less of the field looks empty.</summary>
    private const double Empty = 0.3;

    public static Checked<PlotSheet> Compose(SheetContent content, SheetOptions options)
    {
        ImmutableArray<SheetFormat> sheets = options.Paper is { } asked ? [asked] : AutomaticSheets;
        var tried = new List<string>();
        var store = new BlockStore(content, options.FirstUnit);
        Checked<PlotSheet>? crowded = null;
        double least = double.PositiveInfinity;
        PaperRoom[] rooms = [.. sheets.Select(sheet => new PaperRoom(sheet, content, store, hasLarger: sheet != sheets[^1]))];
        // From where the search is likely to end: what is known by then spares most of the smaller papers and larger scales.
        _ = rooms.Any(room => Tries(room, options).Any(t => new SheetAttempt(content, options, room, t.Scale, t.Style, t.Ease, store).PlaceIfLikely()));
        foreach (PaperRoom room in rooms)
        {
            SheetFormat sheet = room.Sheet;
            foreach ((DrawingScale scale, DraftingStyle style, SheetEase ease) in Tries(room, options))
            {
                // Better crowded at full size than with room to spare below it.
                if (crowded is not null && scale.Factor < 1)
                    return crowded;
                var attempt = new SheetAttempt(content, options, room, scale, style, ease, store);
                if (attempt.Run(out string? reason) is { } plot)
                {
                    if (attempt.Fill < Empty && room.IsVeryLarge)
                        return Checked<PlotSheet>.Good(new SheetAttempt(content, options, room, scale, DraftingStyle.Huge, ease, store).Run(out _) ?? plot);
                    if (attempt.IsCalm)
                        return Done(plot, content, options, sheet, scale);
                    if (attempt.Ink < least)
                        (crowded, least) = (Done(plot, content, options, sheet, scale), attempt.Ink);
                }

                if (reason is not null && !tried.Contains(reason))
                    tried.Add(reason);
            }
        }

        if (crowded is not null)
            return crowded;

        string paper = sheets[^1].Name;
        return Checked<PlotSheet>.Bad([Fault(content, paper, options.Scale, tried)]);
    }

    /// <summary>The easiest to read first: details enlarged and notes of a good height at the largest scale that allows both, with the sheet's own lettering or the next smaller; on small sheets the smallest lettering before small sections and plain details, and at full size, where the usual one crowds a part no larger than it is, first of all; these only before a scale that no longer shows small parts well. A scale above one that does is not worth smaller lettering as long as that one holds all, and where a larger paper may be taken, that comes before anything less easy to read.</summary>
    private static IEnumerable<(DrawingScale Scale, DraftingStyle Style, SheetEase Ease)> Tries(PaperRoom room, SheetOptions options)
    {
        bool large = room.IsLarge;
        DraftingStyle[] usual = large ? [DraftingStyle.Large, DraftingStyle.Small] : [DraftingStyle.Small];
        DraftingStyle[] rest = large || room.HasLarger ? [] : [DraftingStyle.Tiny];
        SheetEase[][] allEases = room.HasLarger ? [[SheetEase.Full]] : [[SheetEase.Full, SheetEase.SmallNotes], [SheetEase.SmallSections, SheetEase.PlainDetails]];
        // The second range is the first again in smaller lettering, for the larger scale alone.
        (double Least, double Below, bool ForScaleAlone)[] ranges = options.Scale is not null
            ? [(0, double.PositiveInfinity, false)]
            : room.HasLarger
                ? [(GoodScale, double.PositiveInfinity, false)]
                : [(GoodScale, double.PositiveInfinity, false), (GoodScale, double.PositiveInfinity, true), (1, GoodScale, false), (SmallestAutomatic, 1, false)];
        return from range in ranges
               from eases in allEases
               from styles in range.Below > GoodScale || large ? (DraftingStyle[][])[usual, rest] : [rest, usual]
               from ease in eases
               from scale in Scales(options).Where(s => s.Factor >= range.Least && s.Factor < range.Below)
               from style in styles
               where options.Scale is not null || (scale.Factor > GoodScale && style != usual[0]) == range.ForScaleAlone
               select (scale, style, ease);
    }

    /// <summary>A reduced scale that nobody asked for is said: these parts are small.</summary>
    private static Checked<PlotSheet> Done(PlotSheet plot, SheetContent content, SheetOptions options, SheetFormat sheet, DrawingScale scale) =>
        Checked<PlotSheet>.Good(plot, scale.Factor < 1 && options.Scale is null ? [DiagnosticCatalogue.DrawnReduced.At(null, null, content.Kind, sheet.Name, scale.Text)] : []);

    private static Diagnostic Fault(SheetContent content, string paper, DrawingScale? scale, List<string> reasons)
    {
        string why = reasons.Count > 0 ? string.Join("; ", reasons) : "the views and notes need more room";
        return DiagnosticCatalogue.SheetTooSmall.At(null, null, content.Kind, scale is { } s ? paper + " at " + s.Text : paper, why);
    }

    private static IEnumerable<DrawingScale> Scales(SheetOptions options) =>
        options.Scale is { } fixedScale ? [fixedScale] : DrawingScales.All;
}
