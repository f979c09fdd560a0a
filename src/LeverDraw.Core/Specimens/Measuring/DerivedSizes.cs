using System.Collections.Immutable;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Profiles;

namespace LeverDraw.Specimens.Measuring;

/// <summary>A size that is easy to measure and follows from the profile's own: it identifies a variant, and ties the sizes it is made of.</summary>
/// <param name="Like">The field whose making and wear it shares.</param>
/// <param name="Fields">What it follows from.</param>
/// <param name="From">The size from the values of <paramref name="Fields"/> in their order; a taper is its rate.</param>
internal sealed record DerivedSize(string Name, string Help, SizeHabit Like, ImmutableArray<FieldSpec> Fields, double Least, double Most, Func<double[], double> From);

/// <summary>The list of derived sizes; each formula is the shape's own geometry (docs/adr/0004-lever-shape.md).</summary>
internal static class DerivedSizes
{
    public static ImmutableArray<DerivedSize> Lever { get; } =
    [
        new("head.top_from_axis", "From the pivot's axis to the head's top; twice that is the head's height.", Habit(LeverFields.HeadHeight), [LeverFields.HeadHeight], 2.5, 7, v => v[0] / 2),
        new("fork.outside", "Width over both arms.", Habit(LeverFields.ArmWidth), [LeverFields.ForkGap, LeverFields.ArmWidth], 10, 40, v => v[0] + (2 * v[1])),
        new("arms.overall", "From the head's top to the ends of the pads.", Habit(LeverFields.ArmLength), [LeverFields.HeadHeight, LeverFields.ArmLength, LeverFields.PadLength], 13, 48, v => (v[0] / 2) + v[1] + (v[2] / 2)),
        new("boss.over", "Width over the bosses.", Habit(LeverFields.HeadWidth), [LeverFields.HeadWidth, LeverFields.BossHeight], 5, 18, v => v[0] + (2 * v[1])),
        new("hole.larger_side", "Diameter of the pivot hole where it is larger.", Habit(LeverFields.HoleDiameter), [LeverFields.HoleDiameter, LeverFields.HoleTaper, LeverFields.HeadWidth, LeverFields.BossHeight], 1.2, 5.3, v => v[0] + (v[1] * ((v[2] / 2) + v[3]))),
        new("hole.smaller_side", "Diameter of the pivot hole where it is smaller.", Habit(LeverFields.HoleDiameter), [LeverFields.HoleDiameter, LeverFields.HoleTaper, LeverFields.HeadWidth, LeverFields.BossHeight], 1, 5, v => v[0] - (v[1] * ((v[2] / 2) + v[3]))),
    ];

    public static ImmutableArray<DerivedSize> Pin { get; } =
    [
        new("pin.small_end", "Diameter of the pin's small end.", Habit(PinFields.LargeEnd), [PinFields.LargeEnd, PinFields.Taper, PinFields.Length], 0.5, 12, v => v[0] - (v[1] * v[2])),
        new("pin.middle", "Diameter of the pin in the middle of its length.", Habit(PinFields.LargeEnd), [PinFields.LargeEnd, PinFields.Taper, PinFields.Length], 0.5, 12, v => v[0] - (v[1] * v[2] / 2)),
    ];

    /// <summary>True for a field that counts as nothing where a part has none of it.</summary>
    public static bool MayLack(FieldSpec field) => field == LeverFields.BossHeight;

    private static SizeHabit Habit(FieldSpec field) => SizeHabits.Lever.Concat(SizeHabits.Pin).First(h => h.Field == field);
}
