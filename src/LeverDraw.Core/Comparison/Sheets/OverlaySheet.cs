using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts;

namespace LeverDraw.Comparison.Sheets;

/// <summary>The customer's sheet of two variants: both outlines in the fork view and in the side view, what only one has hatched, the largest distances, and all in which they differ.</summary>
public static class OverlaySheet
{
    public const string Kind = "overlay";

    /// <param name="verdicts">Sentences about a plane the levers are to go into, for the notes; none unless a plane was asked about.</param>
    public static BuiltSheet Of(LeverComparison comparison, ImmutableArray<string> verdicts = default)
    {
        ImmutableArray<string> said = verdicts.IsDefault ? [] : verdicts;
        return new(Kind, PartState.Finished, options => Checked<SheetContent>.Good(Content(comparison, options, said)))
        {
            Plot = options => Composed(comparison, options, said),
        };
    }

    public static SheetContent Content(LeverComparison comparison, SheetOptions options, ImmutableArray<string> verdicts, OverlayTableForm form = OverlayTableForm.Whole)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        ArgumentNullException.ThrowIfNull(options);
        var text = new DimensionText(options.Units);
        return new SheetContent(
            Kind,
            PartState.Finished,
            OverlayViews.Fork(comparison, text),
            [OverlayViews.Side(comparison, text)],
            [],
            [],
            OverlayNotes.Of(comparison, verdicts),
            OverlayTitle.Of(comparison, options.Units))
        {
            Tables = OverlayTables.Of(comparison, options.Units, form),
        };
    }

    /// <summary>The table whole or in blocks, whichever lets the views be larger; on the smallest paper that any of them goes on. Narrow columns only where the wide ones do not go at all.</summary>
    private static Checked<PlotSheet> Composed(LeverComparison comparison, SheetOptions options, ImmutableArray<string> verdicts)
    {
        Checked<PlotSheet>[] wide = [.. ((OverlayTableForm[])[OverlayTableForm.Whole, OverlayTableForm.Blocks]).Select(With)];
        if (wide.Where(s => s.Ok).OrderBy(s => s.Value!.Width * s.Value.Height).ThenByDescending(s => s.Value!.MainScale).FirstOrDefault() is { } best)
            return best;
        return options.Units.Second() is null || With(OverlayTableForm.FirstUnit) is not { Ok: true } narrow ? wide[0] : narrow;

        Checked<PlotSheet> With(OverlayTableForm form) => SheetComposer.Compose(Content(comparison, options, verdicts, form), options);
    }
}
