using System.Collections.Immutable;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Profiles;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.FoundrySheets;

/// <summary>The notes of the pattern's sheet, for the pattern-maker.</summary>
internal static class PatternNotes
{
    /// <summary>What a pattern's sizes are made to (common practice, no source), and what a printed one loses or gains in sanding and primer.</summary>
    private static readonly Length _tolerance = Length.FromMillimetres(0.1), _leastSkin = Length.FromMillimetres(0.1), _mostSkin = Length.FromMillimetres(0.3);

    public static string TitleTolerance(DimensionText text) => "PATTERN " + text.PlusMinus(_tolerance) + " (COMMON PRACTICE)";

    public static ImmutableArray<string> Of(FoundryState state, PartingCandidate parting, PatternDraft draft, DimensionText text, string? legend, MasterPatternLever? master)
    {
        FoundryPlan plan = state.Plan;
        bool wax = plan.Process == MouldingProcess.Investment;
        return
        [
            (master is null ? "PATTERN'S" : "MASTER'S") + " SIZES: STOCK AND CONTRACTION IN; ADD NONE" + (plan.Rapping.IsNone ? "" : "; VIEWS BEFORE RAPPING IS TAKEN OFF: MAKE IT TO THE TABLE") + ". DOUBLE-DOTTED: FINISHED FACE, CONTRACTION IN. (BRACKETS): FOLLOWS FROM OTHERS.",
            FoundrySheetWords.Contraction(plan.Rates, plan.Metal) + ".",
            .. Second(master),
            .. wax ? new[] { "THIS IS THE WAX OR PRINTED PATTERN: CONTRACTION OF THE WAX ITSELF IS NOT IN, THE DIE'S MAKER ADDS IT." } : [],
            "M: MACHINED AFTER CASTING, WITH STOCK PER FACE AS CAST" + CommonNotes.RunOut(state.Shape, text) + ".",
            .. legend is null ? [] : new[] { legend },
            CommonNotes.Blends(state.Shape, text),
            .. CommonNotes.Stations(state.Shape, text),
            "FILLETS ARE NOT ENLARGED FOR THE FOUNDRY: LARGER ONLY AS AGREED.",
            CommonNotes.Draft(state, draft),
            .. wax ? [] : new[] { CommonNotes.Joint(parting, state) },
            CommonNotes.Gate,
            CommonNotes.Hole(plan, text),
            .. CommonNotes.Mark(state.Shape, text),
            .. Rapping(plan, text),
            wax ? "QUANTITY IS OF CASTINGS: ONE PATTERN EACH, AND SPARES." : "QUANTITY IS OF CASTINGS: BUILD THE PATTERN TO LAST THAT MANY.",
            "PRINTED PATTERN: SANDING AND PRIMER CHANGE A FACE BY " + text.Number(_leastSkin) + " TO " + text.Number(_mostSkin) + " (COMMON PRACTICE): MEASURE.",
            "SAME SIZE ON PATTERN AND TRIAL CASTING, EACH WAY: THEIR RATIO REPLACES THE CONTRACTION.",
            "SAFETY: WOOD, RESIN AND PLASTIC DUST, SOLVENT FUME: EXTRACTION, MASK, GLOVES. LOCAL CODES COME FIRST.",
        ];
    }

    private static IEnumerable<string> Second(MasterPatternLever? master)
    {
        if (master is not null)
            yield return "A WORKING PATTERN IS CAST FROM THIS MASTER: " + ContractionText.OneIn(master.PatternMetal) + " (" + ContractionText.Percent(master.PatternMetal) + ") MORE. STOCK FOR FINISHING THE WORKING PATTERN IS NOT IN.";
    }

    /// <summary>The mould is what a rapped pattern sweeps; the views show what the mould is to be.</summary>
    private static IEnumerable<string> Rapping(FoundryPlan plan, DimensionText text)
    {
        if (plan.Rapping.IsNone && plan.Process.Sand)
            yield return "RAPPING: NOTHING TAKEN OFF FOR IT.";
        if (!plan.Rapping.IsNone)
            yield return "FOR RAPPING TAKE OFF EACH SIDE " + text.Number(plan.Rapping.Along) + " ALONG THE ARMS, " + text.Number(plan.Rapping.Across) + " ALONG THE PIN; THE TABLE HAS IT OFF, THE VIEWS HAVE NOT.";
    }
}
