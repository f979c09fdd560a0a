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

    public static Checked<PlotSheet> Compose(SheetContent content, SheetOptions options)
    {
        ImmutableArray<SheetFormat> sheets = options.Paper is { } asked ? [asked] : AutomaticSheets;
        var tried = new List<string>();
        foreach (SheetFormat sheet in sheets)
        {
            double least = options.Paper is null && options.Scale is null && sheet != sheets[^1] ? 2 : 0;
            foreach (DrawingScale scale in Scales(options))
            {
                if (scale.Factor < least || (scale.Factor < SmallestAutomatic && options.Scale is null))
                    break;
                if (new SheetAttempt(content, options, sheet, scale).Run(out string? reason) is { } plot)
                    return Checked<PlotSheet>.Good(plot);
                if (reason is not null && !tried.Contains(reason))
                    tried.Add(reason);
            }
        }

        string paper = sheets[^1].Name;
        return Checked<PlotSheet>.Bad([Fault(content, paper, options.Scale, tried)]);
    }

    private static Diagnostic Fault(SheetContent content, string paper, DrawingScale? scale, List<string> reasons)
    {
        string why = reasons.Count > 0 ? string.Join("; ", reasons) : "the views and notes need more room";
        return DiagnosticCatalogue.SheetTooSmall.At(null, null, content.Kind, scale is { } s ? paper + " at " + s.Text : paper, why);
    }

    private static IEnumerable<DrawingScale> Scales(SheetOptions options) =>
        options.Scale is { } fixedScale ? [fixedScale] : DrawingScales.All;
}
