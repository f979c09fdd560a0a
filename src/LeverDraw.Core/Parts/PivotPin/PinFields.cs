using System.Collections.Immutable;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts.PivotPin;

/// <summary>The fields of a pin's profile. An inch pin is named by its number, which fixes the LARGE end; a metric one by the diameter of its SMALL end.</summary>
public static class PinFields
{
    public const string Inch = "inch", Metric = "metric", Free = "free";
    public const string Crowned = "crowned", Chamfered = "chamfered", Flat = "flat";
    public const string Left = "left", Right = "right";

    public static ChoiceField Series { get; } = new("pin.series", null, "Series the pin belongs to: inch (1:48, by number), metric (1:50, by small end), or free (any size and taper).", [Inch, Metric, Free], Inch);

    public static TextField Number { get; } = new("pin.number", null, "Number of an inch pin, such as 3/0; it fixes the large end's diameter.", 4) { OnlyWhen = new(Series, [Inch]) };

    public static SizeField SmallEnd { get; } = new("pin.small_end", "dS", "Diameter of a metric pin's small end, by which it is named.", 0.6, 10) { OnlyWhen = new(Series, [Metric]) };

    public static SizeField LargeEnd { get; } = new("pin.large_end", "dL", "Diameter of a free pin's large end.", 0.8, 12) { OnlyWhen = new(Series, [Free]) };

    public static TaperField Taper { get; } = new("pin.taper", "C", "Taper of a free pin on diameter, or parallel.", Units.Taper.InchPins) { OnlyWhen = new(Series, [Free]) };

    public static SizeField Length { get; } = new("pin.length", "L", "Length over all, end forms included.", 4, 60);

    public static ChoiceField Ends { get; } = new("pin.ends", null, "Form of both ends.", [Crowned, Chamfered, Flat], Crowned);

    public static SizeField CrownRadius { get; } = new("pin.crown_radius", null, "Radius of both crowned ends; the large end's diameter when not given.", 0.5, 30) { MayBeAbsent = true, OnlyWhen = new(Ends, [Crowned]) };

    public static SizeField Chamfer { get; } = new("pin.chamfer", null, "Chamfer of both ends, at 45 degrees.", 0.1, 2, 0.3) { OnlyWhen = new(Ends, [Chamfered]) };

    public static SizeField GaugePlane { get; } = new("pin.gauge_plane", null, "Distance from the large end at which the diameter is gauged; the middle when not given.", 0, 60) { MayBeAbsent = true };

    public static ChoiceField LargeEndSide { get; } = new("drive.large_end", null, "Side of the plane the large end lies on, seen by its user; the pin is driven in from there.", [Left, Right], Right);

    public static SizeField StandOutLeast { get; } = new("drive.stand_out_min", null, "Least that a pin pushed in by hand stands short of home, where both ends are equally proud.", 0, 5, 0.5);

    public static SizeField StandOutMost { get; } = new("drive.stand_out_max", null, "Most that a pin pushed in by hand stands short of home, where both ends are equally proud.", 0, 6, 1.6);

    public static SizeField LugEdgeDistance { get; } = new("lug.edge_distance", null, "From the pin's axis to the nearest edge of the plane's lug; the sheet then says what wall the next oversize pin leaves.", 1, 20) { MayBeAbsent = true };

    /// <summary>Default: common practice for a ground pin, no source.</summary>
    public static RoughnessField SideTexture { get; } = new("texture.side", "Ra", "Greatest roughness of the pin's tapered or parallel side, micrometres.", 25, 0.8);

    /// <summary>Default: common practice for a turned face, no source.</summary>
    public static RoughnessField EndTexture { get; } = new("texture.ends", "Ra", "Greatest roughness of all other surfaces of the pin, its ends and their forms, micrometres.", 25, 3.2);

    public static ImmutableArray<FieldSpec> All { get; } =
        [Series, Number, SmallEnd, LargeEnd, Taper, Length, Ends, CrownRadius, Chamfer, GaugePlane, LargeEndSide, StandOutLeast, StandOutMost, LugEdgeDistance, SideTexture, EndTexture];
}
