using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Geometry;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>What section A–A says: the hole's ends, and the bosses.</summary>
internal static class LeverSection
{
    public static ImmutableArray<Annotation> Annotations(Lever lever, DimensionText text)
    {
        var all = ImmutableArray.CreateBuilder<Annotation>();
        all.Add(LeverHoleNote.In(lever, text));
        double half = lever.Hole.HalfLength.Millimetres;
        if (!lever.Hole.Taper.IsParallel)
        {
            all.Add(End("hole.left_end", lever.Hole.AtLeft, -half, DimensionSides.Left, text));
            all.Add(End("hole.right_end", lever.Hole.AtRight, half, DimensionSides.Right, text));
        }

        if (lever.Boss is { } boss)
        {
            double head = lever.Sizes[LeverFields.HeadWidth].Millimetres / 2;
            double radius = boss.Diameter.Millimetres / 2;
            all.Add(new LinearDimension(LeverFields.BossDiameter.Name, boss.Diameter.Millimetres, text.Size(lever.Sizes[LeverFields.BossDiameter], "⌀"), new Point2D(half, -radius), new Point2D(half, radius), Math.PI / 2) { Sides = DimensionSides.Right });
            all.Add(new LinearDimension("boss.over_both", 2 * half, text.Reference(Length.FromMillimetres(2 * half)), new Point2D(-half, -radius), new Point2D(half, -radius), 0) { Sides = DimensionSides.Right });
            all.Add(new LinearDimension(LeverFields.BossHeight.Name, boss.Height.Millimetres, text.Size(lever.Sizes[LeverFields.BossHeight], "2× "), new Point2D(head, radius), new Point2D(half, radius), 0));
        }

        return all.ToImmutable();
    }

    private static LinearDimension End(string name, Length diameter, double x, DimensionSides side, DimensionText text)
    {
        double r = diameter.Millimetres / 2;
        return new LinearDimension(name, diameter.Millimetres, text.Reference(diameter, "⌀"), new Point2D(x, -r), new Point2D(x, r), Math.PI / 2) { Sides = side };
    }
}
