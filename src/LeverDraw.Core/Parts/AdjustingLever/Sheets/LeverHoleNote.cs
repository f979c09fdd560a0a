using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Geometry;
using LeverDraw.Profiles;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>The pivot hole in one callout: size and where it holds, taper, large end and its check, drill, reamer, how it is made, the pin it is for. In two units its lines are shorter still, since the note makes the section's block wide.</summary>
internal static class LeverHoleNote
{
    private const string ForInformation = "INFORMATION: ";

    public static Annotation In(Lever lever, DimensionText text)
    {
        PivotHole hole = lever.Hole;
        SizeValue size = lever.Sizes[LeverFields.HoleDiameter];
        List<string> lines = [.. text.Size(size, "⌀").Lines];
        if (hole.Taper.IsParallel)
            lines[^1] += " THROUGH";
        lines.AddRange(hole.Taper.IsParallel ? Parallel(hole, size, text) : Tapered(lever, size, text));
        if (hole.Supply == LeverFields.Pilot)
            lines.Add("SUPPLIED WITH PILOT HOLE ONLY");
        else if (hole.Supply == LeverFields.Solid)
            lines.Add("SUPPLIED SOLID");
        double half = hole.HalfLength.Millimetres;
        Point2D[] onWall = [.. new[] { 0.25, -0.25, 0.4, -0.4, 0.5, -0.5 }.SelectMany(share => new[] { Wall(hole, share * half, 1), Wall(hole, share * half, -1) })];
        return new LeaderNote(LeverFields.HoleDiameter.Name, size.Millimetres, new Label([.. lines], text.Size(size).Decimals), [.. onWall])
        {
            Further = hole.Taper.IsParallel ? [] : [new StatedSize(LeverFields.HoleTaper.Name, hole.Taper.Rate)],
        };
    }

    /// <summary>How the running clearance comes about, or null when the hole is parallel and the profile wants none.</summary>
    public static string? Clearance(Lever lever, DimensionText text)
    {
        Taper taper = lever.Hole.Taper;
        Length? wanted = lever.Sizes.Find(LeverFields.HoleClearance)?.Nominal;
        if (lever.Sizes.Find(LeverFields.HolePinDiameter) is { } onPin)
            return ByLimits(lever, onPin, wanted, text);
        if (wanted is not { } clearance)
            return taper.IsParallel ? null : ForInformation + "REAMING " + text.Number(_sampleDepth) + " DEEPER THAN WHERE PIN JUST SEATS GIVES " + text.Fine(PinClearance.ByReamingDepth(_sampleDepth, taper)) + " RUNNING CLEARANCE.";
        SizeValue size = lever.Sizes[LeverFields.HoleDiameter];
        Length pin = size.Nominal - clearance;
        // The hole's own limits make it a range; the pin's stand on the pin's sheet.
        SizeLimits? limits = StatedLimits.Of(size);
        (Length least, Length most) = limits is { } held ? (held.Min - pin, held.Max - pin) : (clearance, clearance);
        string range = least == most ? text.Fine(clearance) : text.FineRange(least, most);
        // Beside limits it is no second requirement on the hole.
        string given = (limits is null ? "RUNNING CLEARANCE " : ForInformation + "CLEARANCE ") + range + " ON NOMINAL PIN";
        if (taper.IsParallel)
            return given + " ⌀" + text.Fine(pin) + ".";
        Length from = PinClearance.ReamingDepthFor(least, taper), to = PinClearance.ReamingDepthFor(most, taper);
        string depth = least == most ? text.Number(from) : text.InSentence(Hundredths(from, Math.Ceiling, -1), Hundredths(to, Math.Floor, 1));
        return given + ", REAMED " + depth + " DEEPER THAN WHERE PIN JUST SEATS.";
    }

    /// <summary>What the limits of hole and pin leave over the hole's whole length. A taper pin is tightest in a parallel hole on the side of the pin's large end.</summary>
    private static string ByLimits(Lever lever, SizeValue pin, Length? wanted, DimensionText text)
    {
        PivotHole hole = lever.Hole;
        double apart = hole.PinTaper.Rate - hole.Taper.Rate;
        SizeLimits onPin = StatedLimits.OrExact(pin);
        string range = ForInformation + "CLEARANCE " + text.Extremes(PinClearance.InHole(StatedLimits.OrExact(lever.Sizes[LeverFields.HoleDiameter]), onPin, hole.HalfLength, apart)) + " ON PIN ⌀" + text.Limits(onPin);
        if (hole.PinTaper.IsParallel && hole.Taper.IsParallel)
            return range + ".";
        range += " AT MID-PLANE";
        if (apart != 0)
            return range + ", LEAST ON SIDE OF " + (apart > 0 ? "PIN'S LARGE END." : "HOLE'S SMALL END.");
        return range + (wanted is { } clearance ? ". FOR " + text.Fine(clearance) + " REAM " + text.Number(PinClearance.ReamingDepthFor(clearance, hole.Taper)) + " DEEPER THAN WHERE PIN JUST SEATS, WITHIN HOLE'S LIMITS." : ".");
    }

    /// <summary>Cut to a hundredth of a millimetre to the careful side.</summary>
    private static Length Hundredths(Length size, Func<double, double> cut, int hair) => Length.FromMillimetres(cut((size.Millimetres * 100) + (hair * 1e-6)) / 100);

    /// <summary>The trade's usual example of feeding deeper, which gives 0.05 at 1:48.</summary>
    private static readonly Length _sampleDepth = Length.FromMillimetres(2.4);

    private static IEnumerable<string> Tapered(Lever lever, SizeValue size, DimensionText text)
    {
        PivotHole hole = lever.Hole;
        (Length small, Length large) = hole.AtLeft < hole.AtRight ? (hole.AtLeft, hole.AtRight) : (hole.AtRight, hole.AtLeft);
        yield return "AT MID-PLANE, TAPER " + DimensionText.TaperRatio(hole.Taper);
        yield return "LARGE END AT " + (hole.LargeEndRight ? "RIGHT" : "LEFT") + " IN FORK VIEW";
        if (StatedLimits.Of(size) is { } limits)
        {
            foreach (string line in FaceCheck(limits, lever, text))
                yield return line;
        }

        Length least = small + (Least(size) - size.Nominal);
        List<string> tools = [];
        if (PilotDrill.ForTapered(least) is { IsGiven: true } drill)
            tools.Add(Drill(drill.Value, text));
        if (Reamer(hole.Taper, small, large) is { } reamer)
            tools.Add("PIN REAMER NO. " + reamer.Number);
        string[] reaming = ["REAM LEVER ALONE", RunningFit(hole)];
        if (text.Units.Second() is null)
        {
            if (tools.Count > 0)
                yield return string.Join(", ", tools);
            yield return string.Join(", ", reaming);
            yield break;
        }

        foreach (string tool in tools)
            yield return tool;
        yield return reaming[0] + ",";
        yield return reaming[1];
    }

    /// <summary>The mid-plane cannot be reached with a gauge, so the hole is checked at its large end's face: what is within limits there is so at the mid-plane, however wide the faces stand within their own limits. And how far apart they stand along a taper plug.</summary>
    private static IEnumerable<string> FaceCheck(SizeLimits atMid, Lever lever, DimensionText text)
    {
        PivotHole hole = lever.Hole;
        SizeLimits atFace = AtFace(atMid, lever);
        string[] units = text.Limits(atFace).Split(" [");
        string[] lines = ["CHECK ⌀" + units[0], .. units[1..].Select(u => "[" + u)];
        lines[^1] += " AT LARGE END,";
        foreach (string line in lines)
            yield return line;
        // Of the limits lettered, so that both checks agree; cut off, never wider.
        double apart = text.Shown(atFace).Width.Millimetres / hole.Taper.Rate;
        yield return "PLUG LINES " + text.Number(Hundredths(Length.FromMillimetres(apart), Math.Floor, 1)) + " APART";
    }

    /// <summary>The least limit for the widest faces, the greatest for the narrowest; by the nominal width where the faces' tolerance would leave next to nothing.</summary>
    private static SizeLimits AtFace(SizeLimits atMid, Lever lever)
    {
        PivotHole hole = lever.Hole;
        SizeValue width = lever.Sizes[LeverFields.HeadWidth];
        SizeLimits across = StatedLimits.OrExact(width);
        Length narrow = hole.HalfLength + ((across.Min - width.Nominal) / 2), wide = hole.HalfLength + ((across.Max - width.Nominal) / 2);
        Length least = atMid.Min + (wide * hole.Taper.Rate), most = atMid.Max + (narrow * hole.Taper.Rate);
        return most - least > (atMid.Max - atMid.Min) / 2 ? new SizeLimits(least, most) : atMid.Moved(hole.HalfLength * hole.Taper.Rate);
    }

    private static IEnumerable<string> Parallel(PivotHole hole, SizeValue size, DimensionText text)
    {
        if (PilotDrill.ForParallel(Least(size)) is { IsGiven: true } drill)
            yield return Drill(drill.Value, text);
        yield return "REAM PARALLEL, LEVER ALONE,";
        yield return RunningFit(hole);
    }

    private static string RunningFit(PivotHole hole) => hole.Pin.Length > 0 ? "RUNNING FIT ON " + hole.Pin.ToUpperInvariant() : "RUNNING FIT";

    private static Length Least(SizeValue size) => StatedLimits.Of(size)?.Min ?? size.Nominal;

    private static string Drill(PilotDrill drill, DimensionText text) =>
        drill.Name.Length > 0 ? "DRILL " + drill.Name + " (⌀" + text.Fine(drill.Diameter) + ")" : "DRILL ⌀" + text.Fine(drill.Diameter);

    /// <summary>The smallest of the inch series whose flutes hold both ends.</summary>
    private static TaperPinReamer? Reamer(Taper taper, Length small, Length large) =>
        taper == Taper.InchPins ? TaperPinReamers.All.FirstOrDefault(r => r.Covers(small, large)) : null;

    /// <summary>A point on the hole's wall in the section.</summary>
    private static Point2D Wall(PivotHole hole, double x, int side) => new(x, side * hole.DiameterAt(x) / 2);
}
