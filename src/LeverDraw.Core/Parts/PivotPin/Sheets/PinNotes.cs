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
        if (MassNote.Of(PinMass.Volume(pin) / 1000, profile.Values.Get(CommonFields.Material)) is { } mass)
            notes.Add(mass);
        notes.AddRange(pin.Taper.IsParallel ? Lugs(pin, text) : Drive(pin, text));
        notes.AddRange(Oversize(pin, text));
        if (profile.Values.Get(CommonFields.Reproduction))
            notes.Add(ReproductionNote.Text);
        notes.Add("SAFETY: SUPPORT THE LUG DIRECTLY WHEN DRIVING, IT IS BRITTLE IRON AND TOO MUCH DRIVE SPLITS IT. EYE PROTECTION. FOLLOW LOCAL RULES.");
        return notes.ToImmutable();
    }

    private static IEnumerable<string> Making(Pin pin, Profile profile, DimensionText text)
    {
        yield return "EDGE SIGN: ALL EDGES. Ra IN MICROMETRES.";
        if (pin.Chamfer is { Millimetres: > 0 and < SmallestGeneralChamfer })
            yield return "CHAMFERS " + text.PlusMinus(_smallChamfer) + ".";
        if (profile.Values.Get(CommonFields.Finish) is { Length: > 0 } finish)
            yield return "FINISH: " + finish.ToUpperInvariant() + ".";
    }

    private static IEnumerable<string> Drive(Pin pin, DimensionText text)
    {
        string large = pin.LargeEndRight ? "RIGHT" : "LEFT", small = pin.LargeEndRight ? "LEFT" : "RIGHT";
        yield return "LARGE END AT THE USER'S " + large + ". DRIVE IN FROM THE " + large + ", DRIFT OUT FROM THE " + small + ".";
        Length least = PinClearance.ByDriving(pin.StandOutLeast, pin.Taper), most = PinClearance.ByDriving(pin.StandOutMost, pin.Taper);
        yield return "REAM THE LUGS TO SUIT EACH PIN: STOP WHEN THE PIN PUSHED IN BY HAND STANDS " + text.Within(pin.StandOutLeast, pin.StandOutMost) + " SHORT OF HOME (ENDS EQUALLY PROUD)."
            + " DRIVEN HOME IT GRIPS BY " + text.FineRange(least, most) + " ON DIAMETER; MORE THAN " + text.FineAtMost(TaperPinFitting.MostInterference) + " MAY SPLIT A LUG.";
    }

    /// <summary>What the next oversize asks for besides larger holes in the lugs: it would not go into the lever. The wall is as the lug's (common practice, no source).</summary>
    private static IEnumerable<string> Oversize(Pin pin, DimensionText text)
    {
        if (PinTools.MoreThanOwn(pin) is { } more)
            yield return "NEXT OVERSIZE: REAM THE LEVER'S HOLE TOO, " + text.FineInSentence(more) + " OVER ITS LIMITS, A TAPERED ONE WITH THE TABLE'S REAMER: SAME CLEARANCE. WALL ROUND IT AT LEAST HALF ITS DIAMETER.";
    }

    /// <summary>What is checked and where; blueing and its share are common practice, no source.</summary>
    private static IEnumerable<string> Checks(Pin pin)
    {
        const string Taper = "TAPER BY BLUE IN RING OR REAMED HOLE: BEARING AT LEAST 75 %.";
        yield return "SIZES IN ROUND BRACKETS, THE CONE'S IN ITS END PLANES, ARE NOT CHECKED. BOXED ARE EXACT.";
        if (pin.GaugedAt is null)
            yield return "CHECK ⌀ IN GAUGE PLANE, " + Taper + (pin.NamedSize.Tolerance is ZoneTolerance zone ? " ⌀ HAS THE TOLERANCE OF THE " + (pin.NamedByLargeEnd ? "LARGE" : "SMALL") + " END, " + zone.Code + "." : string.Empty);
        else
            yield return "CHECK " + Taper;
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
        // An even reamer cuts to the nominal size or over; how else to come to these limits is common practice, no source.
        yield return "NO REAMER OF EVEN SIZE CUTS TO THESE LIMITS: TAKE AN ADJUSTABLE ONE OR ONE GROUND TO THEM, TRIED IN SCRAP, OR LAP THE HOLES TO THEM.";
        yield return "IT GRIPS BY " + text.FineRange(hole.LeastGrip, hole.MostGrip) + " ON DIAMETER; MORE THAN " + text.FineAtMost(TaperPinFitting.MostInterference) + " MAY SPLIT A LUG. BOTH ENDS EQUALLY PROUD.";
    }
}
