using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.FoundrySheets;

/// <summary>The sizes of a state as its sheet letters them: with their casting tolerance or none, never with the finished part's.</summary>
internal static class LetteredSizes
{
    public static Lever On(FoundryState state, bool toleranced) => state.Shape with { Sizes = state.Shape.Sizes.With(Sizes(state, toleranced)) };

    private static Dictionary<SizeField, SizeValue> Sizes(FoundryState state, bool toleranced)
    {
        Lever shape = state.Shape;
        Dictionary<SizeField, SizeValue> sizes = [];
        foreach (SizeField field in LeverFields.All.OfType<SizeField>())
        {
            if (shape.Sizes.Find(field) is { } size)
                sizes[field] = size with { Tolerance = null };
        }

        foreach (FoundrySize size in FoundrySizes.Of(shape))
        {
            // Over the bosses there is no field of its own.
            if (size.Group == MachinedFaces.Head && shape.Boss is not null)
                continue;
            Length measured = size.MeasureOn(shape);
            // A radius is as drawn: the tolerances are for what is measured across.
            sizes[size.Field] = new SizeValue(measured, toleranced && size.Kind != FoundrySizeKind.Radius ? Tolerance(state.Plan, measured, size.IsWall) : null);
        }

        return sizes;
    }

    public static StatedTolerance? Tolerance(FoundryPlan plan, Length size, bool wall = false) =>
        plan.Tolerance.PlusMinus(size, wall) is { IsGiven: true } half ? new DeviationTolerance(half.Value, -half.Value) : null;
}
