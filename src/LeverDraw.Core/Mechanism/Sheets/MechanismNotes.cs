using System.Collections.Immutable;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Mechanism.Setups;
using LeverDraw.Units;

namespace LeverDraw.Mechanism.Sheets;

/// <summary>The notes of the mechanism's sheet, for whoever repairs the plane.</summary>
internal static class MechanismNotes
{
    /// <summary>Heights that differ by less come out alike in what is worked out from them, millimetres.</summary>
    private const double SameHeight = 0.02;

    public static ImmutableArray<string> Of(Setup setup, DrawnGaps gaps, DimensionText text)
    {
        Linkage linkage = setup.Linkage;
        var notes = ImmutableArray.CreateBuilder<string>();
        notes.Add($"{setup.Lever.Name}; {setup.Pin.Name}; {setup.Plane.Name}: ".ToUpperInvariant() + Irons(setup, text) + ".");
        LostTurns now = LostTurns.Of("", linkage);
        notes.Add(Lost(now, linkage.Assembly));
        notes.AddRange(WhenNew(setup, now, text));
        notes.Add(OneTurn(linkage, text) + $" THREAD LEAD {text.InSentence(linkage.Lead)}, {(setup.Plane.Part.Nut.LeftHand ? "LEFT" : "RIGHT")} HAND.");
        notes.Add("SEEN FROM THE USER'S RIGHT AT MID-TRAVEL, THE TOE TO THE RIGHT, CUT IN THE MIDDLE, THE NUT CUT BESIDE THE STUD, NUT DRIVING THE IRON DOWN. " + gaps.Words());
        notes.Add($"SIDE PLAY: THE FORK'S TIPS SWING {text.InSentence(Rounded(SidePlay.Of(linkage)))} ACROSS.");
        if (linkage.Bearing.IsThin)
            notes.Add($"ONLY {text.InSentence(Rounded(linkage.Bearing.Land))} OF THE TONGUE'S FULL THICKNESS BEAR: TOO LITTLE.");
        notes.Add("SAFETY: PINS SIT IN BRITTLE IRON. SUPPORT THE LUG, WEAR EYE PROTECTION, DRILL RATHER THAN HAMMER. FOLLOW LOCAL RULES.");
        return notes.ToImmutable();
    }

    private static string Irons(Setup setup, DimensionText text)
    {
        Length iron = IronOf(setup.Found), usual = IronOf(setup.AllNew);
        return $"IRON {text.InSentence(iron)} THICK" + (iron == usual ? "" : $" (A NEW ONE {text.InSentence(usual)})") + $", CAP IRON {text.InSentence(setup.Found.Plane.CapIron.Thickness.Nominal)}";
    }

    private static Length IronOf(Assembly assembly) => assembly.Plane.Iron.Thickness.Nominal;

    /// <summary>Of a hole and a pin that taper unlike, the clearance is another at every place.</summary>
    private static string Lost(LostTurns now, Assembly assembly) =>
        $"LOST TURNS OF THE NUT, SIZES AT THE MIDDLE OF THEIR LIMITS{(assembly.Lever.Hole.Taper.Rate == assembly.Pin.Taper.Rate ? "" : ", HOLE AND PIN AT HEAD'S MID-PLANE")}: {Words.Turns(now.Meant)}" + (now.Exact is null ? " BY THE FORMULA." : now.Differ ? $", SOLVED EXACTLY (BY THE FORMULA {Words.Turns(now.Formula)})." : ".");

    /// <summary>What new parts would save; an iron of another thickness saves turns without anything being worn.</summary>
    private static IEnumerable<string> WhenNew(Setup setup, LostTurns now, DimensionText text)
    {
        Assembly allNew = setup.AllNew;
        if (Linkage.Of(allNew) is not { GoesTogether: true } fresh)
            yield break;
        double then = LostTurns.Of("", fresh).Meant;
        if (Math.Abs(then - now.Meant) < LostTurns.Apart)
            yield break;
        Length usual = IronOf(allNew);
        yield return "WITH ALL PARTS NEW" + (IronOf(setup.Found) == usual ? "" : $", THE IRON {text.InSentence(usual)} THICK") + $": {Words.Turns(then)}.";
    }

    /// <summary>As the travel's sheet has it at mid-travel, and how it follows from the lengths on this one.</summary>
    private static string OneTurn(Linkage linkage, DimensionText text)
    {
        TravelPoint middle = TravelPoint.AtMiddle(linkage);
        Length formula = linkage.TravelPerTurn, exact = middle.PerTurn ?? formula, depth = middle.DepthPerTurn ?? linkage.DepthPerTurn;
        bool slants = Math.Abs((linkage.IronArm - linkage.Bearing.Height).Millimetres) > SameHeight;
        return $"ONE TURN AT MID-TRAVEL MOVES THE IRON {text.InSentence(Rounded(exact))} ALONG THE BED, {text.InSentence(Rounded(depth))} IN DEPTH, SOLVED EXACTLY; "
            + $"BY LENGTHS LEAD × {text.Number(Rounded(linkage.IronArm))} / {text.Number(Rounded(linkage.NutArm))} = {text.Number(Rounded(formula))}"
            + (slants ? $": THE FLANKS' SLANT MAKES {text.Number(linkage.Bearing.Height)} ACT AS {text.Number(Rounded(linkage.IronArm))}." : ".");
    }

    private static Length Rounded(Length length) => Length.FromMillimetres(Math.Round(length.Millimetres, 3));
}
