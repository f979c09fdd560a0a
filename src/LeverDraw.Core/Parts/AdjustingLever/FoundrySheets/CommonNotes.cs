using System.Globalization;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Parts.AdjustingLever.Sheets;
using LeverDraw.Profiles;
using LeverDraw.Standards;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.FoundrySheets;

/// <summary>What foundryman and pattern-maker both must read.</summary>
internal static class CommonNotes
{
    public static string Blends(Lever shape, DimensionText text)
    {
        Length fillet = shape.Sizes[LeverFields.Fillet].Nominal, round = shape.Sizes[LeverFields.EdgeRound].Nominal;
        string inner = fillet > Length.Zero ? "FILLETS WITHOUT A SIZE R" + text.Number(fillet) + LeverNotes.BossRoots(shape) : "INNER CORNERS WITHOUT A SIZE SHARP";
        return inner + (round > Length.Zero ? ", ROUND OUTER CORNERS R" + text.Number(round) + ", SIZES TO SHARP CORNERS." : ", OUTER CORNERS SHARP.") + Shoulders(shape);
    }

    /// <summary>Which point the shoulders' level means, and that it is the pivot's where no size says another.</summary>
    private static string Shoulders(Lever shape)
    {
        return Math.Abs(shape.Fork.ShoulderStart.Y) <= Coincidence.Distance ? " " + LeverNotes.ShouldersOf(shape) + " LEAVE HEAD LEVEL WITH PIVOT."
            : shape.Fork.ShoulderFillet is null ? "" : " SHOULDERS' LEVEL: WHERE FILLETS LEAVE HEAD.";
    }

    /// <summary>Where a tapered arm's thickness and a bulb's neck hold: in the view the level would share a line with the size.</summary>
    public static IEnumerable<string> Stations(Lever shape, DimensionText text)
    {
        if (shape.Forms.Arms == LeverFields.Tapered)
            yield return "ARMS TAPER STRAIGHT FROM THEIR THICKNESS, " + text.Number(LeverArmAnnotations.ThicknessLevel(shape)) + " BELOW AXIS, TO PADS' THICKNESS LESS STOCK AT PADS' TOP.";
        if (shape.Forms.Tongue == LeverFields.Bulb)
            yield return "NECK HOLDS HALF BULB'S ⌀ BEHIND CENTRE.";
    }

    /// <summary>How far the stock on the tongue's flanks is full: a slope without a size takes it out from there.</summary>
    public static string RunOut(Lever shape, DimensionText text)
    {
        if (shape.Side.Find("run-out-upper") is null)
            return "";
        double upper = shape.Side.FlankUpper.Length, lower = shape.Side.FlankLower.Length;
        Length from = Length.FromMillimetres(Math.Round(Math.Min(upper, lower), 1)), to = Length.FromMillimetres(Math.Round(Math.Max(upper, lower), 1));
        return "; TONGUE'S FULL FOR " + (from == to ? text.Number(from) : text.Within(from, to)) + " FROM NOSE'S ROUND";
    }

    public static string Draft(FoundryState state, PatternDraft draft)
    {
        if (state.Plan.Process == MouldingProcess.Investment)
            return "NO DRAFT: DRAFT AND JOINT OF THE WAX'S DIE ARE ITS MAKER'S, JOINT OFF FACES M.";
        string angles = string.Join(", ", draft.Walls.GroupBy(w => DimensionText.DegreesText(w.Angle)).Select(g => g.Key + (g.Count() == draft.Walls.Length ? "" : " ON " + string.Join(" AND ", g.Select(w => Name(w.Part)).Distinct()))));
        string held = draft.Sense switch
        {
            CastingFields.Plus => "PLUS: SIZES HOLD AT EACH FAR EDGE, METAL ADDED TOWARD JOINT",
            CastingFields.Minus => "MINUS: SIZES HOLD AT THE JOINT, METAL TAKEN TOWARD EACH FAR EDGE",
            _ => "HALF PLUS, HALF MINUS: SIZES HOLD HALF WAY UP EACH WALL",
        };
        return "DRAFT " + angles + " PER SIDE ON WALLS ALONG DRAW" + Rule(draft.Rule) + ", " + held + ". FORK VIEW WITHOUT IT.";
    }

    public static string Joint(PartingCandidate parting, FoundryState state)
    {
        string where = parting.Name switch
        {
            CastingFields.HeadMiddle => "FLAT, THROUGH THE HEAD'S MIDDLE",
            CastingFields.ArmBack => "FLAT, AT THE ARMS' BACK",
            CastingFields.AlongMiddle => "ALONG THE LEVER'S MIDDLE",
            CastingFields.AlongBack => "ALONG THE LEVER'S BACK, ALL " + (state.Shape.Mark is { Place: LeverFields.ArmBack } ? "BUT THE MARK " : "") + "IN ONE HALF",
            MouldParting.PinMiddle => "IN THE FORK'S MID-PLANE",
            _ => "LEVEL WITH THE PIVOT",
        };
        string block = parting is { IsFlat: false } && state.Plan.Process.Sand ? "; ODDSIDE OR FOLLOW BOARD" : "";
        string boss = state.Shape.Boss is null ? "" : "; COPED DOWN TO THE BOSSES' MIDDLE";
        string locked = parting.Draws ? "" : "; UNDERCUT: LOOSE PIECE OR CORE WANTED " + parting.LockedWhere.ToUpperInvariant().Replace(" MM ", " mm ", StringComparison.Ordinal);
        string split = parting.SplitFits.IsEmpty ? "" : "; CROSSES " + string.Join(" AND ", parting.SplitFits).ToUpperInvariant() + ": DRESS FLASH";
        return "JOINT (P.L.) " + where + boss + block + locked + split + ". IN FORK VIEW: OUTLINE.";
    }

    /// <summary>Where metal may come in, and where not.</summary>
    public const string Gate = "GATE INTO HEAD'S OR ARMS' BACK. NO GATE, RISER, VENT OR NUMBER ON FACES M.";

    public static IEnumerable<string> Mark(Lever shape, DimensionText text)
    {
        if (shape.Mark is { } mark)
            yield return "RAISED MARK \"" + mark.Text + "\" ON " + (mark.Place == LeverFields.ArmBack ? "RIGHT ARM IN FORK VIEW" : "HEAD'S RIGHT FACE IN FORK VIEW") + ", LETTERS " + text.Number(mark.LetterHeight) + " HIGH, " + text.Number(mark.Height) + " PROUD, DRAFT 10° (COMMON PRACTICE).";
    }

    public static string Hole(FoundryPlan plan, DimensionText text) => plan.CoredHole is { } cored
        ? "PIVOT HOLE CORED ⌀" + text.Number(cored) + " AS CAST" + (plan.Process.Sand ? "; CORE PRINTS C " + Times(CastingDesignRules.CorePrintLengthLeast) + " TO " + Times(CastingDesignRules.CorePrintLengthMost) + " DIAMETERS LONG (FROM MEMORY)." : ".")
        : "PIVOT HOLE SOLID: NO CORE PRINT, NO DIMPLE.";

    /// <summary>House rules contradict each other, so the one that is followed is named.</summary>
    private static string Rule(string rule) => rule switch
    {
        CastingFields.ByHeight => " (ISO 8062-4:2017, ONE TRANSCRIPTION)",
        CastingFields.WoodPattern => " (WOODEN PATTERNS, FROM MEMORY)",
        CastingFields.MetalPattern => " (METAL PATTERNS, FROM MEMORY)",
        CastingFields.FineSmall => " (1/16 in/ft, COURSE NOTES)",
        CastingFields.LeastOffset => " (0.03 in WHATEVER THE DEPTH, ONE FOUNDRY)",
        _ => "",
    };

    private static string Times(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);

    private static string Name(DraftedPart part) => part.ToString().ToUpper(CultureInfo.InvariantCulture);
}
