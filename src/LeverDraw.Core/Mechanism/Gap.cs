using System.Collections.Immutable;

namespace LeverDraw.Mechanism;

/// <summary>One of the four gaps that are crossed when the nut is turned back, in the order from nut to iron.</summary>
public enum Gap
{
    /// <summary>The nut's thread on the stud, along it.</summary>
    Thread,

    /// <summary>The lever's pads in the nut's groove.</summary>
    Groove,

    /// <summary>The lever's hole on its pin, on diameter.</summary>
    Pivot,

    /// <summary>The tongue in the cap iron's slot, along the bed.</summary>
    Slot,
}

/// <summary>What the gaps are called.</summary>
public static class Gaps
{
    public static ImmutableArray<Gap> All { get; } = [Gap.Thread, Gap.Groove, Gap.Pivot, Gap.Slot];

    public static string Words(this Gap gap) => gap switch
    {
        Gap.Thread => "thread on stud",
        Gap.Groove => "pads in groove",
        Gap.Pivot => "hole on pin",
        _ => "tongue in slot",
    };
}
