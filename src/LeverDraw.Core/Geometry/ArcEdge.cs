namespace LeverDraw.Geometry;

/// <summary>A circular piece: centre, radius, the angle where it starts, and how far it turns (positive counter-clockwise, at most one whole turn).</summary>
/// <remarks>A start and a signed sweep leave no doubt about direction or about which of two arcs is meant.</remarks>
public sealed record ArcEdge(Point2D Centre, double Radius, double StartAngle, double Sweep) : Edge
{
    public double EndAngle => StartAngle + Sweep;

    public bool IsFullCircle => Math.Abs(Sweep) >= (2 * Math.PI) - Coincidence.Angle;

    public override Point2D Start => PointAtAngle(StartAngle);

    public override Point2D End => IsFullCircle ? Start : PointAtAngle(EndAngle);

    public override double Length => Radius * Math.Abs(Sweep);

    public override Box2D Box
    {
        get
        {
            Box2D box = Box2D.Empty.Including(Start).Including(End);
            for (int quarter = 0; quarter < 4; quarter++)
            {
                double angle = quarter * Math.PI / 2;
                if (!ContainsAngle(angle))
                    continue;
                box = box.Including(quarter switch
                {
                    0 => new Point2D(Centre.X + Radius, Centre.Y),
                    1 => new Point2D(Centre.X, Centre.Y + Radius),
                    2 => new Point2D(Centre.X - Radius, Centre.Y),
                    _ => new Point2D(Centre.X, Centre.Y - Radius),
                });
            }

            return box;
        }
    }

    public static ArcEdge FullCircle(Point2D centre, double radius) => new(centre, radius, 0, 2 * Math.PI);

    /// <summary>The arc about <paramref name="centre"/> from one point to another, the way named. The radius is that of <paramref name="start"/>.</summary>
    public static ArcEdge Between(Point2D centre, Point2D start, Point2D end, bool counterClockwise)
    {
        double from = (start - centre).Angle;
        double sweep = (end - centre).Angle - from;
        if (counterClockwise && sweep < 0)
            sweep += 2 * Math.PI;
        else if (!counterClockwise && sweep > 0)
            sweep -= 2 * Math.PI;
        return new ArcEdge(centre, centre.DistanceTo(start), from, sweep);
    }

    public Point2D PointAtAngle(double angle) => Centre + (Vector2D.FromAngle(angle) * Radius);

    /// <summary>The parameter (0…1 inside) of a direction seen from the centre; the nearest turn is chosen.</summary>
    public double ParameterOfAngle(double angle)
    {
        double turned = (angle - StartAngle) * Math.Sign(Sweep);
        double whole = 2 * Math.PI;
        turned -= whole * Math.Floor(turned / whole);
        double inside = Math.Abs(Sweep);
        // Just before the start reads as slightly negative, not as nearly a whole turn.
        if (turned > inside && whole - turned < turned - inside)
            turned -= whole;
        return turned / inside;
    }

    /// <summary>True when the direction seen from the centre meets the arc, ends included (within <see cref="Coincidence.Angle"/>).</summary>
    public bool ContainsAngle(double angle)
    {
        double slack = Coincidence.Angle / Math.Max(Math.Abs(Sweep), Coincidence.Angle);
        double t = ParameterOfAngle(angle);
        return t >= -slack && t <= 1 + slack;
    }

    public override Point2D PointAt(double t) => PointAtAngle(StartAngle + (Sweep * t));

    public override Vector2D TangentAt(double t)
    {
        Vector2D outward = Vector2D.FromAngle(StartAngle + (Sweep * t));
        return Sweep >= 0 ? outward.Left : -outward.Left;
    }

    public override ArcEdge Reversed() => new(Centre, Radius, EndAngle, -Sweep);

    public override ArcEdge Transformed(Transform2D transform) =>
        new(
            transform.Apply(Centre),
            Radius * transform.Scale,
            transform.ApplyToDirection(StartAngle),
            transform.Mirrored ? -Sweep : Sweep);

    public override ArcEdge Trimmed(double from, double to) => new(Centre, Radius, StartAngle + (Sweep * from), Sweep * (to - from));
}
