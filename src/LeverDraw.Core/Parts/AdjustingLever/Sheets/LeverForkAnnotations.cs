using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Geometry;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>What the fork view says: widths, the gap, levels from the pivot's axis, shoulders.</summary>
internal static class LeverForkAnnotations
{
    public static ImmutableArray<Annotation> Of(Lever lever, DimensionText text)
    {
        var all = ImmutableArray.CreateBuilder<Annotation>();
        all.AddRange(Widths(lever, text));
        all.AddRange(Levels(lever, text));
        all.AddRange(Radii(lever, text));
        return all.ToImmutable();
    }

    private static IEnumerable<Annotation> Widths(Lever lever, DimensionText text)
    {
        ForkFeatures fork = lever.Fork;
        if (!LeverTongueView.IsNeeded(lever))
            yield return LeverTongueView.Width(lever, text, fork.TongueSide.PointAt(0.7).Y, DimensionSides.Left);
        SizeValue head = lever.Sizes[LeverFields.HeadWidth];
        // With bosses the head's own sides stay as cast, and the tolerance holds over the bosses.
        yield return Across(LeverFields.HeadWidth, head, lever.Boss is null ? text.Size(head) : text.Size(head.Nominal), head.Millimetres / 2, fork.HeadSide.PointAt(0.8).Y, DimensionSides.Left);
        SizeValue gap = lever.Sizes[LeverFields.ForkGap];
        yield return Across(LeverFields.ForkGap, gap, text.Size(gap), gap.Millimetres / 2, fork.GapSide.Box.MinY, DimensionSides.Right);
        SizeValue arm = lever.Sizes[LeverFields.ArmWidth];
        double inner = gap.Millimetres / 2;
        double outer = inner + arm.Millimetres;
        double low = fork.ArmOuter.Start.Y;
        yield return new LinearDimension(LeverFields.ArmWidth.Name, arm.Millimetres, text.Size(arm, "2× "), new Point2D(inner, low), new Point2D(outer, low), 0) { Sides = DimensionSides.Right };
        yield return new LinearDimension("fork.outside", 2 * outer, text.Reference(Length.FromMillimetres(2 * outer)), new Point2D(-outer, low), new Point2D(outer, low), 0) { Sides = DimensionSides.Right };
    }

    private static IEnumerable<Annotation> Levels(Lever lever, DimensionText text)
    {
        ForkFeatures fork = lever.Fork;
        double side = lever.Sizes[LeverFields.HeadWidth].Millimetres / 2;
        double outer = fork.ArmOuter.Start.X;
        yield return Up("head.top_from_axis", text, new Point2D(-side, 0), fork.HeadCorner with { X = -side }, DimensionSides.Left);
        yield return Up("tongue.top_from_axis", text, new Point2D(side, 0), fork.TongueSide.End, DimensionSides.Both, reference: true);
        yield return Up("fork.gap_top_from_axis", text, new Point2D(-side, 0), new Point2D(0, fork.GapTop), DimensionSides.Left);
        if (Math.Abs(fork.ShoulderStart.Y) > Coincidence.Distance)
            yield return Up(LeverFields.ShoulderStart.Name, text, new Point2D(side, 0), fork.ShoulderStart, DimensionSides.Right);
        // The end of a concave shoulder follows from its radius.
        yield return Up(LeverFields.ShoulderEnd.Name, text, new Point2D(side, 0), new Point2D(outer, fork.ShoulderCorner.Y), DimensionSides.Right, reference: fork.Shoulder is ArcEdge);
        if (LeverMarkPlace.InForkView(lever) is { } mark)
            yield return Up(LeverMarkPlace.Name, text, new Point2D(side, 0), mark, DimensionSides.Right);
    }

    private static IEnumerable<Annotation> Radii(Lever lever, DimensionText text)
    {
        ForkFeatures fork = lever.Fork;
        SizeValue crotch = lever.Sizes[LeverFields.CrotchRadius];
        yield return new RadiusDimension(LeverFields.CrotchRadius.Name, crotch.Millimetres, fork.GapTopFlat is null ? text.Reference(crotch.Nominal, "R") : text.Size(crotch, "2× R"), Pair(fork.Crotch)) { MaterialAtCentre = false };
        if (fork.Shoulder is ArcEdge shoulder)
        {
            SizeValue radius = lever.Sizes[LeverFields.ShoulderRadius];
            yield return new RadiusDimension(LeverFields.ShoulderRadius.Name, radius.Millimetres, text.Size(radius, "2× R"), Pair(shoulder)) { MaterialAtCentre = false, OnlyFromOutside = true };
        }

        // Unstated, it is one of the fillets the sheet's note covers.
        if (lever.Sizes.Find(LeverFields.FootFillet) is { } foot)
        {
            if (fork.TongueFillet is { } fillet)
                yield return new RadiusDimension(LeverFields.FootFillet.Name, foot.Millimetres, text.Size(foot, "2× R"), Pair(fillet)) { MaterialAtCentre = false };
            else if (fork.HeadTop is not null)
                yield return new LeaderNote(LeverFields.FootFillet.Name, foot.Millimetres, new Label(["2× SHARP"]), [fork.TongueFoot, fork.TongueFoot with { X = -fork.TongueFoot.X }]);
        }

        // Corners that take up the whole end follow from the arm's width, as a full round does.
        if (fork.ArmCorner is { } end && (lever.Forms.ArmEnds == LeverFields.Round || fork.Find("arm-end-right") is null))
            yield return new RadiusDimension("arms.end_radius", end.Radius, text.Reference(Length.FromMillimetres(end.Radius), "2× R"), Pair(end)) { MaterialAtCentre = true, OnlyFromOutside = true };
        else if (fork.ArmCorner is { } corner)
            yield return new RadiusDimension(LeverFields.ArmEndCorner.Name, corner.Radius, text.Size(Length.FromMillimetres(corner.Radius), "4× R"), Pair(corner)) { MaterialAtCentre = true, OnlyFromOutside = true };
    }

    /// <summary>A size symmetric about the mid-plane.</summary>
    private static LinearDimension Across(SizeField field, SizeValue size, Label label, double half, double level, DimensionSides sides) =>
        new(field.Name, size.Millimetres, label, new Point2D(-half, level), new Point2D(half, level), 0) { Sides = sides };

    private static LinearDimension Up(string name, DimensionText text, Point2D axis, Point2D to, DimensionSides sides, bool reference = false)
    {
        Length value = Length.FromMillimetres(Math.Abs(to.Y - axis.Y));
        return new LinearDimension(name, value.Millimetres, reference ? text.Reference(value) : text.Size(value), axis, to, LinearDimension.Upright) { Sides = sides };
    }

    /// <summary>An arc of the right half and its mirror image.</summary>
    private static ImmutableArray<ArcEdge> Pair(ArcEdge right) => ClearArcs.Of(right, right.Transformed(Transform2D.MirrorX));
}
