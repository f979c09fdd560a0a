using System.Collections.Immutable;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Profiles;

namespace LeverDraw.Specimens.Measuring;

/// <summary>How a size was made and how it wears.</summary>
/// <param name="UsualWear">Mean wear on a survivor, millimetres; 0 when it does not wear.</param>
/// <param name="Witness">Where an unworn place may be found; empty when the size does not wear.</param>
internal sealed record SizeHabit(FieldSpec Field, MadeBy Made, WearSide Wear = WearSide.None, double UsualWear = 0, string Witness = "");

/// <summary>The one table of what can be measured on a survivor, how each size was made and which way wear moves it.</summary>
/// <remarks>Directions, witnesses and processes: the trade notes' list of sizes and their table of wear. Mean wear of pads and tongue: the notes' simulation, 0.20 mm; of the hole their worked example, 0.06 mm, and of the pin the rest of its pivot wear, 0.04 mm; of the rest our own.</remarks>
internal static class SizeHabits
{
    public static ImmutableArray<SizeHabit> Lever { get; } =
    [
        new(LeverFields.HeadWidth, MadeBy.Faced),
        new(LeverFields.HeadDepth, MadeBy.Cast),
        new(LeverFields.HeadHeight, MadeBy.Cast),
        new(LeverFields.HeadCornerRadius, MadeBy.CastRadius),
        new(LeverFields.HoleDiameter, MadeBy.Reamed, WearSide.Larger, 0.06, "across the load, near the mouth"),
        new(LeverFields.ArmThickness, MadeBy.Cast),
        new(LeverFields.ArmWidth, MadeBy.Cast),
        new(LeverFields.ArmLength, MadeBy.Cast),
        new(LeverFields.ArmSagitta, MadeBy.Cast),
        new(LeverFields.ForkGap, MadeBy.Cast, WearSide.Larger, 0.05, "the crotch"),
        new(LeverFields.CrotchRadius, MadeBy.CastRadius),
        new(LeverFields.Web, MadeBy.Cast),
        new(LeverFields.ShoulderRadius, MadeBy.CastRadius),
        new(LeverFields.PadThickness, MadeBy.Filed, WearSide.Smaller, 0.20, "corners of the pad"),
        new(LeverFields.PadLength, MadeBy.Cast),
        new(LeverFields.CrownRadius, MadeBy.CastRadius),
        new(LeverFields.Sweep, MadeBy.Angle),
        new(LeverFields.TongueLength, MadeBy.Cast),
        new(LeverFields.TongueWidth, MadeBy.Cast),
        new(LeverFields.TongueThickness, MadeBy.Filed, WearSide.Smaller, 0.20, "near the root, or at the extreme sides"),
        new(LeverFields.FlankTaper, MadeBy.Angle),
        new(LeverFields.NeckThickness, MadeBy.Cast),
        new(LeverFields.HeadFillet, MadeBy.CastRadius),
        new(LeverFields.Fillet, MadeBy.CastRadius),
        new(LeverFields.EdgeRound, MadeBy.CastRadius),
        new(LeverFields.BossDiameter, MadeBy.Cast),
        new(LeverFields.BossHeight, MadeBy.Faced),
        new(LeverFields.MarkHeight, MadeBy.Cast, WearSide.Smaller, 0.10, "sheltered letters"),
        new(LeverFields.MarkLetterHeight, MadeBy.Cast),
    ];

    public static ImmutableArray<SizeHabit> Pin { get; } =
    [
        new(PinFields.LargeEnd, MadeBy.Ground, WearSide.Smaller, 0.04, "the part that sat in the lug"),
        new(PinFields.Length, MadeBy.Cut),
    ];

    /// <summary>What is seen rather than measured.</summary>
    public static ImmutableArray<FieldSpec> Seen { get; } =
    [
        LeverFields.HeadForm, LeverFields.HoleTaper, LeverFields.ArmForm, LeverFields.ArmEnd, LeverFields.ShoulderForm, LeverFields.PadEnd,
        LeverFields.TongueForm, LeverFields.BossSides, LeverFields.MarkPlace, LeverFields.MarkText,
        PinFields.Ends, PinFields.Taper,
    ];
}
