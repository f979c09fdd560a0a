using LeverDraw.Geometry;
using LeverDraw.Mechanism;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.HostPlanes;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Profiles;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Tests.Support;

/// <summary>A plane made to suit a lever, with gaps as asked for: for checks of the mechanism on any lever.</summary>
internal static class FittedPlane
{
    /// <param name="below">How far below the nose centre the tongue bears, mm.</param>
    /// <param name="off">Angle of stud to bed over the lever's sweep, degrees.</param>
    public static Assembly Of(Lever lever, double thread, double groove, double pivot, double slot, double below, double off, double lead = 0.9)
    {
        double sweep = 90 - (lever.Side.Tongue.Along.Angle * 180 / Math.PI);
        double psi = sweep + off;
        double bears = (lever.Side.NoseCentre - Point2D.Origin).Dot(new Vector2D(Math.Sin(psi * Math.PI / 180), Math.Cos(psi * Math.PI / 180))) - below;
        const double Iron = 2.2, Broken = 0.3;
        ValueBag values = new ValueBag()
            .With(HostPlaneFields.LugGap, 10).With(HostPlaneFields.LugThickness, 4).With(HostPlaneFields.LugHole, 3).With(HostPlaneFields.LugEdgeDistance, 4.5)
            .With(HostPlaneFields.Groove, lever.Sizes[LeverFields.PadThickness].Millimetres + groove).With(HostPlaneFields.GrooveBottom, 10).With(HostPlaneFields.Lead, lead).With(HostPlaneFields.ThreadPlay, thread)
            .With(HostPlaneFields.StudDistance, lever.Sizes[LeverFields.ArmLength].Millimetres).With(HostPlaneFields.StudAngle, psi)
            .With(HostPlaneFields.IronThickness, Iron).With(HostPlaneFields.IronSlot, 12).With(HostPlaneFields.CapIronThickness, 2).With(HostPlaneFields.CapIronSlot, 5)
            .With(HostPlaneFields.CapIronSlotLength, 9).With(HostPlaneFields.EdgeBreak, Broken).With(HostPlaneFields.PivotDepth, bears - Iron - Broken);
        HostPlane plane = HostPlanePart.Build("Fitted", values).Value!;
        Pin pin = PinPart.Build(new ValueBag().With(PinFields.Series, PinFields.Free).With(PinFields.LargeEnd, 3.5).With(PinFields.Taper, Taper.Parallel).With(PinFields.Length, 19)).Value!;
        Assembly bare = new(lever, pin, plane)
        {
            Pad = Exactly(lever.Sizes[LeverFields.PadThickness].Nominal), PadOffset = Exactly(Length.Zero),
            PinDiameter = Exactly(Length.FromMillimetres(3)), Hole = Exactly(Length.FromMillimetres(3 + pivot)), TongueWear = Exactly(Length.Zero),
        };
        // Where the tongue bears depends on how far it leans, and that on the slot: a few rounds.
        Assembly fitted = bare;
        for (int round = 0; round < 6; round++)
        {
            Length width = Linkage.Of(fitted)!.Bearing.Thickness + Length.FromMillimetres(slot);
            fitted = bare with { Plane = plane with { CapIron = plane.CapIron with { Slot = new SizeValue(width) } } };
        }

        return fitted;
    }

    private static SizeLimits Exactly(Length size) => new(size, size);
}
