using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever;

namespace LeverDraw.Comparison;

/// <summary>What of two levers is laid on each other. The second is moved only, never turned: its arms stay along the first one's.</summary>
public enum Alignment
{
    /// <summary>The axes of the pivot holes.</summary>
    Pivot,

    /// <summary>The middles of the pads.</summary>
    Pads,

    /// <summary>The nose centres, where the tongues' thickness is stated.</summary>
    Nose,
}

/// <summary>What the alignments are called.</summary>
public static class Alignments
{
    /// <summary>What of the two lies on each other: <c>the pivot's axis</c>.</summary>
    public static string Words(this Alignment alignment) => alignment switch
    {
        Alignment.Pads => "the middles of the pads",
        Alignment.Nose => "the nose centres",
        _ => "the pivot's axis",
    };
}

/// <summary>How far the second lever is moved.</summary>
internal static class AlignmentShift
{
    /// <summary>In the side view, (n, z) millimetres. In the fork view only the z counts: the levers' mid-planes lie on each other.</summary>
    public static Vector2D Of(Alignment alignment, Lever a, Lever b) => alignment switch
    {
        Alignment.Pads => a.Side.PadCentre - b.Side.PadCentre,
        Alignment.Nose => a.Side.NoseCentre - b.Side.NoseCentre,
        _ => default,
    };
}
