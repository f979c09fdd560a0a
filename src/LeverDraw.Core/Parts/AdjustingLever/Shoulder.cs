using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>The right shoulder in the fork profile, travelling up from the arm's outer side to the head's side.</summary>
/// <param name="ArmCorner">Where it meets the arm's outer side, before that corner is rounded.</param>
/// <param name="HeadEnd">Where it ends: at the fillet, or on the head's side itself.</param>
/// <param name="FilletCentre">Of the fillet that takes it up the head's side; null when there is none.</param>
internal readonly record struct Shoulder(Edge Carrier, Point2D ArmCorner, Point2D HeadEnd, Point2D? FilletCentre)
{
    /// <remarks>The head's side is left at exactly the stated level: a straight shoulder is the line from the arm's corner that touches the fillet's circle, a concave one an arc tangent to the head's side.</remarks>
    public static Shoulder Of(LeverMeasures m)
    {
        double side = m.HeadWidth / 2, outer = m.Outside / 2, start = -m.ShoulderStart;
        if (m.ConcaveShoulder)
        {
            Point2D centre = new(side + m.ShoulderRadius, start);
            double reach = centre.X - outer;
            Point2D corner = new(outer, start - Math.Sqrt((m.ShoulderRadius * m.ShoulderRadius) - (reach * reach)));
            return new(Carriers.Circle(centre, m.ShoulderRadius, false), corner, new(side, start), null);
        }

        Point2D arm = new(outer, -(m.ShoulderEnd ?? (m.CrotchRadius - m.GapTop))), head = new(side, start);
        if (m.ShoulderFillet == 0)
            return new(Carriers.Line(arm, (head - arm).Unit()), arm, head, null);
        Point2D fillet = new(side + m.ShoulderFillet, start);
        Vector2D to = fillet - arm;
        double distance = to.Length, along = Math.Sqrt((distance * distance) - (m.ShoulderFillet * m.ShoulderFillet));
        // The tangent that passes the circle on its left, where the head is.
        Vector2D u = to * (1 / distance);
        Vector2D line = (u * (along / distance)) + (u.Left * (m.ShoulderFillet / distance));
        return new(Carriers.Line(arm, line), arm, arm + (line * along), fillet);
    }
}
