using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>A pad enlarged: the sizes that meet the nut's groove, where they can be read. There are two pads, so a pair of arcs counts four times.</summary>
internal static class LeverPadDetail
{
    public static double CircleRadius(Lever lever)
    {
        SideFeatures side = lever.Side;
        double half = Math.Max(side.CrownRight.X - side.PadCentre.X, Math.Abs(side.ArmFaceRight.Start.X - side.PadCentre.X));
        return 1.15 * new Vector2D(half, side.PadTop - side.PadCentre.Y).Length;
    }

    /// <summary>The thin circle round the pad in the side view.</summary>
    public static ViewEdge Mark(Lever lever) => Around(lever).Circle;

    public static ViewSource Of(Lever lever, DimensionText text)
    {
        SideFeatures side = lever.Side;
        CircledDetail around = Around(lever);
        IEnumerable<ViewEdge> extra =
        [
            .. LeverStepLedge.Of(lever),
            new(LineRole.Centre, new LineEdge(side.PadCentre with { Y = side.PadBottom }, side.PadCentre + new Vector2D(0, around.Reach))),
            new(LineRole.Centre, new LineEdge(side.CrownLeft, side.CrownRight)),
            .. CrownCentres(side, around.Reach),
        ];
        return around.View("pad", LeverLetters.Pad, side, extra, Annotations(lever, text));
    }

    private static CircledDetail Around(Lever lever) => new(lever.Side.PadCentre, CircleRadius(lever));

    /// <summary>Small crosses, level with the pad's middle: only well inside the detail's circle, beyond which they would say nothing.</summary>
    private static IEnumerable<ViewEdge> CrownCentres(SideFeatures side, double reach)
    {
        const double Cross = 0.2;
        foreach (Point2D centre in (Point2D[])[side.CrownArcRight.Centre, side.CrownArcLeft.Centre])
        {
            double away = (centre - side.PadCentre).Length;
            if (away > reach - (2 * Cross) || away < 1.5 * Cross)
                continue;
            foreach (LineEdge line in CentreMark.Cross(centre, Cross))
                yield return new ViewEdge(LineRole.Centre, line);
        }
    }

    private static IEnumerable<Annotation> Annotations(Lever lever, DimensionText text)
    {
        SideFeatures side = lever.Side;
        SizeValue thickness = lever.Sizes[LeverFields.PadThickness];
        yield return new LinearDimension(LeverFields.PadThickness.Name, thickness.Millimetres, text.Size(thickness, "2× "), side.CrownLeft, side.CrownRight, 0) { Sides = DimensionSides.Right };
        SizeValue length = lever.Sizes[LeverFields.PadLength];
        double edge = Math.Abs(side.ArmFaceRight.Start.X - side.PadCentre.X);
        yield return new LinearDimension(LeverFields.PadLength.Name, length.Millimetres, text.Size(length), AtEdge(edge).First, AtEdge(edge).Second, LinearDimension.Upright) { AtOtherEdge = AtEdge(-edge) };
        if (lever.Forms.Arms == LeverFields.Tapered)
        {
            // The arm comes down to the finished pad's greatest thickness, which stands there already; a casting's pad is thicker by its stock.
            LineEdge face = (LineEdge)side.ArmFaceRight;
            double half = face.From.X + ((face.To.X - face.From.X) * (side.PadTop - face.From.Y) / (face.To.Y - face.From.Y));
            Length there = Length.FromMillimetres(2 * half);
            if (Math.Abs(there.Millimetres - thickness.Millimetres) > Coincidence.Distance)
                yield return new LinearDimension("arms.thickness_at_pad", there.Millimetres, text.Reference(there), new Point2D(-half, side.PadTop), new Point2D(half, side.PadTop), 0) { Sides = DimensionSides.Left, Slide = (0, 0) };
        }

        (Point2D First, Point2D Second) AtEdge(double away) => (new(side.PadCentre.X + away, side.PadBottom), new(side.PadCentre.X + away, side.PadTop));
        SizeValue crown = lever.Sizes[LeverFields.CrownRadius];
        yield return new RadiusDimension(LeverFields.CrownRadius.Name, crown.Millimetres, text.Size(crown, "4× R"), ClearArcs.Of(side.CrownArcRight, side.CrownArcLeft)) { MaterialAtCentre = true, OnlyFromOutside = true };
        if (side.PadEnd is ArcEdge round)
        {
            yield return new RadiusDimension("pads.end_radius", round.Radius, text.Reference(Length.FromMillimetres(round.Radius), "2× R"), ClearArcs.Of(round)) { MaterialAtCentre = true };
        }
        else if (side.PadCorner is { } corner && lever.Sizes.Find(LeverFields.PadEndCorner) is { } radius)
        {
            // A casting whose stock leaves no full round has square ends with the general outer corners, which a note says.
            yield return new RadiusDimension(LeverFields.PadEndCorner.Name, radius.Millimetres, text.Size(radius, "4× R"), ClearArcs.Of(corner, side.Find("pad-corner-left"))) { MaterialAtCentre = true };
        }

        if (side.StepFilletRight is { } step)
        {
            SizeValue fillet = lever.Sizes[LeverFields.Fillet];
            // On a casting a wider one may take a flat crown to the arm, on a curved arm another on either side.
            bool alike = side.StepFilletLeft is not { } other || Math.Abs(other.Radius - step.Radius) <= Coincidence.Distance;
            yield return Step(step, alike ? side.StepFilletLeft : null, fillet, text);
            if (!alike)
                yield return Step(side.StepFilletLeft!, null, fillet, text);
        }
    }

    private static RadiusDimension Step(ArcEdge arc, ArcEdge? twin, SizeValue fillet, DimensionText text)
    {
        string sign = twin is null ? "2× R" : "4× R";
        SizeValue size = Math.Abs(arc.Radius - fillet.Millimetres) <= Coincidence.Distance ? fillet : new SizeValue(Length.FromMillimetres(arc.Radius));
        return new RadiusDimension(LeverFields.Fillet.Name, arc.Radius, text.Size(size, sign), twin is null ? ClearArcs.Of(arc) : ClearArcs.Of(arc, twin)) { MaterialAtCentre = false };
    }
}
