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
    public static BuiltSheet Of(LeverComparison comparison, ImmutableArray<string> verdicts = default) =>
        new(Kind, PartState.Finished, options => Checked<SheetContent>.Good(Content(comparison, options, verdicts.IsDefault ? [] : verdicts)));

    public static SheetContent Content(LeverComparison comparison, SheetOptions options, ImmutableArray<string> verdicts)
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
            Tables = OverlayTables.Of(comparison, options.Units),
        };
    }
}
