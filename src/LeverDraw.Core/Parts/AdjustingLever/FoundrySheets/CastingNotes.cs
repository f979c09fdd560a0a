using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Profiles;
using LeverDraw.Standards;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.FoundrySheets;

/// <summary>The notes of the casting's sheet, for the foundry.</summary>
internal static class CastingNotes
{
    public static ImmutableArray<string> Of(CastingLever casting, Profile profile, PartingCandidate parting, PatternDraft draft, DimensionText text)
    {
        FoundryPlan plan = casting.Plan;
        return
        [
            "AS CAST, FETTLED: STOCK " + (draft.Walls.IsEmpty ? "" : "AND DRAFT ") + "IN, CONTRACTION NOT. DOUBLE-DOTTED: FINISHED FACE. (BRACKETS): FOLLOWS FROM OTHERS.",
            FoundrySheetWords.Contraction(plan.Rates, plan.Metal, "IN STOCK") + ".",
            "M: MACHINED, WITH STOCK PER FACE" + Stock(profile.Values, plan, text) + CommonNotes.RunOut(casting.Shape, text) + "; REST AS CAST.",
            CommonNotes.Blends(casting.Shape, text),
            .. CommonNotes.Stations(casting.Shape, text),
            CommonNotes.Draft(casting, draft),
            .. plan.Process == MouldingProcess.Investment ? [] : new[] { CommonNotes.Joint(parting, casting) },
            CommonNotes.Gate,
            CommonNotes.Hole(plan, text),
            .. CommonNotes.Mark(casting.Shape, text),
            Tolerance(casting, profile.Values, text),
            PickUp(casting.Shape) + " NUMBER IMPRESSIONS, KEEP A FEW UNCUT.",
            Mass(casting, profile),
            .. Thin(casting),
            .. Findings(casting, profile.Values),
            Safety(plan.Metal, plan.Process),
        ];
    }

    /// <summary>What the title block says of sizes without their own.</summary>
    public static string TitleTolerance(FoundryPlan plan) => "ISO 8062-3:2007 " + Grades(plan.Tolerance);

    private static string Grades(CastingToleranceRule rule) =>
        "DCTG " + Number(rule.Grade) + (rule.FinerWhenSmall ? " (TO 10 mm " + Number(rule.Grade - 3) + ", TO 16 " + Number(rule.Grade - 2) + ", TO 25 " + Number(rule.Grade - 1) + ")" : "");

    /// <summary>What the stock follows from; none of it where the profile states it for every face.</summary>
    private static string Stock(IFieldValues values, FoundryPlan plan, DimensionText text)
    {
        SizeField[] faces = [CastingFields.HeadAllowance, CastingFields.PadAllowance, CastingFields.TongueAllowance];
        if (faces.All(f => values.Find(f) is not null))
            return " AS AGREED WITH THE FOUNDRY";
        if (values.Get(CastingFields.AllowanceGrade) == CastingFields.Filing)
            return " FOR A FILE (COMMON PRACTICE)";
        return StockPlan.GradeOf(values, plan.Metal, plan.Process) is { } grade
            ? " BY ISO 8062-3:2007 RMAG " + grade + ", AT LEAST " + text.Number(plan.Required) + " LEFT" + (plan.Process.Allowances(plan.Metal)?.Certainty == Certainty.Solid ? "" : " (ONE SOURCE)")
            : "";
    }

    private static string Tolerance(CastingLever casting, IFieldValues values, DimensionText text)
    {
        FoundryPlan plan = casting.Plan;
        bool agreed = values.Get(CastingFields.ToleranceGrade) != CastingFields.Usual;
        string sure = agreed ? "AS AGREED WITH THE FOUNDRY" : "THE PROCESS'S FINEST" + plan.Process.Grades(plan.Metal)?.Certainty switch
        {
            Certainty.FromMemory => " (FROM MEMORY)",
            Certainty.Thin => " (ONE SOURCE)",
            _ => "",
        } + ": AGREE IT WITH THE FOUNDRY";
        string? steps = AsCastNote.Steps(plan.Tolerance, casting.Shape.Largest, text);
        // The grade stands in the title block.
        return "TOLERANCES " + (steps ?? TitleTolerance(plan)) + ", " + sure + "; WALLS ONE COARSER, RADII AS DRAWN.";
    }

    /// <summary>Off the joint, the gate and the machined faces, far apart, and no drafted face alone: draft is alike on both outer sides (own proposal).</summary>
    private static string PickUp(Lever shape) =>
        "BOTH SHOPS MEASURE FROM ARMS' FRONT (TONGUE SIDE, 3 POINTS), MIDDLE OF FORK'S WIDTH, HEAD'S " + (shape.Forms.Head == LeverFields.Round ? "ROUND." : "TOP.");

    private static IEnumerable<string> Thin(CastingLever casting)
    {
        FoundryPlan plan = casting.Plan;
        if (SectionFindings.ThinSections(casting) is { IsEmpty: false } thin && plan.Process.LeastSection(plan.Metal) is { } least)
        {
            yield return "THINNER THAN THE " + Millimetres(least.From) + " mm THAT " + plan.Metal.Name.ToUpperInvariant() + " USUALLY FILLS BY " + plan.Process.Name.ToUpperInvariant() + " (" + least.Kind.ToUpperInvariant() + "): "
                + string.Join(", ", thin.Select(t => t.Name.ToUpperInvariant() + " " + Millimetres(t.Size))) + ". POUR HOT.";
        }
    }

    private static string Mass(CastingLever casting, Profile profile)
    {
        MassProperties mass = LeverMass.Of(casting.Shape);
        string modulus = string.Create(CultureInfo.InvariantCulture, $"MODULUS: HEAD {SectionFindings.HeadModulus(casting.Shape).Millimetres:0.00}, ARMS {SectionFindings.ArmModulus(casting.Shape).Millimetres:0.00} mm: HOT SPOT IN HEAD, FEED IT.");
        string material = MaterialOfText.FoundryWord(profile.Values.Get(CommonFields.Material)) == casting.Plan.Metal.Word ? profile.Values.Get(CommonFields.Material) : casting.Plan.Metal.Name;
        return (MassNote.Of(mass.CubicCentimetres, material) is { } note ? note.TrimEnd('.') + ", NO GATES, NO DRAFT. " : "") + modulus;
    }

    /// <summary>The head's thickness and hot spot stand with the modulus, where the joint runs stands with the joint, thin sections together.</summary>
    private static readonly ImmutableArray<string> _saidElsewhere = [DiagnosticCatalogue.ThinSection.Code, DiagnosticCatalogue.AbruptSection.Code, DiagnosticCatalogue.HotSpot.Code, DiagnosticCatalogue.PartingThroughFit.Code, DiagnosticCatalogue.Undercut.Code];

    /// <summary>What else <c>check</c> tells.</summary>
    private static IEnumerable<string> Findings(CastingLever casting, IFieldValues values) =>
        Castability.Of(casting, values).Where(d => d.Severity == Severity.Warning && !_saidElsewhere.Contains(d.Code)).Select(d => Upper(InWords(d)));

    /// <summary>A reader of the sheet has no profile: the field's name becomes plain words.</summary>
    private static string InWords(Diagnostic told)
    {
        if (told.Field is not { } field)
            return told.Message;
        string quoted = "'" + field + "'", words = field.Replace('.', ' ').Replace('_', ' ');
        // "The fillet 'tongue.foot_fillet'" would say fillet twice.
        return told.Message.Replace("fillet " + quoted, quoted, StringComparison.Ordinal).Replace(quoted, words, StringComparison.Ordinal);
    }

    /// <summary>Units keep their small letters.</summary>
    private static string Upper(string message) => string.Join(" mm", message.ToUpperInvariant().Split(" MM"));

    private static string Safety(FoundryMetal metal, MouldingProcess process)
    {
        bool copper = metal.GradeGroup == "copper alloys";
        return "SAFETY: DAMP UNDER METAL, IN TOOLS OR MOULD THROWS METAL: DRY, PREHEAT, COVER FACE, BODY, FEET. "
            + (copper ? "ZINC FUME AND LEAD POISON: EXTRACTION, LOW-LEAD ALLOY, WASH. " : "")
            + (process == MouldingProcess.GravityDie ? "" : "SILICA DUST: WET OR EXTRACTED, MASK. ")
            + "LOCAL CODES AND TRAINED PEOPLE COME FIRST.";
    }

    private static string Millimetres(Length length) => length.Millimetres.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Number(int grade) => grade.ToString(CultureInfo.InvariantCulture);
}
