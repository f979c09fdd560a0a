using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Geometry;
using LeverDraw.Profiles;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>The pivot hole in one callout: size and where it holds, taper and its large end, how it is made.</summary>
internal static class LeverHoleNote
{
    public static Annotation In(Lever lever, DimensionText text)
    {
        PivotHole hole = lever.Hole;
        SizeValue size = lever.Sizes[LeverFields.HoleDiameter];
        List<string> lines = [.. text.Size(size, "⌀").Lines];
        if (hole.Taper.IsParallel)
        {
            lines[0] += " THROUGH";
            lines.Add("REAM PARALLEL");
        }
        else
        {
            lines[^1] += " AT MID-PLANE";
            lines.Add("TAPER " + DimensionText.TaperRatio(hole.Taper) + ", LARGE END AT USER'S " + (hole.LargeEndRight ? "RIGHT" : "LEFT"));
            lines.Add("REAM LEVER ALONE, RUNNING FIT");
        }

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

    /// <summary>A point on the hole's wall in section A–A.</summary>
    private static Point2D Wall(PivotHole hole, double x, int side) => new(x, side * hole.DiameterAt(x) / 2);
}
