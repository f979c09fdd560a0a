using System.Collections.Immutable;
using LeverDraw.Profiles;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>The fields of a lever's profile that the foundry's states follow from; all may be left out. What each does: docs/adr/0007-foundry-states.md.</summary>
public static class CastingFields
{
    public const string ByMaterial = "by-material", Usual = "usual", Filing = "filing", None = "none", Solid = "solid", Cored = "cored";
    public const string Stated = "stated", ByHeight = "by-height", WoodPattern = "wood-pattern", MetalPattern = "metal-pattern", FineSmall = "fine-small-pattern", LeastOffset = "least-offset";
    public const string Plus = "plus", Minus = "minus", Middle = "middle", Best = "best";
    public const string HeadMiddle = "head-middle", ArmBack = "arm-back", AlongMiddle = "along-middle", AlongBack = "along-back";

    public static ChoiceField Metal { get; } = new("casting.metal", null, "Metal that is cast, for contraction, grades and sections; by-material takes it from material.name.",
        [ByMaterial, "grey-iron", "ductile-iron", "malleable-iron", "brass", "gunmetal", "aluminium-bronze", "aluminium"], ByMaterial);

    public static ChoiceField Process { get; } = new("casting.process", null, "Way of moulding; by-material takes it from material.process.",
        [ByMaterial, "green-sand", "resin-sand", "investment", "gravity-die"], ByMaterial);

    public static ChoiceField ToleranceGrade { get; } = new("casting.tolerance_grade", "DCTG", "Casting tolerance grade agreed with the foundry, for all sizes; usual takes the process's finest.",
        [Usual, .. Enumerable.Range(1, 16).Select(g => g.ToString(System.Globalization.CultureInfo.InvariantCulture))], Usual);

    public static ChoiceField AllowanceGrade { get; } = new("casting.allowance_grade", "RMAG", "Machining allowance: a grade of the standard, usual for the process's finest, filing for small faces dressed with a file, or none.",
        [Usual, Filing, None, "A", "B", "C", "D", "E", "F", "G", "H", "J", "K"], Usual);

    public static SizeField HeadAllowance { get; } = Allowance("casting.allowance_head", "each of the head's side faces, or each boss");

    public static SizeField PadAllowance { get; } = Allowance("casting.allowance_pads", "each crown of the pads");

    public static SizeField TongueAllowance { get; } = Allowance("casting.allowance_tongue", "the tongue's nose and filed flanks");

    public static ChoiceField Hole { get; } = new("casting.hole", null, "Whether the pivot hole is cast solid and drilled, or cored.", [Solid, Cored], Solid);

    public static TextField Contraction { get; } = new("casting.contraction", null, "Contraction as the foundry gives it: 1.6 %, 1 in 64, 3/16 in/ft or 16 mm/m; the metal's usual one when empty.", 20, "");

    public static ChoiceField PatternMetal { get; } = new("casting.pattern_metal", null, "Metal of a working pattern cast from a master, which then carries two contractions.",
        [None, "grey-iron", "ductile-iron", "malleable-iron", "brass", "gunmetal", "aluminium-bronze", "aluminium"], None);

    public static SizeField TrialPatternX { get; } = Trial("pattern", "x", "along the pin");

    public static SizeField TrialPatternN { get; } = Trial("pattern", "n", "square to the arms");

    public static SizeField TrialPatternZ { get; } = Trial("pattern", "z", "along the arms");

    public static SizeField TrialCastingX { get; } = Trial("casting", "x", "along the pin");

    public static SizeField TrialCastingN { get; } = Trial("casting", "n", "square to the arms");

    public static SizeField TrialCastingZ { get; } = Trial("casting", "z", "along the arms");

    public static SizeField TrialUncertainty { get; } = new("casting.trial_uncertainty", null, "How far a size measured on the trial may be off.", 0, 1, 0.05);

    public static SizeField RappingAlong { get; } = new("casting.rapping_along", null, "How much rapping enlarges the mould on each side along the arms.", 0, 1, 0);

    public static SizeField RappingAcross { get; } = new("casting.rapping_across", null, "How much rapping enlarges the mould on each side along the pin.", 0, 1, 0);

    public static ChoiceField DraftRule { get; } = new("casting.draft_rule", null, "Where the draft comes from: casting.draft, the standard's table by height, by the pattern's material, 1/16 inch per foot, or at least 0.03 inch whatever the height.",
        [Stated, ByHeight, WoodPattern, MetalPattern, FineSmall, LeastOffset], Stated);

    public static ChoiceField DraftSense { get; } = new("casting.draft_sense", null, "Plus draft adds metal and holds the size farthest from the parting, minus draft removes metal and holds it at the parting, middle holds it half way.",
        [Plus, Minus, Middle], Plus);

    public static ChoiceField Parting { get; } = new("casting.parting", "pl", "Where the mould parts; best takes the first without undercut that crosses the fewest fit faces.",
        [Best, HeadMiddle, ArmBack, AlongMiddle, AlongBack], Best);

    public static ChoiceField Colours { get; } = new("casting.colours", null, "Published list of colours for the pattern's faces that the sheet's legend follows, named by the colour of faces left as cast; they contradict each other, so agree one.",
        ["cast-black", "cast-red", None], "cast-black");

    public static TextField Quantity { get; } = new("casting.quantity", null, "How many castings are wanted, with what is beyond the order.", 20, "");

    public static ImmutableArray<FieldSpec> All { get; } =
    [
        Metal, Process, ToleranceGrade, AllowanceGrade, HeadAllowance, PadAllowance, TongueAllowance, Hole,
        Contraction, PatternMetal, TrialPatternX, TrialPatternN, TrialPatternZ, TrialCastingX, TrialCastingN, TrialCastingZ, TrialUncertainty,
        RappingAlong, RappingAcross, DraftRule, DraftSense, Parting, Colours, Quantity,
    ];

    private static SizeField Allowance(string name, string where) =>
        new(name, null, "Stock for machining on " + where + "; follows from casting.allowance_grade when not given.", 0, 3) { MayBeAbsent = true };

    private static SizeField Trial(string of, string axis, string along) =>
        new("casting.trial_" + of + "_" + axis, null, "A size " + along + " measured on a trial " + of + "; with its fellow it replaces the book's contraction that way.", 3, 500) { MayBeAbsent = true };
}
