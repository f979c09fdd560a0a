using LeverDraw.Parts.Outlines;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>What it means for the user when a piece of the fork profile has no room left.</summary>
internal static class ForkFaults
{
    public static void Report(PathFault fault, LeverMeasures m, LeverFindings findings)
    {
        string lacking = LeverFindings.Mm(fault.Short);
        switch (fault.Name)
        {
            case "gap-side-right":
                findings.Odds($"the gap's sides are too short by {lacking} for the crotch radius above and the arm's end below",
                    "Make the arms longer, or the crotch radius, the web or the end corner smaller.", LeverFields.ArmLength, LeverFields.CrotchRadius, LeverFields.HeadHeight, LeverFields.Web);
                break;
            case "arm-end-right":
                findings.Odds($"the arm's end is too narrow by {lacking} for its two corners",
                    "Make the end corner at most half the arm's width.", LeverFields.ArmEndCorner, LeverFields.ArmWidth, LeverFields.EdgeRound);
                break;
            case "arm-outer-right" or "shoulder-round-right":
                findings.Odds($"the arm's outer side is too short by {lacking} between the shoulder and its end",
                    "End the shoulder higher, or make the arms longer.", LeverFields.ShoulderEnd, LeverFields.ArmLength, LeverFields.ShoulderRadius);
                break;
            case "shoulder-right" or "shoulder-fillet-right":
                findings.Odds($"the shoulder is too short by {lacking} for its fillet and round",
                    "Start the shoulder higher or end it lower, or make fillet and edge round smaller.", LeverFields.ShoulderStart, LeverFields.ShoulderEnd, LeverFields.Fillet, LeverFields.EdgeRound);
                break;
            case "head-side-right" or "head-round-right":
                findings.Odds($"the head's side is too short by {lacking} above the shoulder",
                    "Make the head higher or the edge round smaller, or start the shoulder lower.", LeverFields.HeadHeight, LeverFields.EdgeRound, LeverFields.ShoulderStart);
                break;
            case "tongue-side-right" or "tongue-fillet-right":
                findings.Odds($"the tongue stands too little above the head: {lacking} short for the fillet at its foot and the corners at its top",
                    "Make the tongue longer, the head lower, or fillet and edge round smaller.", LeverFields.TongueLength, LeverFields.HeadHeight, m.FootFilletField, LeverFields.Sweep);
                break;
            default:
                findings.Odds($"the {fault.Name.Replace('-', ' ')} has {lacking} less room than it needs",
                    "Make the fillets or edge rounds smaller.", LeverFields.EdgeRound, LeverFields.Fillet);
                break;
        }
    }
}
