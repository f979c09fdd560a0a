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
        _ = rooms.Any(room => SheetTries.On(room, options).Any(t => new SheetAttempt(content, options, room, t, store).PlaceIfLikely()));
        foreach (PaperRoom room in rooms)
        {
            SheetFormat sheet = room.Sheet;
            foreach (SheetTry next in SheetTries.On(room, options))
            {
                DrawingScale scale = next.Scale;
                // Better crowded at full size than with room to spare below it.
                if (crowded is not null && scale.Factor < 1)
                    return crowded;
                var attempt = new SheetAttempt(content, options, room, next, store);
                if (attempt.Run(out string? reason) is { } plot)
                {
                    if (attempt.Fill < Empty && room.IsVeryLarge)
                        return Checked<PlotSheet>.Good(new SheetAttempt(content, options, room, next with { Style = DraftingStyle.Huge }, store).Run(out _) ?? plot);
                    if (attempt.IsCalm)
                        return Done(plot, content, options, sheet, scale);
                    if (attempt.Ink < least - attempt.Handicap)
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

    /// <summary>A reduced scale that nobody asked for is said: these parts are small.</summary>
    private static Checked<PlotSheet> Done(PlotSheet plot, SheetContent content, SheetOptions options, SheetFormat sheet, DrawingScale scale) =>
        Checked<PlotSheet>.Good(plot, scale.Factor < 1 && options.Scale is null ? [DiagnosticCatalogue.DrawnReduced.At(null, null, content.Kind, sheet.Name, scale.Text)] : []);

    private static Diagnostic Fault(SheetContent content, string paper, DrawingScale? scale, List<string> reasons)
    {
        string why = reasons.Count > 0 ? string.Join("; ", reasons) : "the views and notes need more room";
        return DiagnosticCatalogue.SheetTooSmall.At(null, null, content.Kind, scale is { } s ? paper + " at " + s.Text : paper, why);
    }
}
