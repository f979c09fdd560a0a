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
        notes.AddRange(pin.Taper.IsParallel ? [] : Checks(pin, text));
        if (pin.SideRoughness.Millimetres > 0)
            notes.Add("Ra IN MICROMETRES.");
        if (MassNote.Of(PinMass.Volume(pin) / 1000, profile.Values.Get(CommonFields.Material)) is { } mass)
            notes.Add(mass);
        if (profile.Values.Get(CommonFields.Finish) is { Length: > 0 } finish)
            notes.Add("FINISH: " + finish.ToUpperInvariant() + ".");
        notes.AddRange(pin.Taper.IsParallel ? Lugs(pin, text) : Drive(pin, text));
        if (profile.Values.Get(CommonFields.Reproduction))
            notes.Add(ReproductionNote.Text);
        notes.Add("SAFETY: SUPPORT THE LUG DIRECTLY WHEN DRIVING, IT IS BRITTLE IRON AND TOO MUCH DRIVE SPLITS IT. EYE PROTECTION. FOLLOW LOCAL RULES.");
        return notes.ToImmutable();
    }

    private static IEnumerable<string> Drive(Pin pin, DimensionText text)
    {
        string large = pin.LargeEndRight ? "RIGHT" : "LEFT", small = pin.LargeEndRight ? "LEFT" : "RIGHT";
        yield return "LARGE END AT THE USER'S " + large + ". DRIVE IN FROM THE " + large + ", DRIFT OUT FROM THE " + small + ".";
        yield return "REAM THE LUGS TO SUIT EACH PIN: STOP WHEN THE PIN PUSHED IN BY HAND STANDS " + text.InSentence(pin.StandOutLeast, pin.StandOutMost) + " SHORT OF HOME. HOME: BOTH ENDS EQUALLY PROUD.";
        Length least = PinClearance.ByDriving(pin.StandOutLeast, pin.Taper), most = PinClearance.ByDriving(pin.StandOutMost, pin.Taper);
        yield return "DRIVEN HOME IT GRIPS BY " + text.FineRange(least, most) + " ON DIAMETER; MORE THAN " + text.Fine(TaperPinFitting.MostInterference) + " MAY SPLIT A LUG.";
    }

    /// <summary>Where the sizes hold and how they are checked; blueing and its share are common practice, no source.</summary>
    private static IEnumerable<string> Checks(Pin pin, DimensionText text)
    {
        string gone = pin.Ends == PinFields.Crowned ? ", WHERE THE CROWN LEAVES NO METAL" : pin.Ends == PinFields.Chamfered ? ", WHERE THE CHAMFER LEAVES NO METAL" : string.Empty;
        yield return "END DIAMETERS HOLD IN THE END PLANES" + gone + ". (SIZES IN ROUND BRACKETS) FOLLOW FROM OTHERS.";
        if (AtGauge(pin) is { } limits)
            yield return "CHECK AT THE GAUGE PLANE, " + text.InSentence(pin.GaugePlane) + " FROM THE LARGE END: ⌀" + text.Limits(limits) + ".";

        yield return "CHECK THE TAPER: BLUE TO A RING GAUGE OR THE REAMER, BEARING AT LEAST 75 %.";
    }

    /// <summary>Limits of the named end's diameter, moved along the taper to the gauge plane; null without a tolerance of its own.</summary>
    public static SizeLimits? AtGauge(Pin pin)
    {
        if (StatedLimits.Of(pin.NamedSize) is not { } limits)
            return null;
        return limits.Moved(pin.Gauge - pin.NamedSize.Nominal);
    }

    private static IEnumerable<string> Lugs(Pin pin, DimensionText text)
    {
        if (StatedLimits.Of(pin.NamedSize) is not { } limits || LugHole.For(pin.NamedSize.Nominal, limits) is not { } hole)
        {
            yield return "PARALLEL PIN, HELD BY ITS FIT IN THE LUGS: HOLE TO BE AGREED.";
            yield break;
        }

        string drill = PilotDrill.ForParallel(hole.Limits.Min) is { IsGiven: true, Value: var d } ? ", DRILL " + (d.Name + " ⌀").TrimStart() + text.Fine(d.Diameter) + " AT MOST" : string.Empty;
        yield return "PARALLEL PIN, HELD BY ITS FIT. HOLES IN THE PLANE'S LUGS, REAMED IN LINE: " + string.Join(' ', text.Size(new SizeValue(pin.NamedSize.Nominal, new ZoneTolerance(hole.Zone.Text)), "⌀").Lines) + drill + ".";
        yield return "IT GRIPS BY " + text.FineRange(hole.LeastGrip, hole.MostGrip) + " ON DIAMETER; MORE THAN " + text.Fine(TaperPinFitting.MostInterference) + " MAY SPLIT A LUG.";
    }
}
