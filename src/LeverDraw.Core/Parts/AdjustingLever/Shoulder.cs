using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>The right shoulder in the fork profile, travelling up from the arm's outer side to the head's side.</summary>
/// <param name="ArmCorner">Where it meets the arm's outer side, before that corner is rounded.</param>
/// <param name="HeadEnd">Where it ends: at the fillet, or on the head's side itself.</param>
/// <param name="FilletCentre">Of the fillet that takes it up the head's side; null when there is none.</param>
internal readonly record struct Shoulder(Edge Carrier, Point2D ArmCorner, Point2D HeadEnd, Point2D? FilletCentre)
{
    /// <remarks>The head's side is left at exactly the stated level: a straight shoulder is the line from the arm's corner that touches the fillet's circle, a concave one an arc tangent to the head's side.
    /// Stock on the head's side leaves the shoulder where it is and joins it by the same fillet, lower down.</remarks>
    public static Shoulder Of(LeverMeasures m)
    {
        double stock = (m.HeadWidth / 2) - m.ShoulderSide;
        Shoulder laid = AsLaidOut(m);
        return stock > Coincidence.Distance ? laid.Outward(stock, m) : laid;
    }

    private static Shoulder AsLaidOut(LeverMeasures m)
    {
        double side = m.ShoulderSide, outer = m.Outside / 2, start = -m.ShoulderStart;
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

    private Shoulder Outward(double stock, LeverMeasures m)
    {
        double side = m.ShoulderSide + stock, r = m.ShoulderFillet;
        Edge headSide = Carriers.Line(new(side, 0), new(0, 1));
        Point2D near = new(side, -m.ShoulderStart - stock);
        if (r > 0 && Blend.Between(Carrier, headSide, r, true, Below(near)) is { } blend)
            return this with { HeadEnd = blend.From, FilletCentre = blend.Centre };
        return Carriers.Meet(Carrier, headSide, Below(near)) is { } corner ? this with { HeadEnd = corner, FilletCentre = null } : this;
    }

    // Of the two places where a concave shoulder's circle meets the head's side, the lower one.
    private Point2D Below(Point2D near) => Carrier is ArcEdge arc ? new(near.X, near.Y - arc.Radius) : near;
}
