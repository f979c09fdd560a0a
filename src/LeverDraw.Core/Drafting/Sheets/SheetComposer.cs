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
    private const double GoodScale = 2;

    /// <summary>Sheets of more than this area, square millimetres, take the large lettering: A3 and tabloid, not A4 and letter.</summary>
    internal const double LargeSheet = 70_000;

    /// <summary>Sheets of more than this area, square millimetres, may take lettering one size larger still: A2, not A3 and tabloid.</summary>
    private const double VeryLargeSheet = 200_000;

    /// <summary>A sheet whose blocks take less of the field looks empty.</summary>
    private const double Empty = 0.3;

    public static Checked<PlotSheet> Compose(SheetContent content, SheetOptions options)
    {
        ImmutableArray<SheetFormat> sheets = options.Paper is { } asked ? [asked] : AutomaticSheets;
        var tried = new List<string>();
        var store = new BlockStore(content, options.FirstUnit);
        foreach (SheetFormat sheet in sheets)
        {
            foreach ((DrawingScale scale, DraftingStyle style) in Tries(sheet, sheet == sheets[^1], options))
            {
                var attempt = new SheetAttempt(content, options, sheet, scale, style, store);
                if (attempt.Run(out string? reason) is { } plot)
                    return Checked<PlotSheet>.Good(attempt.Fill < Empty && IsVeryLarge(sheet) ? new SheetAttempt(content, options, sheet, scale, DraftingStyle.Huge, store).Run(out _) ?? plot : plot);
                if (reason is not null && !tried.Contains(reason))
                    tried.Add(reason);
            }
        }

        string paper = sheets[^1].Name;
        return Checked<PlotSheet>.Bad([Fault(content, paper, options.Scale, tried)]);
    }

    /// <summary>The largest scale first, each with the sheet's own lettering and with the next smaller; the smallest lettering only before a scale that no longer shows small parts well.</summary>
    private static IEnumerable<(DrawingScale Scale, DraftingStyle Style)> Tries(SheetFormat sheet, bool last, SheetOptions options)
    {
        bool large = Area(sheet) > LargeSheet;
        DraftingStyle[] usual = large ? [DraftingStyle.Large, DraftingStyle.Small] : [DraftingStyle.Small];
        DraftingStyle[] rest = large ? [] : [DraftingStyle.Tiny];
        (double Least, double Below)[] ranges = options.Scale is not null
            ? [(0, double.PositiveInfinity)]
            : last
                ? [(GoodScale, double.PositiveInfinity), (1, GoodScale), (SmallestAutomatic, 1)]
                : [(GoodScale, double.PositiveInfinity)];
        foreach ((double least, double below) in ranges)
        {
            DrawingScale[] scales = [.. Scales(options).Where(s => s.Factor >= least && s.Factor < below)];
            foreach (DraftingStyle[] styles in (DraftingStyle[][])[usual, rest])
            {
                foreach (DrawingScale scale in scales)
                {
                    foreach (DraftingStyle style in styles)
                        yield return (scale, style);
                }
            }
        }
    }

    private static bool IsVeryLarge(SheetFormat sheet) => Area(sheet) > VeryLargeSheet;

    private static double Area(SheetFormat sheet) => sheet.Width.Millimetres * sheet.Height.Millimetres;

    private static Diagnostic Fault(SheetContent content, string paper, DrawingScale? scale, List<string> reasons)
    {
        string why = reasons.Count > 0 ? string.Join("; ", reasons) : "the views and notes need more room";
        return DiagnosticCatalogue.SheetTooSmall.At(null, null, content.Kind, scale is { } s ? paper + " at " + s.Text : paper, why);
    }

    private static IEnumerable<DrawingScale> Scales(SheetOptions options) =>
        options.Scale is { } fixedScale ? [fixedScale] : DrawingScales.All;
}
