using System.Collections.Immutable;
using LeverDraw.Profiles;

namespace LeverDraw.Comparison.Sheets;

/// <summary>What the overlay sheet's reader has to know: how the two lie on each other, what the numbers are, and what the sheet is not for.</summary>
internal static class OverlayNotes
{
    public static ImmutableArray<string> Of(LeverComparison c, ImmutableArray<string> verdicts)
    {
        var all = ImmutableArray.CreateBuilder<string>();
        all.Add(Laid(c));
        all.AddRange(verdicts);
        all.Add("NOMINAL SIZES OF THE FINISHED PARTS. Δ IS B LESS A; LAST COLUMN: WHAT IT CHANGES FIRST.");
        all.Add("AT LEADERS: LARGEST DISTANCE OUTSIDE OR INSIDE THE OTHER, SQUARE TO ITS OUTLINE. AREAS WITHIN " + ValueText.AreaError(c) + ".");
        all.Add("ARMS: BOTH TOGETHER, SIMPLE BENDING; MODULUS AT THEIR STATED THICKNESS, LEAST AREA AND STRESS PER NEWTON OF THE NUT'S PUSH WHERE THEY ARE STRESSED MOST. HOLE, SECTION: METAL LEFT THROUGH ITS AXIS, BOSSES IN. IT COMPARES, IT PROMISES NO LOAD.");
        all.Add("NUMBERS AND REVISIONS ARE THE LEVERS' OWN. NOT FOR MAKING: WORK FROM EACH LEVER'S SHEETS.");
        if (c.A.Profile.Values.Get(CommonFields.Reproduction) || c.B.Profile.Values.Get(CommonFields.Reproduction))
            all.Add("REPRODUCTION PARTS: SAY SO ON PACKET AND BILL.");
        all.Add("SAFETY: BEFORE DRIFTING A PIN OUT FIND ITS SMALL END AND SUPPORT THE LUG: OLD IRON CRACKS. EYE PROTECTION. NEVER SQUEEZE OR BEND A CAST LEVER. FOLLOW LOCAL RULES.");
        return all.ToImmutable();
    }

    private static string Laid(LeverComparison c) =>
        "B IS LAID ON A BY " + c.Alignment.Words().ToUpperInvariant() + ": MOVED, NOT TURNED; ARMS ALONG ARMS, MID-PLANE ON MID-PLANE.";
}
