using LeverDraw.Geometry;
using LeverDraw.Units;

namespace LeverDraw.Mechanism;

/// <summary>The part of the nut's travel over which the tilted pads still go into its groove, sizes at the middle of their limits, the nut driving the iron down.</summary>
/// <remarks>A pad of thickness t with crowns of radius R, tilted by φ, is t·cos φ + 2·(R − t/2)·(1 − cos φ) + … wide: crowns of about t/2 do not widen, and wide ones soon fill a close groove (trade notes 5; own).</remarks>
public static class FreeTravel
{
    /// <summary>Places looked at either way of the middle, millimetres apart; between two the border is bisected.</summary>
    private const double Step = 0.25;

    /// <summary>From mid-travel along the stud; the whole travel when the pads jam nowhere.</summary>
    public static (Length From, Length To) Of(Linkage linkage)
    {
        ArgumentNullException.ThrowIfNull(linkage);
        double half = linkage.Assembly.Plane.Nut.Travel.Millimetres / 2;
        return (Length.FromMillimetres(-Reach(linkage, -1, half)), Length.FromMillimetres(Reach(linkage, 1, half)));
    }

    /// <summary>How far the nut goes freely back and forward of mid-travel, rounded down to tenths of a millimetre, where the pads jam before its travel ends; null where they do not.</summary>
    public static (Length Back, Length Forward)? BeforeJam(Linkage linkage)
    {
        (Length from, Length to) = Of(linkage);
        Length half = linkage.Assembly.Plane.Nut.Travel.Nominal / 2;
        return -from < half || to < half ? (Tenths(-from), Tenths(to)) : null;
    }

    private static Length Tenths(Length way) => Length.FromMillimetres(Math.Floor(way.Millimetres * 10) / 10);

    /// <summary>Whether the pads stand free in the groove with the nut at a place; where the lever has left flange or slot nothing jams.</summary>
    /// <param name="nut">From mid-travel, millimetres.</param>
    private static bool IsFree(Linkage linkage, double nut) =>
        linkage.Solver.WithNutAt(linkage.NutMiddle + nut, Drive.Advance) is not { } state || linkage.Solver.GrooveLeft(state.Pose) is not < 0;

    private static double Reach(Linkage linkage, int way, double half)
    {
        double free = 0;
        for (double next = Math.Min(Step, half); ; next = Math.Min(next + Step, half))
        {
            if (!IsFree(linkage, way * next))
                return Border(linkage, way, free, next);
            free = next;
            if (next >= half)
                return half;
        }
    }

    private static double Border(Linkage linkage, int way, double free, double jammed)
    {
        while (jammed - free > 1e-4)
        {
            double middle = (free + jammed) / 2;
            (free, jammed) = IsFree(linkage, way * middle) ? (middle, jammed) : (free, middle);
        }

        return free;
    }
}
