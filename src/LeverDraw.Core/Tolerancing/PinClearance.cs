using LeverDraw.Units;

namespace LeverDraw.Tolerancing;

/// <summary>Clearances and interferences of taper pins; all are on diameter.</summary>
public static class PinClearance
{
    /// <summary>The even clearance got by feeding the same reamer further in than the fixed hole needs: depth · taper.</summary>
    public static Length ByReamingDepth(Length extraDepth, Taper taper) => extraDepth * taper.Rate;

    /// <summary>How much further to feed the reamer for a clearance: clearance / taper.</summary>
    /// <exception cref="ArgumentException">The taper is parallel, so no depth gives clearance.</exception>
    public static Length ReamingDepthFor(Length clearance, Taper taper) =>
        taper.IsParallel
            ? throw new ArgumentException("A parallel reamer gives no clearance by depth.", nameof(taper))
            : clearance / taper.Rate;

    /// <summary>The interference made by driving a seated pin further: drive · taper.</summary>
    public static Length ByDriving(Length drive, Taper taper) => drive * taper.Rate;

    /// <summary>The least and the greatest clearance of a pin in a lever's hole, by the limits of both, over the hole's whole length: where hole and pin run apart by <paramref name="apart"/>, the ends differ from the middle by half · apart.</summary>
    /// <param name="hole">Limits in the middle; <paramref name="pin"/> likewise.</param>
    /// <param name="half">Half the hole's length.</param>
    /// <param name="apart">Difference of the two tapers, on diameter.</param>
    public static SizeLimits InHole(SizeLimits hole, SizeLimits pin, Length half, double apart)
    {
        Length change = half * Math.Abs(apart);
        return new SizeLimits(hole.Min - pin.Max - change, hole.Max - pin.Min + change);
    }

    /// <summary>
    /// The clearance a parallel hole of the given width must have at its mid-plane, so that <paramref name="leastClearance"/> is left
    /// at the pin's large side: width · taper/2 + least.
    /// </summary>
    public static Length ParallelHoleAtMidPlane(Length width, Taper taper, Length leastClearance) =>
        width * (taper.Rate / 2) + leastClearance;
}
