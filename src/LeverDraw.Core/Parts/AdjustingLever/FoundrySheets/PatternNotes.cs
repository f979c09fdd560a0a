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

    public static string TitleTolerance(DimensionText text) => "PATTERN ±" + text.Number(_tolerance) + " (COMMON PRACTICE)";

    public static ImmutableArray<string> Of(IFoundryState state, PartingCandidate parting, PatternDraft draft, DimensionText text, MasterPatternLever? master = null)
    {
        FoundryPlan plan = state.Plan;
        bool wax = plan.Process == MouldingProcess.Investment;
        return
        [
            "ALL SIZES ARE THE " + (master is null ? "PATTERN'S" : "MASTER'S") + ": STOCK AND CONTRACTION ARE IN; ADD NONE. DOUBLE-DOTTED LINE: FINISHED FACE AT THE SAME CONTRACTION. (IN BRACKETS): FOLLOWS FROM OTHER SIZES.",
            FoundrySheetWords.Contraction(plan.Rates, plan.Metal) + ".",
            .. Second(master),
            .. wax ? new[] { "THIS IS THE WAX OR PRINTED PATTERN: THE DIE'S MAKER ADDS THE CONTRACTION OF HIS WAX, WHICH IS NOT IN." } : [],
            "M: MACHINED AFTER CASTING, WITH ITS STOCK AS CAST.",
            CommonNotes.Blends(state.Shape, text),
            "FILLETS ARE NOT ENLARGED FOR THE FOUNDRY: MAKE NONE LARGER WHERE IT WOULD FOUL THE FITS, ELSEWHERE ONLY AS AGREED.",
            CommonNotes.Draft(state, draft),
            .. wax ? [] : new[] { CommonNotes.Joint(parting, plan.Process) },
            CommonNotes.Gate(state.Shape),
            CommonNotes.Hole(plan, text),
            .. CommonNotes.Mark(state.Shape, text),
            .. Rapping(plan, text),
            "PRINTED PATTERN: SANDING AND PRIMER CHANGE EACH FACE BY " + text.Number(_leastSkin) + " TO " + text.Number(_mostSkin) + " (COMMON PRACTICE): MEASURE IT WHEN READY.",
            "MEASURE PATTERN AND TRIAL CASTING ALONG THE SAME SIZE EACH WAY: THEIR RATIO REPLACES THE CONTRACTION.",
            "SAFETY: FINE WOOD, RESIN AND PRINTED-PLASTIC DUST AND SOLVENT FUME HARM LUNGS: EXTRACTION, SUITABLE MASK, GLOVES. FOLLOW LOCAL RULES.",
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
        if (!plan.Rapping.IsNone)
            yield return "FOR RAPPING TAKE OFF EACH SIDE " + text.Number(plan.Rapping.Along) + " ALONG THE ARMS, " + text.Number(plan.Rapping.Across) + " ALONG THE PIN; THE VIEWS ARE BEFORE THAT, THE TABLE IS AFTER IT.";
    }
}
