using System.Collections.Immutable;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.AdjustingLever.Sheets;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Comparison;

/// <summary>All in which variants differ, one row each: first what matters for the fit, then for strength, then for the look; figures of the whole lever last.</summary>
public static class VariantTable
{
    /// <param name="variants">Two or more.</param>
    /// <returns>Rows whose values are not all the same.</returns>
    public static ImmutableArray<ComparedRow> Differences(ImmutableArray<LeverVariant> variants) =>
        [.. Sizes(variants).Where(r => r.Differs).OrderBy(r => r.Matters)];

    /// <summary>Mass and strength of each, whether they differ or not.</summary>
    public static ImmutableArray<ComparedRow> Figures(ImmutableArray<LeverVariant> variants)
    {
        ImmutableArray<LeverFigures> all = [.. variants.Select(LeverFigures.Of)];
        ComparedRow Row(string name, string why, string unit, int decimals, Func<LeverFigures, double?> of) =>
            new(name, null, null, why, [.. all.Select(f => of(f) is { } value ? new ComparedFigure(value, unit, decimals) : null)]);
        return
        [
            Row("volume", "of the finished lever", "cm³", 3, f => f.CubicCentimetres),
            Row("mass", "by the middle of its metal's densities", "g", 1, f => f.Grams),
            Row("arms.modulus", "both arms' section modulus, 2·aw·ta²/6", "mm³", 1, f => f.Strength.Modulus),
            Row("arms.least_area", "both arms where they are stressed most", "mm²", 1, f => f.Strength.WeakestArea),
            Row("arms.stress", "there, for each newton of the nut's push", "N/mm²", 2, f => f.Strength.StressPerNewton),
            Row("hole.section", "metal beside the hole, through its axis", "mm²", 1, f => f.Strength.HoleSection),
        ];
    }

    private static IEnumerable<ComparedRow> Sizes(ImmutableArray<LeverVariant> variants)
    {
        // Where one of them leaves it to the crotch, it is compared as it comes out. A concave shoulder's end is its radius's affair.
        bool shouldersFollow = variants.All(v => v.Lever.Fork.Shoulder is LineEdge) && variants.Any(v => ComparedValue.Of(LeverFields.ShoulderEnd, v.Profile.Values) is null);
        // What a lever's profile repeats of its pin is no difference of the levers: hole.pin says which pin, and its own rows what it is.
        IEnumerable<FieldSpec> own = LeverFields.All.Where(f => f != LeverFields.HolePinDiameter && f != LeverFields.HolePinTaper && !(shouldersFollow && f == LeverFields.ShoulderEnd));
        foreach (FieldSpec field in own.Concat([CommonFields.Material, CommonFields.Process, CommonFields.Finish]))
            yield return Of(field, [.. variants.Select(v => ComparedValue.Of(field, v.Profile.Values))]);
        // Without bosses the head's own width says it.
        if (variants.Any(v => v.Lever.Boss is not null))
            yield return Derived("head.over_faces", Matter.Fit, "stands between the frog's lugs, bosses counted", v => v.Lever.Hole.HalfLength * 2);
        yield return Derived(LeverArmAnnotations.PadShift, Matter.Fit, "pads beside the upright through the pivot, where the nut's groove has to be", v => Length.FromMillimetres(v.Lever.Side.PadShift));
        yield return Derived("fork.gap_top", Matter.Strength, "metal between hole and gap", v => Length.FromMillimetres(-v.Lever.Fork.GapTop));
        if (shouldersFollow)
            yield return Derived(LeverFields.ShoulderEnd.Name, Matter.Look, "shape only", v => Length.FromMillimetres(-v.Lever.Fork.ShoulderCorner.Y));
        yield return Derived("fork.outside", Matter.Look, "has to clear the frog's pocket", v => v.Lever.Sizes[LeverFields.ForkGap].Nominal + (v.Lever.Sizes[LeverFields.ArmWidth].Nominal * 2));
        // A pin that only some have is no difference of the variants, but of what was asked for.
        if (variants.Any(v => v.Pin is null))
            yield break;
        foreach (FieldSpec field in PinFields.All)
            yield return Of(field, [.. variants.Select(v => ComparedValue.Of(field, v.Pin!.Profile.Values))]);
        yield return Derived("pin.at_large_end", Matter.Fit, "its thickness", v => v.Pin!.Pin.LargeEnd);
        yield return Derived("pin.at_middle", Matter.Fit, "its thickness in the middle of the head", v => v.Pin!.Pin.Middle);
        yield return Derived("pin.at_small_end", Matter.Fit, "its thickness", v => v.Pin!.Pin.SmallEnd);
        yield return Derived("hole.play", Matter.Fit, "play on the pin in the middle of the head", v => v.Lever.Hole.AtMid - v.Pin!.Pin.Middle);

        ComparedRow Derived(string name, Matter matter, string why, Func<LeverVariant, Length> of) =>
            new(name, null, matter, why, [.. variants.Select(v => new ComparedSize(of(v)))]);
    }

    private static ComparedRow Of(FieldSpec field, ImmutableArray<ComparedValue?> values)
    {
        FieldMeaning meaning = FieldMeanings.Of(field);
        return new ComparedRow(field.Name, field.Symbol, meaning.Matter, meaning.Why, values);
    }
}
