using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>Where an arm's face ends at the top of a pad, on one side: the face, perhaps a flat shoulder, the fillet, the crown.</summary>
/// <param name="FaceEnd">Last point of the face.</param>
/// <param name="Shoulder">Where the flat shoulder meets the fillet; equal to <paramref name="FaceEnd"/> when the arc runs out into the face.</param>
/// <param name="CrownStart">Where the fillet touches the crown.</param>
internal readonly record struct PadSide(Point2D FaceEnd, Point2D Shoulder, Point2D FilletCentre, Point2D CrownStart)
{
    /// <summary>Both sides of a pad, of one kind wherever they can be: where one is filled and the other stepped, nobody can tell why.</summary>
    /// <returns>Null for a side whose face lies inside the fillet, so that there is no step.</returns>
    public static (PadSide? Right, PadSide? Left) Both(LeverMeasures m, Point2D rightCrownCentre, Point2D leftCrownCentre, ArmFaces arms)
    {
        PadSide? right = Step(m, 1, rightCrownCentre, arms.Right, arms.RightCorner), left = Step(m, -1, leftCrownCentre, arms.Left, arms.LeftCorner);
        bool rightIsDeep = IsDeep(right, arms.RightCorner, 1), leftIsDeep = IsDeep(left, arms.LeftCorner, -1);
        if (rightIsDeep && leftIsDeep)
            return (right, left);
        if (RunOn(m, 1, rightCrownCentre, arms.Right, arms.RightCorner) is { } onRight && RunOn(m, -1, leftCrownCentre, arms.Left, arms.LeftCorner) is { } onLeft)
            return (onRight, onLeft);
        if (right is not null && left is not null)
            return (right, left);
        return (rightIsDeep ? right : Filled(m, 1, rightCrownCentre, arms.Right, arms.RightCorner, right), leftIsDeep ? left : Filled(m, -1, leftCrownCentre, arms.Left, arms.LeftCorner, left));

        bool IsDeep(PadSide? step, Point2D corner, int side) => m.PadStock <= Coincidence.Distance || (step is { } s && s.DepthBelow(corner, side, m) >= m.PadStock);
    }

    /// <summary>How far the step goes in behind the arm's face.</summary>
    private double DepthBelow(Point2D corner, int side, LeverMeasures m) => (side * (corner.X - FilletCentre.X)) + m.StepFillet;

    /// <summary>With stock the pad may stand proud of the arm, or leave a step too shallow to mould: then crown and face run on to each other, by way of the same fillet.</summary>
    /// <param name="side">+1 for the +n face, −1 for the other.</param>
    /// <param name="corner">Where the face reaches the shoulder's level.</param>
    private static PadSide? Filled(LeverMeasures m, int side, Point2D crownCentre, Edge face, Point2D corner, PadSide? step)
    {
        if (RunOn(m, side, crownCentre, face, corner) is { } joined)
            return joined;
        if (step is not null)
            return step;
        double level = -m.ArmLength + (m.PadLength / 2 * m.CrownRadius / (m.CrownRadius - m.PadStock));
        // A flat crown would run on far up the arm: it ends where the finished pad needs it, and a wider fillet takes it to the face.
        double rise = level + m.ArmLength;
        Point2D end = new(crownCentre.X + (side * Math.Sqrt((m.CrownRadius * m.CrownRadius) - (rise * rise))), level);
        double radius = Math.Max(m.StepFillet, 2 * side * (end.X - corner.X));
        return radius > 0 && Carriers.Beside(face, -radius) is { } beside
            && Carriers.Meet(beside, Carriers.Circle(end, radius, true), new(end.X + (side * radius), end.Y + radius)) is { } centre
            ? new PadSide(Carriers.Foot(face, centre), Carriers.Foot(face, centre), centre, end)
            : null;
    }

    /// <summary>Crown and face joined, not too far up the arm.</summary>
    private static PadSide? RunOn(LeverMeasures m, int side, Point2D crownCentre, Edge face, Point2D corner) =>
        Joined(m, side, Carriers.Circle(crownCentre, m.CrownRadius, true), face, corner) is { } joined && joined.FaceEnd.Y - m.PadTop <= m.PadLength / 2 ? joined : null;

    private static PadSide? Joined(LeverMeasures m, int side, Edge crown, Edge face, Point2D corner)
    {
        (Edge first, Edge second) = side > 0 ? (crown, face) : (face, crown);
        if (m.StepFillet == 0)
            return Carriers.Meet(crown, face, corner) is { } meet ? new PadSide(meet, meet, meet, meet) : null;
        return Blend.Between(first, second, m.StepFillet, true, corner) is not { } blend ? null
            : side > 0 ? new PadSide(blend.To, blend.To, blend.Centre, blend.From)
            : new PadSide(blend.From, blend.From, blend.Centre, blend.To);
    }

    private static PadSide? Step(LeverMeasures m, int side, Point2D crownCentre, Edge face, Point2D corner)
    {
        double half = m.PadLength / 2;
        if (m.StepFillet == 0)
        {
            Point2D crown = new(crownCentre.X + (side * Math.Sqrt((m.CrownRadius * m.CrownRadius) - (half * half))), m.PadTop);
            return side * (corner.X - crown.X) < -Coincidence.Distance ? null : new PadSide(corner, crown, crown, crown);
        }

        // The circle of the fillet touches the crown from outside and the shoulder from below.
        double reach = m.CrownRadius + m.StepFillet, rise = half - m.StepFillet;
        Point2D centre = new(crownCentre.X + (side * Math.Sqrt((reach * reach) - (rise * rise))), m.PadTop - m.StepFillet);
        Point2D touch = crownCentre + ((centre - crownCentre) * (m.CrownRadius / reach));
        Point2D top = new(centre.X, m.PadTop);
        if (side * (corner.X - centre.X) >= 0)
            return new PadSide(corner, top, centre, touch);

        Point2D? end = Carriers.Meet(face, Carriers.Circle(centre, m.StepFillet, true), corner);
        return end is { } e && e.Y >= touch.Y && side * (e.X - touch.X) >= -Coincidence.Distance
            ? new PadSide(e, e, centre, touch)
            : null;
    }
}
