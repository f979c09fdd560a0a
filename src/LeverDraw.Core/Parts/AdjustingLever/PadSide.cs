using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>Where an arm's face ends at the top of a pad, on one side: the face, perhaps a flat shoulder, the fillet, the crown.</summary>
/// <param name="FaceEnd">Last point of the face.</param>
/// <param name="Shoulder">Where the flat shoulder meets the fillet; equal to <paramref name="FaceEnd"/> when the arc runs out into the face.</param>
/// <param name="CrownStart">Where the fillet touches the crown.</param>
internal readonly record struct PadSide(Point2D FaceEnd, Point2D Shoulder, Point2D FilletCentre, Point2D CrownStart)
{
    /// <param name="side">+1 for the +n face, −1 for the other.</param>
    /// <param name="corner">Where the face reaches the shoulder's level.</param>
    /// <returns>Null when the face lies inside the fillet, so that there is no step.</returns>
    public static PadSide? Of(LeverMeasures m, int side, Point2D crownCentre, Edge face, Point2D corner)
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
