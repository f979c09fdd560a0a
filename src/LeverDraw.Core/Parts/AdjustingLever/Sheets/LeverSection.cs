using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Geometry;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>What section A–A says: the hole's ends, and the bosses.</summary>
internal static class LeverSection
{
    public const string OverBosses = "boss.over_both";

    public static ImmutableArray<Annotation> Annotations(Lever lever, DimensionText text)
    {
        var all = ImmutableArray.CreateBuilder<Annotation>();
        all.Add(LeverHoleNote.In(lever, text));
        double half = lever.Hole.HalfLength.Millimetres;
        // Where the size has limits the hole's note gives it at mid-plane, the taper, and the large end to check: its ends in brackets beside those would only raise doubt.
        if (!lever.Hole.Taper.IsParallel && StatedLimits.Of(lever.Sizes[LeverFields.HoleDiameter]) is null)
        {
            all.Add(End("hole.left_end", lever.Hole.AtLeft, -half, DimensionSides.Left, text));
            all.Add(End("hole.right_end", lever.Hole.AtRight, half, DimensionSides.Right, text));
        }

        if (lever.Boss is { } boss)
        {
            SizeValue head = lever.Sizes[LeverFields.HeadWidth];
            SizeValue over = head with { Nominal = head.Nominal + boss.Height + boss.Height };
            double radius = boss.Diameter.Millimetres / 2;
            all.Add(new LinearDimension(LeverFields.BossDiameter.Name, boss.Diameter.Millimetres, text.Size(lever.Sizes[LeverFields.BossDiameter], "⌀"), new Point2D(half, -radius), new Point2D(half, radius), LinearDimension.Upright)
            {
                // On whichever side the hole's note leaves free.
                AtOtherEdge = (new Point2D(-half, -radius), new Point2D(-half, radius)),
            });
            all.Add(new LinearDimension(OverBosses, over.Millimetres, text.Size(over), new Point2D(-half, -radius), new Point2D(half, -radius), 0) { Sides = DimensionSides.Right });
            all.Add(new LinearDimension(LeverFields.BossHeight.Name, boss.Height.Millimetres, text.Reference(boss.Height, "2× "), new Point2D(head.Millimetres / 2, radius), new Point2D(half, radius), 0));
        }

        return all.ToImmutable();
    }

    private static LinearDimension End(string name, Length diameter, double x, DimensionSides side, DimensionText text)
    {
        double r = diameter.Millimetres / 2;
        return new LinearDimension(name, diameter.Millimetres, text.Reference(diameter, "⌀"), new Point2D(x, -r), new Point2D(x, r), LinearDimension.Upright) { Sides = side };
    }
}
