using System.Collections.Immutable;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Parts.AdjustingLever.Sheets;
using LeverDraw.Profiles;

namespace LeverDraw.Parts.AdjustingLever.FoundrySheets;

/// <summary>The foundry's sheet: the casting as it is to come out of the mould.</summary>
public static class CastingSheet
{
    public const string Kind = "casting";

    /// <summary>Most decimals of a millimetre on the foundry's sheets.</summary>
    internal const int Decimals = 2;

    public static SheetContent Content(CastingLever casting, Profile profile, SheetOptions options)
    {
        ArgumentNullException.ThrowIfNull(casting);
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(options);
        var text = new DimensionText(options.Units, options.Tolerances, Decimals);
        PartingCandidate parting = MouldParting.Of(casting);
        bool small = options.IsOnSmallPaper;
        FoundryViews views = new(casting, parting, text, toleranced: !small, small, SmallPaper.IsTight(options));
        ImmutableArray<StateSizes> rows = CleanUp.Table(PatternLever.Of(casting));
        return new SheetContent(
            Kind,
            PartState.Casting,
            views.Fork(),
            [views.Side()],
            [],
            views.Others(),
            CastingNotes.Of(casting, profile, parting, views.Draft, text),
            FoundryTitle.Of(casting, profile, "CASTING DRAWING, AS CAST", "-C", CastingNotes.TitleTolerance(casting.Plan), options.Units))
        {
            NotedSizes = LeverNotes.Sizes(views.Shape),
            EnlargesDetailsFirst = true,
            Tables = [SizesTable.ForCasting(SizesTable.Measurable(rows, casting.Shape), text) with { IsClose = small }],
        };
    }
}
