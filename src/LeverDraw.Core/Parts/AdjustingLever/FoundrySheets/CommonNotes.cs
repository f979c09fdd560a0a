using System.Globalization;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Profiles;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.FoundrySheets;

/// <summary>What foundryman and pattern-maker both must read.</summary>
internal static class CommonNotes
{
    public static string Blends(Lever shape, DimensionText text)
    {
        Length fillet = shape.Sizes[LeverFields.Fillet].Nominal, round = shape.Sizes[LeverFields.EdgeRound].Nominal;
        string inner = fillet > Length.Zero ? "FILLETS WITHOUT A SIZE R" + text.Number(fillet) : "INNER CORNERS WITHOUT A SIZE SHARP";
        return inner + (round > Length.Zero ? ", OUTER CORNERS R" + text.Number(round) + "; SIZES TO THEM ARE TO THE SHARP CORNER." : ", OUTER CORNERS SHARP.");
    }

    public static string Draft(FoundryState state, PatternDraft draft)
    {
        if (state.Plan.Process == MouldingProcess.Investment)
            return "NO DRAFT: DRAFT AND JOINT OF THE WAX'S DIE ARE ITS MAKER'S, JOINT OFF FACES M.";
        string angles = string.Join(", ", draft.Walls.GroupBy(w => DimensionText.DegreesText(w.Angle)).Select(g => g.Key + (g.Count() == draft.Walls.Length ? "" : " ON " + string.Join(" AND ", g.Select(w => Name(w.Part)).Distinct()))));
        string held = draft.Sense switch
        {
            CastingFields.Plus => "PLUS: SIZES HOLD AT EACH WALL'S FAR EDGE, METAL IS ADDED TOWARD THE JOINT",
            CastingFields.Minus => "MINUS: SIZES HOLD AT THE JOINT, METAL IS TAKEN TOWARD THE FAR EDGE",
            _ => "HALF PLUS, HALF MINUS: SIZES HOLD HALF WAY UP EACH WALL",
        };
        return "DRAFT " + angles + " PER SIDE ALONG THE DRAW, " + held + ".";
    }

    public static string Joint(PartingCandidate parting, FoundryState state)
    {
        string where = parting.Name switch
        {
            CastingFields.HeadMiddle => "FLAT, THROUGH THE HEAD'S MIDDLE",
            CastingFields.ArmBack => "FLAT, AT THE ARMS' BACK",
            CastingFields.AlongMiddle => "ALONG THE LEVER'S MIDDLE",
            CastingFields.AlongBack => "ALONG THE LEVER'S BACK, ALL IN ONE HALF",
            MouldParting.PinMiddle => "IN THE FORK'S MID-PLANE",
            _ => "LEVEL WITH THE PIVOT",
        };
        string block = parting is { IsFlat: false } && state.Plan.Process.Sand ? "; ODDSIDE OR FOLLOW BOARD" : "";
        string boss = state.Shape.Boss is null ? "" : "; COPED DOWN TO THE BOSSES' MIDDLE";
        string locked = parting.Draws ? "" : "; UNDERCUT: LOOSE PIECE OR CORE WANTED " + parting.LockedWhere.ToUpperInvariant().Replace(" MM ", " mm ", StringComparison.Ordinal);
        string split = parting.SplitFits.IsEmpty ? "" : "; IT CROSSES " + string.Join(" AND ", parting.SplitFits).ToUpperInvariant() + ": DRESS FLASH AND MISMATCH";
        return "JOINT (P.L.) " + where + boss + block + locked + split + "; IN THE FORK VIEW IT IS THE OUTLINE.";
    }

    /// <summary>Where metal may come in, and where not.</summary>
    public static string Gate(Lever shape) =>
        "GATE INTO THE HEAD'S OR ARMS' BACK. NO GATE, RISER, VENT OR NUMBER ON FACES M: PADS, TONGUE, " + (shape.Boss is null ? "HEAD'S SIDES" : "BOSSES") + ".";

    public static IEnumerable<string> Mark(Lever shape, DimensionText text)
    {
        if (shape.Mark is { } mark)
            yield return "RAISED MARK \"" + mark.Text + "\" ON " + (mark.Place == LeverFields.ArmBack ? "RIGHT ARM IN FORK VIEW" : "HEAD'S RIGHT FACE IN FORK VIEW") + ", LETTERS " + text.Number(mark.LetterHeight) + " HIGH, " + text.Number(mark.Height) + " PROUD, DRAFT 10°.";
    }

    public static string Hole(FoundryPlan plan, DimensionText text) => plan.CoredHole is { } cored
        ? "PIVOT HOLE CORED ⌀" + text.Number(cored) + " AS CAST."
        : "PIVOT HOLE SOLID: NO CORE PRINT, NO DIMPLE.";

    private static string Name(DraftedPart part) => part.ToString().ToUpper(CultureInfo.InvariantCulture);
}
