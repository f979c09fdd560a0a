using System.Collections.Immutable;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Profiles;

namespace LeverDraw.Comparison;

/// <summary>What a difference of a size changes first.</summary>
public enum Matter
{
    /// <summary>Whether it goes into the plane and how much play it has there.</summary>
    Fit,

    /// <summary>How much metal carries the load.</summary>
    Strength,

    /// <summary>Neither: what the eye sees and how it is cast.</summary>
    Look,
}

/// <param name="Why">In a few words, for a reader who has to decide.</param>
public sealed record FieldMeaning(Matter Matter, string Why);

/// <summary>What each field of a lever and of its pin matters for: the one place that says so.</summary>
/// <remarks>Which sizes are fits follows the trade notes' list of sizes (column of critical ones: common practice, no source); strength and look are our own reading of what the size does.</remarks>
public static class FieldMeanings
{
    private const string Hole = "runs on the pin", Lugs = "stands between the frog's lugs", Nut = "runs in the nut's groove", Slot = "works in the cap iron's slot",
        Root = "metal where the load turns the corner", Eye = "metal round the hole", Seen = "shape only", Mould = "how it leaves the mould";

    private static readonly ImmutableDictionary<string, FieldMeaning> ByName = ImmutableDictionary.CreateRange(
        StringComparer.Ordinal,
        Rows().Select(r => KeyValuePair.Create(r.Field.Name, new FieldMeaning(r.Matter, r.Why))));

    /// <exception cref="KeyNotFoundException">The field is no lever's and no pin's.</exception>
    public static FieldMeaning Of(FieldSpec field) => ByName[field.Name];

    private static IEnumerable<(FieldSpec Field, Matter Matter, string Why)> Rows() =>
    [
        (CommonFields.Material, Matter.Strength, "the metal itself"),
        (CommonFields.Process, Matter.Look, Mould),
        (CommonFields.Finish, Matter.Look, Seen),

        (LeverFields.HeadForm, Matter.Look, Seen),
        (LeverFields.HeadWidth, Matter.Fit, Lugs),
        (LeverFields.HeadHeight, Matter.Strength, Eye),
        (LeverFields.HeadDepth, Matter.Strength, Eye),
        (LeverFields.HeadCornerRadius, Matter.Look, Seen),
        (LeverFields.HoleDiameter, Matter.Fit, Hole),
        (LeverFields.HoleTaper, Matter.Fit, Hole),
        (LeverFields.HoleLargeEnd, Matter.Fit, "side from which the pin is driven"),
        (LeverFields.HoleSupply, Matter.Fit, "whether it can be fitted as sold"),
        (LeverFields.HoleClearance, Matter.Fit, "play on the pin"),
        (LeverFields.HolePin, Matter.Fit, "which pin it takes"),
        (LeverFields.HolePinDiameter, Matter.Fit, "which pin it takes"),
        (LeverFields.HolePinTaper, Matter.Fit, "which pin it takes"),
        (LeverFields.ArmForm, Matter.Strength, "how the section runs along the arms"),
        (LeverFields.ArmThickness, Matter.Strength, "bends under the nut's push, by its square"),
        (LeverFields.ArmWidth, Matter.Strength, "bends under the nut's push, in proportion"),
        (LeverFields.ArmLength, Matter.Fit, "where the pads meet the nut, and travel per turn"),
        (LeverFields.ArmSagitta, Matter.Fit, "carries the pads aside"),
        (LeverFields.ArmEnd, Matter.Look, Seen),
        (LeverFields.ArmEndCorner, Matter.Look, Seen),
        (LeverFields.ForkGap, Matter.Fit, "clears the bottom of the nut's groove"),
        (LeverFields.CrotchRadius, Matter.Strength, Root),
        (LeverFields.Web, Matter.Strength, Root),
        (LeverFields.ShoulderForm, Matter.Look, Seen),
        (LeverFields.ShoulderRadius, Matter.Look, Seen),
        (LeverFields.ShoulderStart, Matter.Look, Seen),
        (LeverFields.ShoulderEnd, Matter.Look, Seen),
        (LeverFields.PadThickness, Matter.Fit, Nut),
        (LeverFields.PadLength, Matter.Look, "bears along the groove; nothing is tight against it"),
        (LeverFields.CrownRadius, Matter.Fit, Nut),
        (LeverFields.PadEnd, Matter.Look, Seen),
        (LeverFields.PadEndCorner, Matter.Look, Seen),
        (LeverFields.PadOffset, Matter.Fit, "takes up part of the groove"),
        (LeverFields.Sweep, Matter.Fit, "stands the arms to the stud and the tongue to the bed"),
        (LeverFields.TongueLength, Matter.Fit, "reaches through iron and cap iron"),
        (LeverFields.TongueWidth, Matter.Strength, "section of the tongue"),
        (LeverFields.TongueThickness, Matter.Fit, Slot),
        (LeverFields.TongueForm, Matter.Fit, Slot),
        (LeverFields.FlankTaper, Matter.Fit, "thickness at another iron's height"),
        (LeverFields.CamRadius, Matter.Fit, Slot),
        (LeverFields.NeckThickness, Matter.Strength, "least section of the tongue"),
        (LeverFields.NoseRadius, Matter.Fit, Slot),
        (LeverFields.FootFillet, Matter.Strength, Root),
        (LeverFields.HeadFillet, Matter.Strength, Root),
        (LeverFields.Fillet, Matter.Look, Seen),
        (LeverFields.EdgeRound, Matter.Look, Seen),
        (LeverFields.BossSides, Matter.Fit, Lugs),
        (LeverFields.BossDiameter, Matter.Look, Seen),
        (LeverFields.BossHeight, Matter.Fit, Lugs),
        (LeverFields.MarkPlace, Matter.Look, Seen),
        (LeverFields.MarkText, Matter.Look, Seen),
        (LeverFields.MarkHeight, Matter.Look, Seen),
        (LeverFields.MarkLetterHeight, Matter.Look, Seen),
        (LeverFields.Draft, Matter.Look, Mould),
        (LeverFields.HoleTexture, Matter.Fit, Hole),
        (LeverFields.PadTexture, Matter.Fit, Nut),
        (LeverFields.TongueTexture, Matter.Fit, Slot),
        (LeverFields.HeadTexture, Matter.Fit, Lugs),
        (LeverFields.HoleSquareness, Matter.Fit, Hole),
        (LeverFields.PadSymmetry, Matter.Fit, Nut),
        (LeverFields.PadPosition, Matter.Fit, Nut),
        (LeverFields.TonguePosition, Matter.Fit, Slot),

        // Of the casting, not of the finished part.
        .. CastingFields.All.Where(f => f != LeverFields.Draft).Select(f => ((FieldSpec)f, Matter.Look, Mould)),

        (PinFields.Series, Matter.Fit, "which holes it goes with"),
        (PinFields.Number, Matter.Fit, "its thickness"),
        (PinFields.SmallEnd, Matter.Fit, "its thickness"),
        (PinFields.LargeEnd, Matter.Fit, "its thickness"),
        (PinFields.Taper, Matter.Fit, "bears along the whole hole, or at one end"),
        (PinFields.Length, Matter.Fit, "reaches through both lugs"),
        (PinFields.Ends, Matter.Look, Seen),
        (PinFields.CrownRadius, Matter.Look, Seen),
        (PinFields.Chamfer, Matter.Look, Seen),
        (PinFields.GaugePlane, Matter.Look, "where it is gauged"),
        (PinFields.LargeEndSide, Matter.Fit, "side from which it is driven"),
        (PinFields.StandOutLeast, Matter.Fit, "how hard it is driven"),
        (PinFields.StandOutMost, Matter.Fit, "how hard it is driven"),
        (PinFields.LugEdgeDistance, Matter.Strength, "wall of the lug"),
        (PinFields.SideTexture, Matter.Fit, "bears in lugs and lever"),
        (PinFields.EndTexture, Matter.Look, Seen),
    ];
}
