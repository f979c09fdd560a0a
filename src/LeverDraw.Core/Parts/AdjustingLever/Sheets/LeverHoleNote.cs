using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Geometry;
using LeverDraw.Profiles;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>The pivot hole in one callout: size and where it holds, drill, reamer and taper, large end, how it is made and gauged.</summary>
internal static class LeverHoleNote
{
    /// <summary>What a drill leaves for a parallel reamer, on diameter, at least (common practice, no source).</summary>
    private static readonly Length _reamingStock = Length.FromMillimetres(0.1);

    public static Annotation In(Lever lever, DimensionText text)
    {
        PivotHole hole = lever.Hole;
        SizeValue size = lever.Sizes[LeverFields.HoleDiameter];
        List<string> lines = [.. text.Size(size, "⌀").Lines];
        if (hole.Taper.IsParallel)
            lines[^1] += " THROUGH";
        lines.AddRange(hole.Taper.IsParallel ? Parallel(hole, text) : Tapered(hole, size, text));
        if (hole.Supply == LeverFields.Pilot)
            lines.Add("SUPPLIED WITH PILOT HOLE ONLY");
        else if (hole.Supply == LeverFields.Solid)
            lines.Add("SUPPLIED SOLID");
        double half = hole.HalfLength.Millimetres;
        Point2D[] onWall = [.. new[] { 0.25, -0.25, 0.5, -0.5 }.SelectMany(share => new[] { Wall(hole, share * half, 1), Wall(hole, share * half, -1) })];
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
        if (taper.IsParallel)
            return wanted is { } play ? "CLEARANCE ON THE PIN AT MID-PLANE " + text.Number(play) + "." : null;
        if (wanted is not { } clearance)
            return "RUNNING CLEARANCE: THE LUGS' REAMER FED " + text.Number(_sampleDepth) + " DEEPER THAN IN THE LUGS GIVES " + text.Number(PinClearance.ByReamingDepth(_sampleDepth, taper)) + ".";
        return "RUNNING CLEARANCE " + text.Number(clearance) + ": FEED THE LUGS' REAMER " + text.Number(PinClearance.ReamingDepthFor(clearance, taper)) + " DEEPER THAN IN THE LUGS.";
    }

    /// <summary>The trade's usual example of feeding deeper, which gives 0.05 at 1:48.</summary>
    private static readonly Length _sampleDepth = Length.FromMillimetres(2.4);

    private static IEnumerable<string> Tapered(PivotHole hole, SizeValue size, DimensionText text)
    {
        (Length small, Length large) = hole.AtLeft < hole.AtRight ? (hole.AtLeft, hole.AtRight) : (hole.AtRight, hole.AtLeft);
        yield return "AT MID-PLANE, TAPER " + DimensionText.TaperRatio(hole.Taper);
        yield return "LARGE END AT USER'S " + (hole.LargeEndRight ? "RIGHT" : "LEFT");
        if (Drill(small, text) is { } drill)
            yield return drill;
        if (Reamer(hole.Taper, small, large) is { } reamer)
            yield return "PIN REAMER NO. " + reamer.Number;
        yield return "REAM LEVER ALONE, RUNNING FIT";
        if (StatedLimits.Of(size) is { } limits)
            yield return "LIMITS " + text.Number(Length.FromMillimetres(Math.Round((limits.Max - limits.Min).Millimetres / hole.Taper.Rate, 2))) + " APART ON PLUG GAUGE";
    }

    private static IEnumerable<string> Parallel(PivotHole hole, DimensionText text)
    {
        if (Drill(hole.AtMid - _reamingStock, text) is { } drill)
            yield return drill;
        yield return "REAM PARALLEL, LEVER ALONE, RUNNING FIT";
    }

    private static string? Drill(Length largest, DimensionText text) =>
        TwistDrills.NearestNotAbove(largest) is { IsGiven: true } drill ? "DRILL " + drill.Value.Name + " (⌀" + text.Number(drill.Value.Diameter) + ")" : null;

    /// <summary>The smallest of the inch series whose flutes hold both ends.</summary>
    private static TaperPinReamer? Reamer(Taper taper, Length small, Length large) =>
        taper == Taper.InchPins ? TaperPinReamers.All.FirstOrDefault(r => r.Covers(small, large)) : null;

    /// <summary>A point on the hole's wall in the section.</summary>
    private static Point2D Wall(PivotHole hole, double x, int side) => new(x, side * hole.DiameterAt(x) / 2);
}
