using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Mechanism;

/// <summary>The sizes that make the gaps, each with its limits; equal limits say that a size was measured.</summary>
/// <param name="Pad">Thickness of the thicker pad.</param>
/// <param name="PadOffset">How far one pad stands before the other: both stand in one groove, so it takes from the gap.</param>
/// <param name="Hole">In the middle of the head; <paramref name="Pin"/> likewise.</param>
/// <param name="Tongue">Thickness along the bed where it bears in the slot at mid-travel.</param>
public sealed record PlaySizes(
    SizeLimits Thread,
    SizeLimits Groove,
    SizeLimits Pad,
    SizeLimits PadOffset,
    SizeLimits Hole,
    SizeLimits Pin,
    SizeLimits Slot,
    SizeLimits Tongue,
    SizeLimits Iron,
    SizeLimits CapIron)
{
    /// <summary>The gap with every size at the middle of its limits. Negative: it binds.</summary>
    public Length Typical(Gap gap) => gap switch
    {
        Gap.Thread => Thread.Mid,
        Gap.Groove => Groove.Mid - Pad.Mid - PadOffset.Mid,
        Gap.Pivot => Hole.Mid - Pin.Mid,
        _ => Slot.Mid - Tongue.Mid,
    };

    public FourGaps TypicalGaps => new(Typical(Gap.Thread), Typical(Gap.Groove), Typical(Gap.Pivot), Typical(Gap.Slot));

    /// <summary>The gap with every size at its worst limit, either way.</summary>
    public SizeLimits Worst(Gap gap) => gap switch
    {
        Gap.Thread => Thread,
        Gap.Groove => new SizeLimits(Groove.Min - Pad.Max - PadOffset.Max, Groove.Max - Pad.Min - PadOffset.Min),
        Gap.Pivot => new SizeLimits(Hole.Min - Pin.Max, Hole.Max - Pin.Min),
        _ => new SizeLimits(Slot.Min - Tongue.Max, Slot.Max - Tongue.Min),
    };
}
