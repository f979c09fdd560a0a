using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.HostPlanes;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Mechanism.Fitting;

/// <summary>The pin in the lugs, and the lever's hole on the pin.</summary>
internal sealed class PinFit(Assembly assembly, LengthWords words)
{
    /// <summary>The pin driven home: both ends equally proud. A taper pin that is a little off stands short of home, or past it, by the difference over the taper.</summary>
    public FitContact InLugs()
    {
        const string Name = "pin in lugs";
        PlaneLugs lugs = assembly.Plane.Lugs;
        Pin pin = assembly.Pin;
        SizeLimits hole = Assembly.OfPlane(lugs.Hole), size = assembly.PinLimits;
        SizeLimits clearance = new(hole.Min - size.Max, hole.Max - size.Min);
        if (pin.Length.Nominal < lugs.OutToOut)
            return new(Name, clearance.Mid, clearance, FitState.Fails, $"the pin ({words.InSentence(pin.Length.Nominal)}) does not reach across both lugs ({words.InSentence(lugs.OutToOut)})", null);
        bool sameTaper = Math.Abs(pin.Taper.Rate - lugs.Taper.Rate) < 1e-6;
        // One sixteenth of an inch of drive is what a good hole leaves; a parallel pin is held by its fit alone.
        Length give = pin.Taper.IsParallel ? TaperPinFitting.MostInterference : TaperPinFitting.HandSeating * pin.Taper.Rate;
        if (sameTaper && clearance.Mid <= (pin.Taper.IsParallel ? Length.Zero : give) && clearance.Mid >= -give)
            return new(Name, clearance.Mid, clearance, FitState.Good, string.Empty, string.Empty);
        if (clearance.Mid > Length.Zero && sameTaper)
            return new(Name, clearance.Mid, clearance, FitState.Fails, "the pin is too small for the lugs' hole by " + words.InSentence(clearance.Mid), Larger(hole));
        if (sameTaper)
            return new(Name, clearance.Mid, clearance, FitState.Fails, "the pin is too large for the lugs' hole by " + words.InSentence(-clearance.Mid), Ream(pin.LargeEnd, lugs, pin.Designation));
        // A reamer only takes metal away: where the hole is wider than the pin already, it leaves it so.
        return new(Name, clearance.Mid, clearance, FitState.Fails, "pin and lugs' hole differ in taper", CleansUp() ? Ream(pin.LargeEnd, lugs, pin.Designation) : Larger(hole));
    }

    /// <summary>Reamed to the pin, the hole is the pin's from face to face.</summary>
    private bool CleansUp()
    {
        PlaneLugs lugs = assembly.Plane.Lugs;
        Length half = lugs.OutToOut / 2, limit = Assembly.OfPlane(lugs.Hole).Max;
        return limit + (half * lugs.Taper.Rate) <= assembly.PinLimits.Min + (half * assembly.Pin.Taper.Rate) && limit - (half * lugs.Taper.Rate) <= assembly.PinLimits.Min - (half * assembly.Pin.Taper.Rate);
    }

    public FitContact InHead()
    {
        Lever lever = assembly.Lever;
        SizeLimits hole = assembly.HoleLimits, pin = assembly.PinLimits;
        // The narrowest place is a face of the head, wherever pin and hole run apart.
        bool sameWay = lever.Hole.LargeEndRight == assembly.Pin.LargeEndRight;
        double apart = lever.Hole.Taper.IsParallel || assembly.Pin.Taper.IsParallel || sameWay
            ? Math.Abs(lever.Hole.Taper.Rate - assembly.Pin.Taper.Rate)
            : lever.Hole.Taper.Rate + assembly.Pin.Taper.Rate;
        Length lost = lever.Hole.HalfLength * apart;
        SizeLimits mid = new(hole.Min - pin.Max, hole.Max - pin.Min);
        if (mid.Mid - lost < Length.Zero)
        {
            Length over = lost - mid.Mid;
            return new("hole on pin", mid.Mid, mid, FitState.Fails, "the hole is too narrow for the pin by " + words.InSentence(over) + (apart > 0 ? " at the head's face" : string.Empty),
                "ream the lever's hole to " + words.InSentence(pin.Max + lost + (lever.Sizes.Find(LeverFields.HoleClearance)?.Nominal ?? Length.FromMillimetres(0.04))) + " in the middle (" + words.InSentence(WallLeft(lever, pin.Max + lost)) + " of wall left)");
        }

        return FitContact.Clearance(words, "hole on pin", mid, FittingRules.Pivot, "the pin is too large for the hole", _ => "ream the lever's hole to suit the pin");
    }

    private static Length WallLeft(Lever lever, Length hole) => (Length.Min(lever.Sizes[LeverFields.HeadDepth].Nominal, lever.Sizes[LeverFields.HeadHeight].Nominal) - hole) / 2;

    /// <summary>The pin that fits the lugs as they are, if there is one; else the next size that fills the hole, with the lugs reamed in line to it.</summary>
    private string? Larger(SizeLimits hole)
    {
        if (assembly.Pin.Series != PinFields.Inch)
            return null;
        Length half = assembly.Pin.Length.Nominal / 2 * Taper.InchPins.Rate, give = TaperPinFitting.HandSeating * Taper.InchPins.Rate;
        foreach (InchTaperPin size in InchTaperPins.All)
        {
            Length over = size.LargeEnd - half - hole.Mid;
            bool asTheyAre = Math.Abs(assembly.Plane.Lugs.Taper.Rate - Taper.InchPins.Rate) < 1e-6 && over >= -give && over <= give;
            if (!asTheyAre && size.LargeEnd - half <= hole.Max)
                continue;
            if (WallLeft(assembly.Lever, size.LargeEnd) < size.LargeEnd * TaperPinFitting.LeastWallPerDiameter)
                return null;
            if (asTheyAre)
                return $"take pin {size.Number}, which fits the lugs as they are, and ream the lever's hole to suit ({words.InSentence(WallLeft(assembly.Lever, size.LargeEnd))} of its wall left)";
            return Ream(size.LargeEnd, assembly.Plane.Lugs, size.Number) is { } ream ? ream + ", and the lever's hole to suit" : null;
        }

        return null;
    }

    /// <summary>Null when too little of the lug would be left.</summary>
    private string? Ream(Length largest, PlaneLugs lugs, string pin)
    {
        Length wall = lugs.EdgeDistance.Nominal - (largest / 2), wanted = largest * TaperPinFitting.LeastWallPerDiameter;
        return wall < wanted ? null : $"ream both lugs in line to pin {pin} ({words.InSentence(wall)} of lug wall left, {words.InSentence(wanted)} wanted)";
    }
}
