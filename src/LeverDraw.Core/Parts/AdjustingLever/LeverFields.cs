using System.Collections.Immutable;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>The fields of a lever's profile. Symbols and usual values follow the trade notes' list of invented sizes; ranges are a little wider. What each means on the shape: docs/adr/0004-lever-shape.md.</summary>
public static class LeverFields
{
    /// <summary>As the profile's <c>kind</c> gives it.</summary>
    public const string PartKind = "lever";

    public const string Round = "round", Block = "block", Square = "square";
    public const string Left = "left", Right = "right";
    public const string Tapered = "tapered", Curved = "curved", Stepped = "stepped";
    public const string Straight = "straight", Concave = "concave";
    public const string Parallel = "parallel", GearTooth = "gear-tooth", Cam = "cam", Bulb = "bulb";
    public const string None = "none", Both = "both", ArmBack = "arm-back", HeadFace = "head-face";
    public const string Bored = "bored", Pilot = "pilot", Solid = "solid";

    public static ChoiceField HeadForm { get; } = new("head.form", null, "Head seen along the pin: a round eye, or a block with rounded corners.", [Round, Block], Round);

    public static SizeField HeadWidth { get; } = new("head.width", "wh", "Width of the head along the pin, face to face, bosses not counted; with bosses its tolerance holds over their faces.", 5, 14);

    public static SizeField HeadHeight { get; } = new("head.height", "hh", "Height of the head along the arms, centred on the pivot.", 5, 14);

    public static SizeField HeadDepth { get; } = new("head.depth", "dh", "Depth of the head seen along the pin: the round eye's diameter, or the block's depth.", 4, 13);

    public static SizeField HeadCornerRadius { get; } = new("head.corner_radius", null, "Corner radius of a block head seen along the pin.", 0.2, 5, 1.2) { OnlyWhen = new(HeadForm, [Block]) };

    public static SizeField HoleDiameter { get; } = new("hole.diameter", "Dm", "Diameter of the pivot hole in the middle of the head.", 1.2, 5);

    public static TaperField HoleTaper { get; } = new("hole.taper", "Ct", "Taper of the pivot hole on diameter, or parallel.", Taper.InchPins);

    public static ChoiceField HoleLargeEnd { get; } = new("hole.large_end", null, "Side on which a tapered hole is larger, seen with the lever in the plane.", [Left, Right], Right);

    public static ChoiceField HoleSupply { get; } = new("hole.supply", null, "State of the hole when sold: bored to size, a pilot hole only, or solid.", [Bored, Pilot, Solid], Bored);

    public static SizeField HoleClearance { get; } = new("hole.clearance", "cp", "Running clearance wanted on the pin at the head's mid-plane; the sheet says how it is reached.", 0, 0.6) { MayBeAbsent = true };

    public static TextField HolePin { get; } = new("hole.pin", null, "Drawing number of the pin that runs in the hole; the sheet's callout names it.", 20, string.Empty);

    public static SizeField HolePinDiameter { get; } = new("hole.pin_diameter", null, "Diameter of the pin in the middle of the head, with its limits as on the pin's sheet; the sheet then says the least and greatest clearance by the limits of both.", 1.2, 5) { MayBeAbsent = true };

    public static TaperField HolePinTaper { get; } = new("hole.pin_taper", null, "Taper on diameter of the pin whose diameter is given, or parallel.", Taper.InchPins);

    public static ChoiceField ArmForm { get; } = new("arms.form", null, "Arms seen along the pin: straight taper to the pads, curved, or parallel with a stepped pad.", [Tapered, Curved, Stepped], Stepped);

    public static SizeField ArmThickness { get; } = new("arms.thickness", "ta", "Thickness of the arms seen along the pin; of tapered arms one head fillet below the head's lower end.", 1.5, 6.5);

    public static SizeField ArmWidth { get; } = new("arms.width", "aw", "Width of each arm along the pin.", 2, 9);

    public static SizeField ArmLength { get; } = new("arms.length", "Lh", "From the pivot's axis to the middle of the pads, along the arms.", 10, 34);

    public static SizeField ArmSagitta { get; } = new("arms.sagitta", null, "Rise of a curved arm's mid-line over its chord, pivot to top of pad; positive puts the pads on the side away from the tongue. The sheet states how far the pads then stand aside.", -2.5, 2.5) { OnlyWhen = new(ArmForm, [Curved]) };

    public static ChoiceField ArmEnd { get; } = new("arms.end", null, "Ends of the arms seen square to the fork: square with rounded corners, or full round.", [Square, Round], Square);

    public static SizeField ArmEndCorner { get; } = new("arms.end_corner", "re", "Corner radius of square arm ends; the edge round when not given.", 0, 4) { MayBeAbsent = true, OnlyWhen = new(ArmEnd, [Square]) };

    public static SizeField ForkGap { get; } = new("fork.gap", "Wi", "Width of the fork between the arms.", 6, 22);

    public static SizeField CrotchRadius { get; } = new("fork.crotch_radius", "Rf", "Radius in the fork's two upper corners; half the gap makes one round.", 1, 11);

    public static SizeField Web { get; } = new("fork.web", "tw", "Metal between the head's lower end and the top of the fork gap.", 0, 6, 1);

    public static ChoiceField ShoulderForm { get; } = new("fork.shoulder", null, "Shoulders from the head out to the arms: straight or concave.", [Straight, Concave], Straight);

    public static SizeField ShoulderRadius { get; } = new("fork.shoulder_radius", null, "Radius of a concave shoulder, which leaves the head's side tangent to it.", 3, 60) { OnlyWhen = new(ShoulderForm, [Concave]) };

    public static SizeField ShoulderStart { get; } = new("fork.shoulder_start", null, "Distance below the pivot's axis at which the shoulder, or its fillet, leaves the head's side.", 0, 8, 0);

    public static SizeField ShoulderEnd { get; } = new("fork.shoulder_end", null, "Distance below the pivot's axis at which a straight shoulder meets the arm's outer side; the crotch arc's lower end when not given.", 4, 30) { MayBeAbsent = true, OnlyWhen = new(ShoulderForm, [Straight]) };

    public static SizeField PadThickness { get; } = new("pads.thickness", "tn", "Greatest thickness of the pads, at their middle.", 1.2, 6);

    public static SizeField PadLength { get; } = new("pads.length", "Ln", "Length of the pads along the arms.", 2.5, 12);

    public static SizeField CrownRadius { get; } = new("pads.crown_radius", "Rn", "Radius of the pads' crowned faces.", 1.3, 40);

    public static ChoiceField PadEnd { get; } = new("pads.end", null, "Ends of the pads seen along the pin: square with rounded corners, or full round.", [Square, Round], Square);

    public static SizeField PadEndCorner { get; } = new("pads.end_corner", "re", "Corner radius of square pad ends.", 0, 2, 0.3) { OnlyWhen = new(PadEnd, [Square]) };

    public static SizeField PadOffset { get; } = new("pads.offset", "e", "Most that one pad may stand before the other: width of the one zone that holds both pads' mid-planes; zero states none.", 0, 0.3, 0.1);

    public static AngleField Sweep { get; } = new("tongue.sweep", "sw", "Angle from the arms' line to the tongue's mid-line.", 0, 60);

    public static SizeField TongueLength { get; } = new("tongue.length", "Lt", "From the pivot's axis to the nose centre, where the thickness is measured.", 5, 18);

    public static SizeField TongueWidth { get; } = new("tongue.width", "bt", "Width of the tongue along the pin.", 2.5, 11);

    public static SizeField TongueThickness { get; } = new("tongue.thickness", "tt", "Thickness of the tongue at the nose centre, square to its mid-line.", 1.8, 7);

    public static ChoiceField TongueForm { get; } = new("tongue.form", null, "Tongue seen along the pin: parallel, tapered to a round nose like a gear tooth, with one cam flank, or with a bulb.", [Parallel, GearTooth, Cam, Bulb], GearTooth);

    public static AngleField FlankTaper { get; } = new("tongue.flank_taper", "g", "Slope of each straight flank to the tongue's mid-line; thicker toward the root.", 0, 15, 8) { OnlyWhen = new(TongueForm, [GearTooth, Cam, Bulb]) };

    public static SizeField CamRadius { get; } = new("tongue.cam_radius", null, "Radius of the cam flank, which is the one facing the pads.", 6, 80) { OnlyWhen = new(TongueForm, [Cam]) };

    public static SizeField NeckThickness { get; } = new("tongue.neck_thickness", null, "Thickness between the flanks behind a bulb, half the bulb's diameter back from the nose centre.", 1.2, 6.5) { OnlyWhen = new(TongueForm, [Bulb]) };

    public static SizeField NoseRadius { get; } = new("tongue.nose_radius", "Rt", "Corner radius of a parallel tongue's end; the edge round when not given. The other forms' noses follow from the thickness.", 0, 3.5) { MayBeAbsent = true, OnlyWhen = new(TongueForm, [Parallel]) };

    public static SizeField FootFillet { get; } = new("tongue.foot_fillet", null, "Fillet between the head's top and the tongue's side, seen square to the fork; blends.fillet when not given.", 0, 4) { MayBeAbsent = true };

    public static SizeField HeadFillet { get; } = new("blends.head_fillet", "Rb", "Fillet between the head and the arms and tongue, seen along the pin.", 0.5, 12);

    public static SizeField Fillet { get; } = new("blends.fillet", "rf", "All other fillets; zero leaves the corners sharp.", 0, 4, 1.5);

    public static SizeField EdgeRound { get; } = new("blends.edge_round", "re", "Rounding of outer corners seen square to the fork, all but the tongue's; zero leaves them sharp.", 0, 2.5, 0.6);

    public static ChoiceField BossSides { get; } = new("boss.sides", null, "Raised rings round the hole on the head's side faces: none, or one on both sides.", [None, Both], None);

    public static SizeField BossDiameter { get; } = new("boss.diameter", "Db", "Diameter of the bosses.", 2.5, 13) { OnlyWhen = new(BossSides, [Both]) };

    public static SizeField BossHeight { get; } = new("boss.height", "hb", "Height of each boss above the head's side face; follows from the two widths on the sheet.", 0.1, 2) { OnlyWhen = new(BossSides, [Both]) };

    public static ChoiceField MarkPlace { get; } = new("mark.place", "mk", "Where the raised mark stands: nowhere, on the back of the web above the arms, or on the head's side face.", [None, ArmBack, HeadFace], None);

    public static TextField MarkText { get; } = new("mark.text", null, "Letters of the raised mark.", 8) { OnlyWhen = new(MarkPlace, [ArmBack, HeadFace]) };

    public static SizeField MarkHeight { get; } = new("mark.height", null, "How far the letters stand up.", 0.1, 1.2, 0.5) { OnlyWhen = new(MarkPlace, [ArmBack, HeadFace]) };

    public static SizeField MarkLetterHeight { get; } = new("mark.letter_height", null, "Height of the mark's capitals.", 1, 6, 2.5) { OnlyWhen = new(MarkPlace, [ArmBack, HeadFace]) };

    public static AngleField Draft { get; } = new("casting.draft", "df", "Draft on faces along the draw of the pattern.", 0, 8, 2);

    public static RoughnessField HoleTexture { get; } = new("texture.hole", "Ra", "Greatest roughness of the pivot hole's wall, micrometres.", 25, 1.6);

    public static RoughnessField PadTexture { get; } = new("texture.pads", "Ra", "Greatest roughness of the pads' faces, micrometres.", 25, 1.6);

    public static RoughnessField TongueTexture { get; } = new("texture.tongue", "Ra", "Greatest roughness of the tongue's nose and filed flanks, micrometres.", 25, 3.2);

    public static RoughnessField HeadTexture { get; } = new("texture.head", "Ra", "Greatest roughness of the head's side faces, and of a fork's gap that has to be machined, micrometres.", 25, 3.2);

    public static SizeField HoleSquareness { get; } = new("geometry.hole_squareness", null, "Diameter of the zone, square to the head's mid-plane, that holds the hole's axis; zero states none.", 0, 0.5, 0.05);

    public static SizeField PadSymmetry { get; } = new("geometry.pad_symmetry", null, "Width of the zone about the head's mid-plane that holds the mid-plane of the two pads; zero states none.", 0, 1, 0.2);

    public static SizeField PadPosition { get; } = new("geometry.pad_position", null, "Width of the zone that holds each pad's mid-plane, at the sweep's angle to the tongue and where it belongs beside the hole's axis; zero states none.", 0, 1, 0.2);

    public static SizeField TonguePosition { get; } = new("geometry.tongue_position", null, "Width of the zone about the hole's axis that holds the tongue's mid-plane seen along the pin; zero states none.", 0, 1, 0.1);

    // Roughnesses and zones: common practice, no source.
    public static ImmutableArray<FieldSpec> All { get; } =
    [
        HeadForm, HeadWidth, HeadHeight, HeadDepth, HeadCornerRadius,
        HoleDiameter, HoleTaper, HoleLargeEnd, HoleSupply, HoleClearance, HolePin, HolePinDiameter, HolePinTaper,
        ArmForm, ArmThickness, ArmWidth, ArmLength, ArmSagitta, ArmEnd, ArmEndCorner,
        ForkGap, CrotchRadius, Web, ShoulderForm, ShoulderRadius, ShoulderStart, ShoulderEnd,
        PadThickness, PadLength, CrownRadius, PadEnd, PadEndCorner, PadOffset,
        Sweep, TongueLength, TongueWidth, TongueThickness, TongueForm, FlankTaper, CamRadius, NeckThickness, NoseRadius, FootFillet,
        HeadFillet, Fillet, EdgeRound,
        BossSides, BossDiameter, BossHeight,
        MarkPlace, MarkText, MarkHeight, MarkLetterHeight,
        Draft, .. Foundry.CastingFields.All,
        HoleTexture, PadTexture, TongueTexture, HeadTexture,
        HoleSquareness, PadSymmetry, PadPosition, TonguePosition,
    ];
}
