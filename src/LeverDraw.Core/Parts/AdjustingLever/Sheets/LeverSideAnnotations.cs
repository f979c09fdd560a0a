using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Geometry;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>What the side view says: everything seen along the pin, but for nose and pads, which have details of their own.</summary>
internal static class LeverSideAnnotations
{
    /// <param name="curveNoted">How a curved arm's mid-line lies stands in the notes.</param>
    public static ImmutableArray<Annotation> Of(Lever lever, DimensionText text, bool curveNoted)
    {
        var all = ImmutableArray.CreateBuilder<Annotation>();
        all.AddRange(LeverArmAnnotations.Of(lever, text, curveNoted));
        all.AddRange(Head(lever, text));
        all.AddRange(Tongue(lever, text));
        return all.ToImmutable();
    }

    private static IEnumerable<Annotation> Head(Lever lever, DimensionText text)
    {
        SideFeatures side = lever.Side;
        SizeValue depth = lever.Sizes[LeverFields.HeadDepth];
        if (lever.Forms.Head == LeverFields.Round)
        {
            ImmutableArray<ArcEdge> arcs = ClearArcs.Of([.. side.Edges.Where(e => e.Name is "head-right" or "head-left").Select(e => OffBoss(lever, (ArcEdge)e.Edge))]);
            yield return new DiameterDimension(LeverFields.HeadDepth.Name, depth.Millimetres, text.Size(depth, "⌀"), Point2D.Origin, depth.Millimetres / 2) { Arcs = arcs };
        }
        else
        {
            double half = depth.Millimetres / 2;
            yield return new LinearDimension(LeverFields.HeadDepth.Name, depth.Millimetres, text.Size(depth), new Point2D(-half, 0), new Point2D(half, 0), 0);
            SizeValue corner = lever.Sizes[LeverFields.HeadCornerRadius];
            ImmutableArray<ArcEdge> corners = [.. side.Edges.Where(e => e.Name.StartsWith("head-", StringComparison.Ordinal) && !e.Name.Contains("fillet", StringComparison.Ordinal)).Select(e => e.Edge).OfType<ArcEdge>()];
            if (!corners.IsEmpty)
                yield return new RadiusDimension(LeverFields.HeadCornerRadius.Name, corner.Millimetres, text.Size(corner, "R"), corners) { MaterialAtCentre = true };
        }

        SizeValue fillet = lever.Sizes[LeverFields.HeadFillet];
        yield return new RadiusDimension(LeverFields.HeadFillet.Name, fillet.Millimetres, text.Size(fillet, "4× R"), ClearArcs.Of(side.HeadFilletArmRight, OffShoulder(lever, side.HeadFilletFlankLower), side.HeadFilletArmLeft, OffShoulder(lever, side.HeadFilletFlankUpper))) { MaterialAtCentre = false };
    }

    /// <summary>The shoulders beside the tongue show as a level line across it.</summary>
    private static ArcEdge OffShoulder(Lever lever, ArcEdge fillet) => lever.Fork.HeadTop is { } top ? ClearArcs.Off(top.Start.Y, fillet) : fillet;

    /// <summary>Where the shoulder cuts the boss's rim short, the edge between them ends close beside the head's round.</summary>
    private static ArcEdge OffBoss(Lever lever, ArcEdge round) =>
        lever.Boss is { } boss && SideView.BossRim(lever, boss) is { IsFullCircle: false } rim ? ClearArcs.Off(rim.End.Y, round) : round;

    private static IEnumerable<Annotation> Tongue(Lever lever, DimensionText text)
    {
        SideFeatures side = lever.Side;
        double along = (side.NoseCentre - Point2D.Origin).Angle;
        SizeValue length = lever.Sizes[LeverFields.TongueLength];
        yield return new LinearDimension(LeverFields.TongueLength.Name, length.Millimetres, text.Size(length), Point2D.Origin, side.NoseCentre, along);
        double tip = (side.NoseTip - Point2D.Origin).Length;
        double sweep = LinearDimension.Upright - along;
        yield return new AngleDimension(LeverFields.Sweep.Name, sweep, DimensionText.Degrees(Angle.FromRadians(sweep)), Point2D.Origin, along, LinearDimension.Upright, tip + 1.5, lever.Sizes[LeverFields.HeadDepth].Millimetres / 2)
        {
            Reach = (tip + 2, tip + 24),
        };
        if (LeverMarkPlace.InSideView(lever) is { } mark)
            yield return new LinearDimension(LeverMarkPlace.Name, mark.Y, text.Size(Length.FromMillimetres(mark.Y)), Point2D.Origin, mark, LinearDimension.Upright);
        yield return new DetailLetter("detail.nose", LeverLetters.Nose, side.NoseCentre, LeverNoseDetail.CircleRadius(lever), lever.SideProfile);
        yield return new DetailLetter("detail.pad", LeverLetters.Pad, side.PadCentre, LeverPadDetail.CircleRadius(lever), lever.SideProfile);
        if (LeverTongueView.IsNeeded(lever))
            yield return LeverTongueView.Arrow(lever);
    }
}
