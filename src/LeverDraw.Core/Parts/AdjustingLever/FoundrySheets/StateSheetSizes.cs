using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Completeness;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.Views;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Parts.AdjustingLever.Sheets;

namespace LeverDraw.Parts.AdjustingLever.FoundrySheets;

/// <summary>The sizes by which the sheet of a casting or pattern fixes its shape: not what stock, draft and gate say.</summary>
internal static class StateSheetSizes
{
    public static ImmutableArray<SheetSize> Of(FoundryState state, PartingCandidate parting)
    {
        FoundryViews views = new(state, parting, new DimensionText(ShownUnits.Millimetres), state is CastingLever);
        IEnumerable<ViewSource> all = [views.Fork(), views.Side(), .. views.Others()];
        return SheetSizes.Of(all.SelectMany(v => v.Annotations).Where(IsShape), LeverNotes.Sizes(views.Shape));
    }

    private static bool IsShape(Annotation annotation) =>
        !annotation.Name.StartsWith("casting.", StringComparison.Ordinal) && annotation.Name is not ("gate" or DraftMarks.WidthAtJoint);
}
