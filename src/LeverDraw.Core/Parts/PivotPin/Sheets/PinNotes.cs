using System.Collections.Immutable;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Profiles;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Parts.PivotPin.Sheets;

/// <summary>The notes of the pin's sheet: general, which end its series names, how it is driven, safety. Tools stand in a table of their own.</summary>
internal static class PinNotes
{
    public static ImmutableArray<string> Of(Pin pin, Profile profile, DimensionText text)
    {
        var notes = ImmutableArray.CreateBuilder<string>();
        if (pin.Series == PinFields.Inch)
            notes.Add("INCH TAPER PIN NO. " + pin.Designation + ": THE NUMBER NAMES THE LARGE END.");
        else if (pin.Series == PinFields.Metric)
            notes.Add("METRIC TAPER PIN " + pin.Designation + ": THE SIZE NAMES THE SMALL END.");
        if (pin.Taper.IsParallel)
        {
            notes.Add("PARALLEL PIN: HELD BY ITS FIT IN THE LUGS.");
        }
        else
        {
            string endForm = pin.Ends == PinFields.Crowned ? ", BEFORE THE CROWN" : pin.Ends == PinFields.Chamfered ? ", BEFORE THE CHAMFER" : string.Empty;
            notes.Add("END DIAMETERS HOLD IN THE END PLANES" + endForm + ". (SIZES IN ROUND BRACKETS) FOLLOW FROM OTHERS.");
        }

        if (MassNote.Of(PinMass.Volume(pin) / 1000, profile.Values.Get(CommonFields.Material)) is { } mass)
            notes.Add(mass);
        if (profile.Values.Get(CommonFields.Finish) is { Length: > 0 } finish)
            notes.Add("FINISH: " + finish.ToUpperInvariant() + ".");
        if (!pin.Taper.IsParallel)
            notes.AddRange(Drive(pin, text));
        if (profile.Values.Get(CommonFields.Reproduction))
            notes.Add("REPRODUCTION PART: SELL AND MARK IT AS SUCH.");
        notes.Add("SAFETY: SUPPORT THE LUG DIRECTLY WHEN DRIVING, IT IS BRITTLE IRON AND TOO MUCH DRIVE SPLITS IT. EYE PROTECTION. FOLLOW LOCAL RULES.");
        return notes.ToImmutable();
    }

    private static IEnumerable<string> Drive(Pin pin, DimensionText text)
    {
        string large = pin.LargeEndRight ? "RIGHT" : "LEFT", small = pin.LargeEndRight ? "LEFT" : "RIGHT";
        yield return "LARGE END AT THE USER'S " + large + ". DRIVE IN FROM THE " + large + ", DRIFT OUT FROM THE " + small + ".";
        yield return "PUSHED IN BY HAND THE LARGE END STANDS OUT " + text.Number(pin.StandOutLeast) + " TO " + text.InSentence(pin.StandOutMost) + " BEFORE DRIVING.";
        Length least = PinClearance.ByDriving(pin.StandOutLeast, pin.Taper), most = PinClearance.ByDriving(pin.StandOutMost, pin.Taper);
        yield return "DRIVEN THAT FAR IT GRIPS BY " + text.Number(least) + " TO " + text.InSentence(most) + " ON DIAMETER; MORE THAN " + text.Number(TaperPinFitting.MostInterference) + " MAY SPLIT A LUG.";
    }
}
