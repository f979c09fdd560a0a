using System.Collections.Immutable;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts.HostPlanes;

/// <summary>The fields of a host plane: what a lever meets there. A size without a tolerance is taken as measured on that plane.</summary>
public static class HostPlaneFields
{
    public const string Left = "left", Right = "right";

    public static SizeField LugGap { get; } = new("lugs.gap", null, "Width between the inner faces of the frog's two lugs, at the pin's axis.", 5, 18);

    public static SizeField LugThickness { get; } = new("lugs.thickness", null, "Thickness of each lug along the pin.", 1.5, 8);

    public static SizeField LugHole { get; } = new("lugs.hole", null, "Diameter of the lugs' hole, taken at the middle between the lugs.", 1.2, 6);

    public static TaperField LugTaper { get; } = new("lugs.taper", null, "Taper of the lugs' hole on diameter, or parallel.", Taper.InchPins);

    public static SizeField LugEdgeDistance { get; } = new("lugs.edge_distance", null, "From the pin's axis to the nearest edge of a lug; the lugs reach as far below the axis.", 1.5, 12);

    public static AngleField LugRelief { get; } = new("lugs.relief", null, "Slope at which the lugs' inner faces are cut back below, to clear the lever's shoulders.", 0, 65, 0);

    public static SizeField LugReliefStart { get; } = new("lugs.relief_start", null, "Distance below the pin's axis at which that slope begins.", 0, 10, 0);

    public static SizeField Pocket { get; } = new("lugs.pocket", null, "Width of the room in the frog for the lever's arms; not checked when not given.", 12, 50) { MayBeAbsent = true };

    public static SizeField Groove { get; } = new("nut.groove", "G", "Width of the nut's groove between its flanges.", 1.5, 7);

    public static SizeField GrooveBottom { get; } = new("nut.bottom_diameter", "Dg", "Diameter of the groove's bottom, which the fork straddles.", 5, 24);

    public static SizeField Flange { get; } = new("nut.flange_diameter", null, "Diameter of the smaller of the two flanges; when given, whatever of the arms lies between the flanges must find room there, and without it only the pads are looked at.", 6, 36) { MayBeAbsent = true };

    public static SizeField Lead { get; } = new("nut.lead", "p", "How far the nut goes along the stud in one turn.", 0.3, 2.5);

    public static ChoiceField Hand { get; } = new("nut.hand", null, "Hand of the stud's thread.", [Left, Right], Left);

    public static SizeField ThreadPlay { get; } = new("nut.play", null, "How far the nut can be pushed to and fro along the stud without turning.", 0, 1);

    public static SizeField NutTravel { get; } = new("nut.travel", null, "How far the nut can go along the stud from one end of its adjustment to the other.", 1, 30, 10);

    public static SizeField StudDistance { get; } = new("stud.distance", null, "From the pin's axis to the stud's axis, square to the stud.", 8, 36);

    public static AngleField StudAngle { get; } = new("stud.angle", "psi", "Angle between the stud's axis and the bed.", 15, 65);

    public static SizeField IronThickness { get; } = new("iron.thickness", "ti", "Thickness of the cutting iron where the tongue passes it.", 0.8, 6);

    public static SizeField IronSlot { get; } = new("iron.slot_width", null, "Width of the cutting iron's long slot.", 3, 20);

    public static SizeField CapIronThickness { get; } = new("cap_iron.thickness", "tc", "Thickness of the cap iron at its slot.", 0.6, 6);

    public static SizeField CapIronSlot { get; } = new("cap_iron.slot_width", "Ws", "Width of the cap iron's slot along the bed, where the tongue drives it.", 1.5, 9);

    public static SizeField CapIronSlotLength { get; } = new("cap_iron.slot_length", null, "Length of the cap iron's slot across the plane.", 2.5, 18);

    public static SizeField EdgeBreak { get; } = new("cap_iron.edge_break", null, "How far the slot's edges are broken: the tongue bears no lower.", 0, 1, 0.3);

    public static AngleField BedAngle { get; } = new("bed.angle", null, "Angle of the bed to the sole.", 25, 70, 45);

    public static SizeField PivotDepth { get; } = new("bed.pivot_depth", "zp", "From the bed down to the pin's axis.", 1.5, 12);

    public static ImmutableArray<FieldSpec> All { get; } =
    [
        LugGap, LugThickness, LugHole, LugTaper, LugEdgeDistance, LugRelief, LugReliefStart, Pocket,
        Groove, GrooveBottom, Flange, Lead, Hand, ThreadPlay, NutTravel, StudDistance, StudAngle,
        IronThickness, IronSlot, CapIronThickness, CapIronSlot, CapIronSlotLength, EdgeBreak,
        BedAngle, PivotDepth,
    ];
}
