using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Completeness;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.Views;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Parts.AdjustingLever.Sheets;

namespace LeverDraw.Parts.AdjustingLever.FoundrySheets;

/// <summary>The sizes by which a casting's sheet fixes its shape: not what stock, draft and gate say.</summary>
internal static class CastingSizes
{
    public static ImmutableArray<SheetSize> Of(CastingLever casting, PartingCandidate parting)
    {
        FoundryViews views = new(casting, parting, new DimensionText(ShownUnits.Millimetres), true);
        IEnumerable<ViewSource> all = [views.Fork(), views.Side(), .. views.Others()];
        return SheetSizes.Of(all.SelectMany(v => v.Annotations).Where(IsShape), LeverNotes.Sizes(views.Shape));
    }

    private static bool IsShape(Annotation annotation) =>
        !annotation.Name.StartsWith("casting.", StringComparison.Ordinal) && annotation.Name is not ("gate" or DraftMarks.WidthAtJoint);
}
