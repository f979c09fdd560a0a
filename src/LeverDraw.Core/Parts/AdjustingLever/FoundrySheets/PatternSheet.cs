using System.Collections.Immutable;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Rules;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Parts.AdjustingLever.Sheets;
using LeverDraw.Profiles;
using LeverDraw.Tolerancing.Allowances;

namespace LeverDraw.Parts.AdjustingLever.FoundrySheets;

/// <summary>The pattern-maker's sheet: the pattern, or the master a working pattern is cast from.</summary>
public static class PatternSheet
{
    public const string Kind = "pattern", MasterKind = "master";

    /// <summary>Lengths of the contraction rule beside the views.</summary>
    private const int RuleMillimetres = 80, RuleInches = 3;

    public static SheetContent Content(PatternLever pattern, Profile profile, SheetOptions options)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        return Content(Kind, pattern, pattern, null, profile, options, "PATTERN DRAWING", "-P");
    }

    public static SheetContent Content(MasterPatternLever master, Profile profile, SheetOptions options)
    {
        ArgumentNullException.ThrowIfNull(master);
        return Content(MasterKind, master, master.Pattern, master, profile, options, "MASTER PATTERN DRAWING", "-M");
    }

    private static SheetContent Content(string kind, FoundryState state, PatternLever pattern, MasterPatternLever? master, Profile profile, SheetOptions options, string document, string suffix)
    {
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(options);
        var text = new DimensionText(options.Units, options.Tolerances, CastingSheet.Decimals);
        PartingCandidate parting = MouldParting.Of(pattern.Casting);
        FoundryViews views = new(state, parting, text, false, options.IsOnSmallPaper, SmallPaper.IsTight(options));
        ImmutableArray<StateSizes> rows = CleanUp.Table(pattern);
        // Small paper has no room for a legend and a rule of their own: words, and the rule's own sheet.
        bool small = options.IsOnSmallPaper;
        ColourLegend legend = ColourLegend.Of(state.Plan, parting, profile.Values);
        return new SheetContent(
            kind,
            PartState.Pattern,
            views.Fork(),
            [views.Side()],
            [],
            views.Others(),
            PatternNotes.Of(state, parting, views.Draft, text, small ? legend.InWords : null, master),
            FoundryTitle.Of(state, profile, document, suffix, PatternNotes.TitleTolerance(text), options.Units))
        {
            Tables = [SizesTable.ForPattern(SizesTable.Measurable(rows, pattern.Shape), PatternDraft.Of(pattern, parting), !state.Plan.Rapping.IsNone, text) with { IsClose = small }, .. small ? [] : new[] { legend.InTable }],
            NotedSizes = LeverNotes.Sizes(views.Shape),
            EnlargesDetailsFirst = true,
            Blocks = small ? [] : Rule(pattern.Rates),
        };
    }

    /// <summary>One rate, one rule: with unlike rates the rules have a sheet of their own.</summary>
    private static ImmutableArray<PaperBlock> Rule(AxisRates rates) => rates.AreAlike
        ? [ContractionRuleInk.Build("rule", rates.X.Factor, RuleMillimetres, RuleInches, "CONTRACTION RULE " + ContractionText.OneIn(rates.X) + ", FOR CASTING SIZES, IF PRINTED AT 100 %")]
        : [];
}
