using System.Collections.Immutable;
using LeverDraw.Specimens.Identification;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Readings;

namespace LeverDraw.Benchmarks.Specimens;

/// <summary>Sizes of the shipped variants that are made and wear alike, with their design values.</summary>
internal sealed record SizeGroup(string Name, ReadAt At, ImmutableArray<(Measurand Measurand, double Design)> Sizes)
{
    /// <summary>Every size that a profile itself has is in one group; those that wear are in two, worn and unworn.</summary>
    public static ImmutableArray<SizeGroup> Of(ImmutableArray<Variant> variants)
    {
        return
        [
            Group("Pads and tongue, worn (filed)", ReadAt.Worn, m => m.Habit!.Made == MadeBy.Filed),
            Group("Pivot hole, worn (reamed)", ReadAt.Worn, m => m.Habit!.Made == MadeBy.Reamed),
            Group("Pin's large end, worn (ground)", ReadAt.Worn, m => m.Habit!.Made == MadeBy.Ground),
            Group("Fork gap and letters, slightly worn (cast)", ReadAt.Worn, m => m.Habit!.Made == MadeBy.Cast && m.Wear != WearSide.None),
            Group("All of these at unworn places", ReadAt.Witness, m => m.Wear != WearSide.None),
            Group("Cast sizes that do not wear", ReadAt.Unsaid, m => m.Habit!.Made == MadeBy.Cast && m.Wear == WearSide.None),
            Group("Faced and cut sizes", ReadAt.Unsaid, m => m.Habit!.Made is MadeBy.Faced or MadeBy.Cut),
            Group("Cast radii", ReadAt.Unsaid, m => m.Habit!.Made == MadeBy.CastRadius),
            Group("Angles", ReadAt.Unsaid, m => m.Habit!.Made == MadeBy.Angle),
        ];

        SizeGroup Group(string name, ReadAt at, Func<Measurand, bool> belongs) =>
            new(name, at, [.. variants.SelectMany(v => Measurands.All.Where(m => m.Habit is not null && m.Derived is null && belongs(m) && v.Sizes.ContainsKey(m.Name)).Select(m => (m, v.Sizes[m.Name])))]);
    }
}
