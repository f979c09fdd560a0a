using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts;
using LeverDraw.Standards;

namespace LeverDraw.Comparison.Sheets;

/// <summary>The customer's sheet of two variants: both outlines in the fork view and in the side view, what only one has hatched, the largest distances, and all in which they differ.</summary>
public static class OverlaySheet
{
    public const string Kind = "overlay";

    /// <summary>Twice full size: gaps of tenths of a millimetre between the two outlines can be told there.</summary>
    private static readonly DrawingScale Good = new(2, 1);

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

    /// <summary>The table whole or in blocks, whichever lets the views be larger; on the smallest paper that any of them goes on. Narrow columns only where the wide ones do not go, or not with views of a good size.</summary>
    private static Checked<PlotSheet> Composed(LeverComparison comparison, SheetOptions options, ImmutableArray<string> verdicts)
    {
        Checked<PlotSheet>[] wide = Wide(options);
        if (Best(wide) is not { } best)
            return Narrow(options) ?? wide[0];
        if (best.Value!.MainScale >= Good.Factor || options is not { Scale: null, Paper: not null })
            return best;
        // The picture is what the sheet is for: rather a crowded sheet with views of a good size, or sizes in one unit, than small views.
        SheetOptions large = options with { Scale = Good };
        return Best(Wide(large)) ?? Narrow(large) ?? best;

        Checked<PlotSheet>? Narrow(SheetOptions asked) => options.Units.Second() is not null && With(OverlayTableForm.FirstUnit, asked) is { Ok: true } narrow ? narrow : null;

        Checked<PlotSheet>[] Wide(SheetOptions asked) => [With(OverlayTableForm.Whole, asked), With(OverlayTableForm.Blocks, asked)];

        Checked<PlotSheet> With(OverlayTableForm form, SheetOptions asked) => SheetComposer.Compose(Content(comparison, asked, verdicts, form), asked);

        static Checked<PlotSheet>? Best(Checked<PlotSheet>[] sheets) =>
            sheets.Where(s => s.Ok).OrderBy(s => s.Value!.Width * s.Value.Height).ThenByDescending(s => s.Value!.MainScale).FirstOrDefault();
    }
}
