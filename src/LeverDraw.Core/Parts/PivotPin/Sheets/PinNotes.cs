using System.Collections.Immutable;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Profiles;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;

namespace LeverDraw.Parts.PivotPin.Sheets;

/// <summary>The notes of the pin's sheet: what the series calls it, which tools it takes, how it is driven.</summary>
internal static class PinNotes
{
    public static ImmutableArray<string> Of(Pin pin, Profile profile, DimensionText text)
    {
        var notes = ImmutableArray.CreateBuilder<string>();
        if (pin.Series == PinFields.Inch)
        {
            notes.Add("INCH TAPER PIN NO. " + pin.Designation + ": THE NUMBER NAMES THE LARGE END.");
            notes.AddRange(Tools(pin, text));
        }
        else if (pin.Series == PinFields.Metric)
        {
            notes.Add("METRIC TAPER PIN " + pin.Designation + ": THE SIZE NAMES THE SMALL END.");
        }

        string endForm = pin.Ends == PinFields.Crowned ? ", BEFORE THE CROWN" : pin.Ends == PinFields.Chamfered ? ", BEFORE THE CHAMFER" : string.Empty;
        if (pin.Taper.IsParallel)
        {
            notes.Add("PARALLEL PIN: HELD BY ITS FIT IN THE LUGS.");
        }
        else
        {
            notes.Add("END DIAMETERS HOLD IN THE END PLANES" + endForm + ". (SIZES IN ROUND BRACKETS) FOLLOW FROM OTHERS.");
            string large = pin.LargeEndRight ? "RIGHT" : "LEFT";
            string small = pin.LargeEndRight ? "LEFT" : "RIGHT";
            notes.Add("LARGE END AT THE USER'S " + large + ". DRIVE IN FROM THE " + large + ", DRIFT OUT FROM THE " + small + ".");
            notes.Add("PUSHED IN BY HAND THE LARGE END STANDS OUT " + text.Number(pin.StandOutLeast) + " TO " + text.InSentence(pin.StandOutMost) + " BEFORE DRIVING.");
        }

        if (profile.Values.Get(CommonFields.Reproduction))
            notes.Add("REPRODUCTION PART: SELL AND MARK IT AS SUCH.");
        notes.Add("SAFETY: SUPPORT THE LUG DIRECTLY WHEN DRIVING, IT IS BRITTLE IRON AND TOO MUCH DRIVE SPLITS IT. EYE PROTECTION. FOLLOW LOCAL RULES.");
        return notes.ToImmutable();
    }

    private static IEnumerable<string> Tools(Pin pin, DimensionText text)
    {
        Answer<InchTaperPin> standard = InchTaperPins.Numbered(pin.Designation);
        if (!standard.IsGiven)
            yield break;
        Answer<PinDrillChoice> drill = TaperPinChoice.Drill(standard.Value, pin.Length.Nominal);
        Answer<TaperPinReamer> reamer = TaperPinChoice.Reamer(standard.Value, pin.Length.Nominal);
        string tools = "HOLE IN THE PLANE'S LUGS, BOTH REAMED IN LINE: ";
        tools += drill.IsGiven ? "DRILL " + drill.Value.Drill.Name + " (⌀" + text.InSentence(drill.Value.Drill.Diameter) + "), " : string.Empty;
        tools += reamer.IsGiven ? "TAPER REAMER NO. " + reamer.Value.Number : "TAPER REAMER 1:48";
        Answer<InchTaperPin> next = InchTaperPins.Above(standard.Value);
        if (next.IsGiven)
            tools += ". NEXT OVERSIZE: NO. " + next.Value.Number + " (⌀" + text.InSentence(next.Value.LargeEnd) + ")";
        yield return tools + ".";
    }
}
