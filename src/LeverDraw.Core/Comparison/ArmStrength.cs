using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.Outlines;
using LeverDraw.Units;

namespace LeverDraw.Comparison;

/// <summary>How well the arms stand the nut's push, and what metal is left beside the hole. Compares levers; it is no promise of a load.</summary>
/// <remarks>Elementary theory of bending (any textbook on strength of materials; from memory): the stress in a straight bar is moment by section modulus, and that of a rectangle b wide
/// and h deep along the push is b·h²/6. The push is taken square to the arms, at the middle of the pads, shared evenly by both; one pad alone doubles the stress. Curved arms count with their level chord.</remarks>
/// <param name="Modulus">Both arms' section modulus at their stated width and thickness, mm³: 2·aw·ta²/6.</param>
/// <param name="WeakestLevel">Where the arms are stressed most, below the pivot's axis.</param>
/// <param name="WeakestModulus">Both arms' there, mm³.</param>
/// <param name="WeakestArea">Both arms' section there, mm².</param>
/// <param name="StressPerNewton">Greatest stress in the arms for each newton of push, N/mm² per N.</param>
/// <param name="HoleSection">Section through the pin's axis less the hole, mm²: the least one of the head.</param>
public sealed record ArmStrength(double Modulus, Length WeakestLevel, double WeakestModulus, double WeakestArea, double StressPerNewton, double HoleSection)
{
    /// <summary>Levels looked at between pads and crotch, beside those just above and below every corner of the outlines, where the section jumps or narrows steeply. Ten times as many change no figure that is shown (tested).</summary>
    private const int Levels = 2000;

    private const double Beside = 1e-7;

    public static ArmStrength Of(Lever lever) => Of(lever, Levels);

    /// <param name="levels">More are finer.</param>
    internal static ArmStrength Of(Lever lever, int levels)
    {
        double width = lever.Sizes[LeverFields.ArmWidth].Millimetres, thickness = lever.Sizes[LeverFields.ArmThickness].Millimetres;
        double pads = -lever.Sizes[LeverFields.ArmLength].Millimetres, crotch = lever.Fork.GapTop;
        OutlineLevels side = new(lever.SideProfile), fork = new(lever.ForkProfile);
        ArmStrength worst = new(width * thickness * thickness / 3, Length.Zero, 0, 0, 0, HoleSectionOf(lever, side, fork));
        IEnumerable<double> corners = lever.SideProfile.Edges.Concat(lever.ForkProfile.Edges).SelectMany(e => (double[])[e.Box.MinY - Beside, e.Box.MinY + Beside, e.Box.MaxY - Beside, e.Box.MaxY + Beside]);
        foreach (double z in Enumerable.Range(1, levels - 1).Select(i => pads + ((crotch - pads) * i / levels)).Concat(corners.Where(z => z > pads && z < crotch)))
        {
            double depth = side.ChordsAt(z).Length, both = fork.ChordsAt(z).Length;
            double modulus = both * depth * depth / 6, stress = (z - pads) / modulus;
            if (stress > worst.StressPerNewton)
                worst = worst with { WeakestLevel = Length.FromMillimetres(-z), WeakestModulus = modulus, WeakestArea = both * depth, StressPerNewton = stress };
        }

        return worst;
    }

    /// <summary>The head's depth times its width, less the hole's and with the bosses' lengthwise sections.</summary>
    private static double HoleSectionOf(Lever lever, OutlineLevels side, OutlineLevels fork)
    {
        double section = side.ChordsAt(0).Length * fork.ChordsAt(0).Length;
        if (lever.Boss is { } boss)
            section += 2 * boss.Diameter.Millimetres * boss.Height.Millimetres;
        // A cone's lengthwise section is a trapezium: its middle diameter by its length.
        return lever.Hole.Supply == LeverFields.Solid ? section : section - (lever.Hole.AtMid.Millimetres * 2 * lever.Hole.HalfLength.Millimetres);
    }
}
