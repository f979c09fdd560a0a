using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts.HostPlanes;

/// <summary>What a lever meets in one plane, sound in all its sizes.</summary>
/// <param name="BedAngle">To the sole.</param>
/// <param name="PivotDepth">From the bed down to the pin's axis.</param>
public sealed record HostPlane(string Name, PlaneLugs Lugs, AdjustingNut Nut, CuttingIron Iron, CapIron CapIron, Angle BedAngle, SizeValue PivotDepth);

/// <summary>The frog's two lugs, which hold the pin.</summary>
/// <param name="Hole">At the middle between the lugs.</param>
/// <param name="Relief">Slope of the inner faces below <paramref name="ReliefStart"/>, to their own direction.</param>
/// <param name="Pocket">Room for the arms; null when the profile does not say.</param>
public sealed record PlaneLugs(
    SizeValue Gap, SizeValue Thickness, SizeValue Hole, Taper Taper, SizeValue EdgeDistance, Angle Relief, SizeValue ReliefStart, SizeValue? Pocket)
{
    /// <summary>From the outer face of one lug to that of the other: what the pin has to bridge.</summary>
    public Length OutToOut => Gap.Nominal + (Thickness.Nominal * 2);
}

/// <summary>The depth nut and its stud.</summary>
/// <param name="Flange">Diameter of the smaller flange; null when the profile does not say.</param>
/// <param name="StudDistance">Pin's axis to stud's axis, square to the stud.</param>
/// <param name="StudAngle">Stud to bed.</param>
public sealed record AdjustingNut(
    SizeValue Groove, SizeValue Bottom, SizeValue? Flange, SizeValue Lead, bool LeftHand, SizeValue Play, SizeValue Travel, SizeValue StudDistance, Angle StudAngle);

public sealed record CuttingIron(SizeValue Thickness, SizeValue Slot);

/// <param name="Slot">Along the bed.</param>
/// <param name="SlotLength">Across the plane.</param>
public sealed record CapIron(SizeValue Thickness, SizeValue Slot, SizeValue SlotLength, SizeValue EdgeBreak);
