using LeverDraw.Parts.Outlines;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>What it means for the user when a piece of the side profile has no room left.</summary>
internal static class SideFaults
{
    public static void Report(PathFault fault, LeverMeasures m, LeverFindings findings)
    {
        string lacking = LeverFindings.Mm(fault.Short);
        switch (fault.Name)
        {
            case "arm-right" or "arm-left":
                findings.Odds($"the arm's face is too short by {lacking} for the fillet at the head and the step at the pad",
                    "Make the arms longer, or the pads, the head or the head fillet smaller.", LeverFields.ArmLength, LeverFields.PadLength, LeverFields.HeadFillet, LeverFields.HeadDepth);
                break;
            case "flank-lower" or "flank-upper":
                findings.Odds($"the tongue's flank is too short by {lacking} for the fillet at the head and the nose",
                    "Make the tongue longer, or the head or the head fillet smaller.", LeverFields.TongueLength, LeverFields.HeadDepth, LeverFields.HeadFillet);
                break;
            case "nose-end" or "nose-corner-lower" or "nose-corner-upper":
                findings.Odds($"the corner radius {LeverFindings.Mm(m.NoseCorner)} is more than half the tongue's thickness ({LeverFindings.Mm(m.TongueThickness)})",
                    "Make the nose radius at most half the thickness.", LeverFields.NoseRadius, LeverFields.TongueThickness);
                break;
            case "crown-right" or "crown-left":
                findings.Odds($"the pad's crown is too short by {lacking} for its end corner and the fillet at its top",
                    "Make the pads longer, or the fillet or the end corner smaller.", LeverFields.PadLength, LeverFields.Fillet, LeverFields.PadEndCorner);
                break;
            case "pad-end" or "pad-corner-left" or "pad-corner-right":
                findings.Odds($"the pad's end is too narrow by {lacking} for its two corners",
                    "Make the end corner smaller or the crown radius larger.", LeverFields.PadEndCorner, LeverFields.CrownRadius, LeverFields.PadThickness);
                break;
            default:
                findings.Odds($"the {fault.Name.Replace('-', ' ')} has {lacking} less room than it needs",
                    "Make the fillets smaller.", LeverFields.HeadFillet, LeverFields.HeadDepth, LeverFields.TongueThickness);
                break;
        }
    }

}
