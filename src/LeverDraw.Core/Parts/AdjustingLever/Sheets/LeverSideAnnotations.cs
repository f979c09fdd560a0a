using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Geometry;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>What the side view says: everything seen along the pin, but for the nose, which has a detail of its own.</summary>
internal static class LeverSideAnnotations
{
    private const double Upright = Math.PI / 2;

    public static ImmutableArray<Annotation> Of(Lever lever, DimensionText text)
    {
        var all = ImmutableArray.CreateBuilder<Annotation>();
        all.AddRange(Arms(lever, text));
        all.AddRange(Pads(lever, text));
        all.AddRange(Head(lever, text));
        all.AddRange(Tongue(lever, text));
        return all.ToImmutable();
    }

    private static IEnumerable<Annotation> Arms(Lever lever, DimensionText text)
    {
        SideFeatures side = lever.Side;
        SizeValue length = lever.Sizes[LeverFields.ArmLength];
        yield return new LinearDimension(LeverFields.ArmLength.Name, length.Millimetres, text.Size(length), Point2D.Origin, side.PadCentre, Upright)
        {
            Sides = DimensionSides.Left,
        };
        if (Math.Abs(side.PadCentre.X) > Coincidence.Distance)
        {
            Length shift = Length.FromMillimetres(Math.Abs(side.PadCentre.X));
            yield return new LinearDimension("arms.pad_shift", shift.Millimetres, text.Reference(shift), Point2D.Origin, side.PadCentre, 0);
        }

        SizeValue thickness = lever.Sizes[LeverFields.ArmThickness];
        if (lever.Forms.Arms == LeverFields.Tapered)
        {
            SizeValue pad = lever.Sizes[LeverFields.PadThickness];
            Label label = new([text.Size(thickness).Lines[0] + " AT HEAD,", "STRAIGHT TO", text.Size(pad.Nominal).Lines[0] + " AT PAD"], text.Size(thickness).Decimals);
            yield return new LeaderNote(LeverFields.ArmThickness.Name, thickness.Millimetres, label, [side.ArmFaceRight.PointAt(0.45), side.ArmFaceRight.PointAt(0.7), side.ArmFaceLeft.PointAt(0.4)]);
            yield break;
        }

        Vector2D across = (side.ArmRight - side.ArmLeft).Unit();
        double free = lever.Forms.Arms == LeverFields.Stepped ? FreeLength(side) : 0;
        yield return new LinearDimension(LeverFields.ArmThickness.Name, thickness.Millimetres, text.Size(thickness), side.ArmLeft, side.ArmRight, across.Angle)
        {
            Slide = lever.Forms.Arms == LeverFields.Stepped ? (-free * 0.8, -free * 0.15) : (0, 0),
        };
        if (side.ArmMidline is ArcEdge midline)
        {
            SizeValue sagitta = lever.Sizes[LeverFields.ArmSagitta];
            Label label = new(["MID-LINE (R" + text.Number(Length.FromMillimetres(midline.Radius)) + "),", "TANGENT AT PADS,", "SAGITTA " + text.Size(sagitta).Lines[0]], text.Size(sagitta).Decimals);
            yield return new LeaderNote(LeverFields.ArmSagitta.Name, sagitta.Millimetres, label, [midline.PointAt(0.5), midline.PointAt(0.65)]) { OnFace = true };
        }
    }

    /// <summary>Length of the parallel arm below the level of the head.</summary>
    private static double FreeLength(SideFeatures side) => Math.Max(0, side.ArmRight.Y - side.PadTop);

    private static IEnumerable<Annotation> Pads(Lever lever, DimensionText text)
    {
        SideFeatures side = lever.Side;
        SizeValue thickness = lever.Sizes[LeverFields.PadThickness];
        yield return new LinearDimension(LeverFields.PadThickness.Name, thickness.Millimetres, text.Size(thickness, "2× "), side.CrownLeft, side.CrownRight, 0)
        {
            Sides = DimensionSides.Right,
            Slide = (0, 0),
        };
        SizeValue length = lever.Sizes[LeverFields.PadLength];
        Point2D top = new(side.PadCentre.X + Math.Abs(side.ArmFaceRight.Start.X - side.PadCentre.X), side.PadTop);
        yield return new LinearDimension(LeverFields.PadLength.Name, length.Millimetres, text.Size(length), new Point2D(top.X, side.PadBottom), top, Upright);
        SizeValue crown = lever.Sizes[LeverFields.CrownRadius];
        yield return new RadiusDimension(LeverFields.CrownRadius.Name, crown.Millimetres, text.Size(crown, "2× R"), [side.CrownArcRight, side.CrownArcLeft]);
        if (side.PadEnd is ArcEdge round)
        {
            yield return new RadiusDimension("pads.end_radius", round.Radius, text.Reference(Length.FromMillimetres(round.Radius), "R"), [round]);
        }
        else if (side.PadCorner is { } corner)
        {
            SizeValue radius = lever.Sizes[LeverFields.PadEndCorner];
            yield return new RadiusDimension(LeverFields.PadEndCorner.Name, radius.Millimetres, text.Size(radius, "2× R"), Arcs(corner, side.Find("pad-corner-left")));
        }

        if (side.StepFilletRight is { } step)
        {
            SizeValue fillet = lever.Sizes[LeverFields.Fillet];
            yield return new RadiusDimension(LeverFields.Fillet.Name, step.Radius, text.Size(fillet, "2× R"), Arcs(step, side.StepFilletLeft));
        }
    }

    private static IEnumerable<Annotation> Head(Lever lever, DimensionText text)
    {
        SideFeatures side = lever.Side;
        SizeValue depth = lever.Sizes[LeverFields.HeadDepth];
        if (lever.Forms.Head == LeverFields.Round)
        {
            ImmutableArray<ArcEdge> arcs = [.. side.Edges.Where(e => e.Name is "head-right" or "head-left").Select(e => e.Edge).OfType<ArcEdge>()];
            yield return new DiameterDimension(LeverFields.HeadDepth.Name, depth.Millimetres, text.Size(depth, "⌀"), Point2D.Origin, depth.Millimetres / 2) { Arcs = arcs };
        }
        else
        {
            double half = depth.Millimetres / 2;
            yield return new LinearDimension(LeverFields.HeadDepth.Name, depth.Millimetres, text.Size(depth), new Point2D(-half, 0), new Point2D(half, 0), 0);
            SizeValue corner = lever.Sizes[LeverFields.HeadCornerRadius];
            ImmutableArray<ArcEdge> corners = [.. side.Edges.Where(e => e.Name.StartsWith("head-", StringComparison.Ordinal) && !e.Name.Contains("fillet", StringComparison.Ordinal)).Select(e => e.Edge).OfType<ArcEdge>()];
            if (!corners.IsEmpty)
                yield return new RadiusDimension(LeverFields.HeadCornerRadius.Name, corner.Millimetres, text.Size(corner, "R"), corners);
        }

        SizeValue fillet = lever.Sizes[LeverFields.HeadFillet];
        yield return new RadiusDimension(LeverFields.HeadFillet.Name, fillet.Millimetres, text.Size(fillet, "4× R"), [side.HeadFilletArmRight, side.HeadFilletFlankLower, side.HeadFilletArmLeft, side.HeadFilletFlankUpper]);
    }

    private static IEnumerable<Annotation> Tongue(Lever lever, DimensionText text)
    {
        SideFeatures side = lever.Side;
        double along = (side.NoseCentre - Point2D.Origin).Angle;
        SizeValue length = lever.Sizes[LeverFields.TongueLength];
        yield return new LinearDimension(LeverFields.TongueLength.Name, length.Millimetres, text.Size(length), Point2D.Origin, side.NoseCentre, along);
        double tip = (side.NoseTip - Point2D.Origin).Length;
        double sweep = Upright - along;
        yield return new AngleDimension(LeverFields.Sweep.Name, sweep, DimensionText.Degrees(Angle.FromRadians(sweep)), Point2D.Origin, along, Upright, tip + 1.5, lever.Sizes[LeverFields.HeadDepth].Millimetres / 2)
        {
            Reach = (tip + 2, tip + 24),
        };
        yield return new DetailLetter("detail.nose", "B", side.NoseCentre, LeverNoseDetail.CircleRadius(lever));
    }

    private static ImmutableArray<ArcEdge> Arcs(params Edge?[] edges) => [.. edges.OfType<ArcEdge>()];
}
