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

    public static string Draft(IFoundryState state, PatternDraft draft)
    {
        if (state.Plan.Process == MouldingProcess.Investment)
            return "NO DRAFT: THE WAX IS DRAWN FROM A DIE, WHOSE DRAFT AND JOINT ARE ITS MAKER'S, OFF THE FACES MARKED M.";
        string angles = string.Join(", ", draft.Walls.GroupBy(w => DimensionText.DegreesText(w.Angle)).Select(g => g.Key + (g.Count() == draft.Walls.Length ? "" : " ON " + string.Join(" AND ", g.Select(w => Name(w.Part)).Distinct()))));
        string held = draft.Sense switch
        {
            CastingFields.Plus => "PLUS: IT ADDS METAL, SIZES ARE HELD AT EACH WALL'S FAR EDGE AND ARE LARGER TOWARD THE JOINT",
            CastingFields.Minus => "MINUS: IT TAKES METAL, SIZES ARE HELD AT THE JOINT",
            _ => "HALF PLUS, HALF MINUS: SIZES ARE HELD HALF WAY UP EACH WALL",
        };
        return "DRAFT " + angles + " PER SIDE ON ALL WALLS ALONG THE DRAW, " + held + ".";
    }

    public static string Joint(PartingCandidate parting, MouldingProcess process)
    {
        string where = parting.Name switch
        {
            CastingFields.HeadMiddle => "FLAT, THROUGH THE HEAD'S MIDDLE",
            CastingFields.ArmBack => "FLAT, AT THE ARMS' BACK",
            CastingFields.AlongMiddle => "FOLLOWS THE LEVER'S MIDDLE",
            CastingFields.AlongBack => "FOLLOWS THE LEVER'S BACK, ALL METAL IN ONE HALF",
            MouldParting.PinMiddle => "IN THE FORK'S MID-PLANE",
            _ => "LEVEL WITH THE PIVOT",
        };
        string block = parting is { IsFlat: false } && process.Sand ? "; MOULD ON AN ODDSIDE OR FOLLOW BOARD" : "";
        string locked = parting.Draws ? "" : "; UNDERCUT: LOOSE PIECE OR CORE WANTED " + parting.LockedWhere.ToUpperInvariant().Replace(" MM ", " mm ", StringComparison.Ordinal);
        return "JOINT (P.L.) " + where + block + locked + "; IN THE FORK VIEW IT IS THE OUTLINE.";
    }

    /// <summary>Where metal may come in, and where not.</summary>
    public static string Gate(Lever shape) =>
        "GATE AT THE HEAD'S BACK OR THE ARMS' BACK. NO GATE, RISER, VENT OR NUMBER ON FACES MARKED M: PADS, TONGUE, " + (shape.Boss is null ? "HEAD'S SIDES" : "BOSSES") + ".";

    public static IEnumerable<string> Mark(Lever shape, DimensionText text)
    {
        if (shape.Mark is { } mark)
            yield return "RAISED MARK \"" + mark.Text + "\" ON " + (mark.Place == LeverFields.ArmBack ? "BACK OF RIGHT ARM" : "RIGHT HEAD FACE") + ", LETTERS " + text.Number(mark.LetterHeight) + " HIGH, " + text.Number(mark.Height) + " PROUD, SIDES DRAFTED ABOUT 10°.";
    }

    public static string Hole(FoundryPlan plan, DimensionText text) => plan.CoredHole is { } cored
        ? "PIVOT HOLE CORED ⌀" + text.Number(cored) + " AS CAST."
        : "PIVOT HOLE CAST SOLID, NO CORE PRINT, NO DIMPLE: IT IS DRILLED.";

    private static string Name(DraftedPart part) => part.ToString().ToUpper(CultureInfo.InvariantCulture);
}
