using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.HostPlanes;
using LeverDraw.Units;

namespace LeverDraw.Mechanism.Fitting;

/// <summary>The least room between the lever's shoulders and the lugs' inner faces, which hang down beside the head. The shoulders begin level with the axis or below it; a lug that is not cut back there is in their way.</summary>
internal static class ShoulderGap
{
    private const int Levels = 400;

    /// <summary>Across, along the pin; negative where the shoulder would run into the lug. Sampled at 400 levels, so good to a micrometre or two.</summary>
    /// <param name="at">How far below the axis.</param>
    public static Length Least(Lever lever, PlaneLugs lugs, out Length at)
    {
        double reach = lugs.EdgeDistance.Millimetres, start = lugs.ReliefStart.Millimetres, slope = Math.Tan(lugs.Relief.Radians);
        double inner = lugs.Gap.Millimetres / 2, least = double.PositiveInfinity, place = 0;
        for (int i = 0; i <= Levels; i++)
        {
            double below = reach * i / Levels, lug = inner + (Math.Max(0, below - start) * slope);
            // Beyond the lug's own thickness there is no lug.
            if (lug > inner + lugs.Thickness.Millimetres)
                break;
            double gap = lug - HalfWidth(lever, -below);
            if (gap < least)
                (least, place) = (gap, below);
        }

        at = Length.FromMillimetres(place);
        return Length.FromMillimetres(least);
    }

    /// <summary>Of the lever's body at a level, without bosses; the head's own sides stop the count.</summary>
    private static double HalfWidth(Lever lever, double level)
    {
        double most = 0;
        foreach (Interval chord in ContourChords.HorizontalAt(lever.ForkProfile, level))
            most = Math.Max(most, chord.To);
        return most;
    }
}
