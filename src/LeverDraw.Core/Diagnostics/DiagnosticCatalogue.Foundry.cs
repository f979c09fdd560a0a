using System.Collections.Immutable;

namespace LeverDraw.Diagnostics;

/// <content>LD41x to LD43x: casting, pattern and mould.</content>
public static partial class DiagnosticCatalogue
{
    public static DiagnosticKind FoundryUnknown { get; } = new("LD410", Severity.Error, "metal or process not known to the foundry's tables",
        "The tables hold no {0} that \"{1}\" means.",
        "Give '{2}': {3}.",
        "process = \"Turned from bar\"", ["way of moulding", "Turned from bar", "casting.process", "green-sand, resin-sand, investment, gravity-die"]);

    public static DiagnosticKind BadContraction { get; } = new("LD411", Severity.Error, "not a contraction",
        "\"{0}\" is not a contraction.",
        "Write it as the foundry gives it, up to one part in thirty: \"1.6 %\", \"1 in 64\", \"3/16 in/ft\" or \"16 mm/m\".",
        "contraction = \"1.6\"", ["1.6"]);

    public static DiagnosticKind TrialIncomplete { get; } = new("LD412", Severity.Error, "half a trial",
        "'{0}' stands without '{1}'; a trial needs the same size on the pattern and on its casting.",
        "Give '{1}' too, or leave both out.",
        "trial_pattern_z = 48.8", ["casting.trial_pattern_z", "casting.trial_casting_z"]);

    public static DiagnosticKind TrialImpossible { get; } = new("LD413", Severity.Error, "trial without contraction",
        "'{0}' and '{1}' give a contraction of {2} %; castings contract by 0 to 5 %.",
        "Check both readings, and that they are of the same size.",
        "trial_pattern_z = 48, trial_casting_z = 48.8", ["casting.trial_pattern_z", "casting.trial_casting_z", "-1.64"]);

    public static DiagnosticKind CastingTableEmpty { get; } = new("LD414", Severity.Error, "no usual grade",
        "The tables give no {0} for {1} by {2}.",
        "State the grade, or the stock in millimetres, as agreed with the foundry.",
        "a metal the process has no row for", ["casting tolerance grade", "aluminium", "gravity die casting"]);

    public static DiagnosticKind CastingToleranceMissing { get; } = new("LD415", Severity.Error, "no casting tolerance for this size",
        "There is no casting tolerance for {0}: {1}.",
        "Take a finer 'casting.tolerance_grade', as agreed with the foundry.",
        "tolerance_grade = \"14\"", ["pad thickness", "casting tolerance grade 14 is not given for sizes over 0 up to 10 mm"]);

    public static DiagnosticKind HoleNotCastable { get; } = new("LD416", Severity.Warning, "hole too small to core",
        "A cored hole of {0} through {1} does not come out: {2}. It is cast solid.",
        "Leave 'casting.hole' at \"solid\" and drill.",
        "hole = \"cored\" on a pivot hole in sand", ["1.2 mm", "9.5 mm", "hand-moulded green sand casts no hole below 6 mm (from memory)"]);

    public static DiagnosticKind MayNotCleanUp { get; } = new("LD417", Severity.Error, "face may not clean up",
        "{0}: in the worst case {1} of stock is missing on each face (casting {2} less {3}, finished up to {4}).",
        "Give at least that much more stock, or agree a finer casting tolerance with the foundry.",
        "allowance_pads = 0.2 in green sand", ["pad thickness", "0.3 mm", "3.45 mm", "1 mm", "3.05 mm"]);

    public static DiagnosticKind ThinSection { get; } = new("LD418", Severity.Warning, "thin section",
        "The {0} of {1} is thinner than the {2} that {3} usually fills by {4} ({5}).",
        "Make it thicker, cast by investment, or ask the foundry to pour hot into short, thick gates.",
        "arms 2.8 mm thick in grey iron", ["arms' thickness", "2.8 mm", "4 mm", "grey iron", "hand-moulded green sand", "design guidelines, weak"]);

    public static DiagnosticKind AbruptSection { get; } = new("LD419", Severity.Warning, "abrupt change of section",
        "The {0} is {1} times as thick as the {2}; neighbours should differ by at most {3} or change over a slope of 1 in {4} (one guide, weak).",
        "Ease the change with a larger 'blends.head_fillet' or a web, and feed the thicker part.",
        "a head of 9 mm on arms of 4.2 mm", ["head", "2.1", "arms", "30 %", "4"]);

    public static DiagnosticKind HotSpot { get; } = new("LD420", Severity.Warning, "hot spot",
        "The {0} sets last: an inscribed circle of {1} against {2} in the {3}, and a modulus {4} times as large (common practice: above 1.2 it wants feeding).",
        "Gate or feed into the {0}; never into pads, tongue or bosses.",
        "a thick head on thin arms", ["head", "9 mm", "4.2 mm", "arms", "1.33"]);

    public static DiagnosticKind SmallCastFillet { get; } = new("LD421", Severity.Warning, "fillet small for a casting",
        "The fillet {0} of {1} is below {2} ({3}).",
        "Make it larger where the fit allows.",
        "fillet = 0.6", ["'blends.fillet'", "0.6 mm", "1 mm", "common practice; one weak guide asks 3 mm"]);

    public static DiagnosticKind DraftSmall { get; } = new("LD422", Severity.Warning, "draft missing or small",
        "A draft of {0} on walls {1} deep is below the {2} that is wanted ({3}).",
        "Give more 'casting.draft', or choose a 'casting.draft_rule'.",
        "draft = 0", ["0°", "4.5 mm", "1°", "iron foundry guide, 1 to 3 degrees"]);

    public static DiagnosticKind DraftOnFitFace { get; } = new("LD423", Severity.Warning, "draft on a machined face",
        "Draft of {0} over {1} changes {2} by {3} on each face between joint and far end.",
        "Machine these faces square after casting; hold the draft at the far end (plus), so that it takes no stock.",
        "plus draft on the head's sides", ["2°", "4.5 mm", "head width", "0.16 mm"]);

    public static DiagnosticKind Undercut { get; } = new("LD424", Severity.Warning, "undercut",
        "No joint draws the pattern freely; the best, {0}, is locked by {1} {2}.",
        "Change the shape there, or use a loose piece or a core.",
        "a tongue bent back over the head", ["a joint along the back", "0.4 mm", "at 3.1 mm above the pivot"]);

    public static DiagnosticKind PartingThroughFit { get; } = new("LD425", Severity.Warning, "joint through a fit size",
        "With {0} the mould parts through {1}: its two halves' mismatch and the closing of the mould go into the size, and flash stands on its edge.",
        "Take another 'casting.parting', or leave stock to dress it.",
        "parting = \"along-middle\"", ["a joint along the middle", "the pads and the tongue"]);

    public static DiagnosticKind MarkNotCastable { get; } = new("LD426", Severity.Warning, "mark may not cast",
        "The raised mark {0}.",
        "Change 'mark.place', 'mark.height' or 'mark.letter_height'.",
        "height = 0.2", ["stands 0.2 mm high; below 0.4 mm it blurs (common practice; one gravity guide asks 1 mm)"]);

    public static DiagnosticKind StockBesideSection { get; } = new("LD427", Severity.Warning, "stock larger than the section bears",
        "{0} of stock on each face makes {1} {2} of a finished {3}: most of the face is cut away, and the joined parts set unevenly.",
        "For small faces agree a finer casting tolerance, cast by investment, or take 'casting.allowance_grade' = \"filing\" (0.5 mm).",
        "usual stock on pads 3 mm thick in sand", ["1 mm", "pad thickness", "5.05 mm", "3.05 mm"]);

    public static DiagnosticKind BrittleMetal { get; } = new("LD428", Severity.Warning, "brittle metal for thin arms",
        "Arms of {0} in {1} snap when squeezed or bent (common practice).",
        "Consider a tough metal: ductile or malleable iron, bronze or brass. Never bend, squeeze or drive a pin through an unsupported casting.",
        "metal = \"grey-iron\"", ["3.6 mm", "grey iron"]);

    public static DiagnosticKind NoCasting { get; } = new("LD429", Severity.Error, "no room for the stock",
        "With {0} of stock on the head's sides, {1} on the pads and {2} on the tongue no casting can be built: {3}",
        "Take less stock, or change the fields named.",
        "2 mm of stock on a bulb tongue", ["1 mm", "1 mm", "2 mm", "'tongue.length' and 'blends.head_fillet' are at odds: the tongue's flank is too short by 0.4 mm."]);

    public static DiagnosticKind NoPatternMetal { get; } = new("LD430", Severity.Error, "master without a working pattern",
        "A master is drawn for a working pattern that is cast itself, and '{0}' names no metal for one.",
        "Give '{0}', such as \"aluminium\", or draw the sheet pattern.",
        "draw --sheet master without casting.pattern_metal", ["casting.pattern_metal"]);

    public static DiagnosticKind NotALever { get; } = new("LD431", Severity.Error, "not a lever",
        "This is a profile of a {0}; only a lever has an original to mould.",
        "Give the profile of a lever.",
        "remould profiles/pins/early.toml", ["pin"]);

    private static ImmutableArray<DiagnosticKind> Foundry() =>
    [
        FoundryUnknown, BadContraction, TrialIncomplete, TrialImpossible, CastingTableEmpty, CastingToleranceMissing, HoleNotCastable, MayNotCleanUp,
        ThinSection, AbruptSection, HotSpot, SmallCastFillet, DraftSmall, DraftOnFitFace, Undercut, PartingThroughFit, MarkNotCastable, StockBesideSection, BrittleMetal, NoCasting, NoPatternMetal, NotALever,
    ];
}
