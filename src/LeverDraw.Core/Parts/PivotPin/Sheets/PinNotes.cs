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
    /// <summary>Below this the general tolerances name no chamfer (ISO 2768-1 table 2), millimetres.</summary>
    private const double SmallestGeneralChamfer = 0.5;

    /// <summary>What a turned chamfer is held to there (common practice, no source).</summary>
    private static readonly Length _smallChamfer = Length.FromMillimetres(0.1);

    public static ImmutableArray<string> Of(Pin pin, Profile profile, DimensionText text)
    {
        var notes = ImmutableArray.CreateBuilder<string>();
        if (pin.Series == PinFields.Inch)
            notes.Add("INCH TAPER PIN NO. " + pin.Designation + ": THE NUMBER NAMES THE LARGE END.");
        else if (pin.Series == PinFields.Metric)
            notes.Add("METRIC TAPER PIN " + pin.Designation + ": THE SIZE NAMES THE SMALL END.");
        notes.AddRange(pin.Taper.IsParallel ? [] : Checks(pin));
        notes.Add(string.Join(' ', Making(pin, profile, text)));
        notes.AddRange(pin.Taper.IsParallel ? Lugs(pin, text) : Drive(pin, text));
        if (profile.Values.Get(CommonFields.Reproduction))
            notes.Add(ReproductionNote.Text);
        notes.Add("SAFETY: SUPPORT THE LUG DIRECTLY WHEN DRIVING, IT IS BRITTLE IRON AND TOO MUCH DRIVE SPLITS IT. EYE PROTECTION. FOLLOW LOCAL RULES.");
        return notes.ToImmutable();
    }

    private static IEnumerable<string> Making(Pin pin, Profile profile, DimensionText text)
    {
        yield return "EDGE SIGN: ALL EDGES. Ra IN MICROMETRES.";
        if (pin.Chamfer is { Millimetres: > 0 and < SmallestGeneralChamfer })
            yield return "CHAMFERS ±" + text.Number(_smallChamfer) + ".";
        if (profile.Values.Get(CommonFields.Finish) is { Length: > 0 } finish)
            yield return "FINISH: " + finish.ToUpperInvariant() + ".";
        if (MassNote.Of(PinMass.Volume(pin) / 1000, profile.Values.Get(CommonFields.Material)) is { } mass)
            yield return mass;
    }

    private static IEnumerable<string> Drive(Pin pin, DimensionText text)
    {
        string large = pin.LargeEndRight ? "RIGHT" : "LEFT", small = pin.LargeEndRight ? "LEFT" : "RIGHT";
        yield return "LARGE END AT THE USER'S " + large + ". DRIVE IN FROM THE " + large + ", DRIFT OUT FROM THE " + small + ".";
        Length least = PinClearance.ByDriving(pin.StandOutLeast, pin.Taper), most = PinClearance.ByDriving(pin.StandOutMost, pin.Taper);
        yield return "REAM THE LUGS TO SUIT EACH PIN: STOP WHEN THE PIN PUSHED IN BY HAND STANDS " + text.InSentence(pin.StandOutLeast, pin.StandOutMost) + " SHORT OF HOME (ENDS EQUALLY PROUD)."
            + " DRIVEN HOME IT GRIPS BY " + text.FineRange(least, most) + " ON DIAMETER; MORE THAN " + text.FineAtMost(TaperPinFitting.MostInterference) + " MAY SPLIT A LUG.";
    }

    /// <summary>What is checked and where; blueing and its share are common practice, no source.</summary>
    private static IEnumerable<string> Checks(Pin pin)
    {
        yield return "(SIZES IN ROUND BRACKETS) NOT CHECKED. END DIAMETERS ARE THE CONE'S IN THE END PLANES.";
        if (pin.GaugedAt is null)
            yield return "CHECK THE DIAMETER IN THE GAUGE PLANE, WHICH THE BOXED SIZE PLACES." + (pin.NamedSize.Tolerance is ZoneTolerance zone ? " ITS TOLERANCE IS THE " + (pin.NamedByLargeEnd ? "LARGE" : "SMALL") + " END'S " + zone.Code + "." : string.Empty);
        yield return "CHECK THE TAPER: BLUE IN A RING GAUGE OR A HOLE CUT BY THE REAMER, BEARING AT LEAST 75 %.";
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
        yield return "IT GRIPS BY " + text.FineRange(hole.LeastGrip, hole.MostGrip) + " ON DIAMETER; MORE THAN " + text.FineAtMost(TaperPinFitting.MostInterference) + " MAY SPLIT A LUG. BOTH ENDS EQUALLY PROUD.";
    }
}
