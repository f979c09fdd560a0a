namespace LeverDraw.Geometry;

/// <summary>Area and its first and second moments about a point: mm², mm³, mm⁴. Negative for a clockwise contour, so that a hole's may be added.</summary>
/// <param name="Sx">∫x dA.</param>
/// <param name="Sy">∫y dA.</param>
/// <param name="Ixx">∫y² dA, the moment about the x axis.</param>
/// <param name="Iyy">∫x² dA, the moment about the y axis.</param>
/// <param name="Ixy">∫xy dA.</param>
public readonly record struct AreaMoments(double Area, double Sx, double Sy, double Ixx, double Iyy, double Ixy)
{
    public static AreaMoments operator +(AreaMoments a, AreaMoments b) =>
        new(a.Area + b.Area, a.Sx + b.Sx, a.Sy + b.Sy, a.Ixx + b.Ixx, a.Iyy + b.Iyy, a.Ixy + b.Ixy);

    public static AreaMoments operator -(AreaMoments a) => new(-a.Area, -a.Sx, -a.Sy, -a.Ixx, -a.Iyy, -a.Ixy);

    /// <summary>The same area seen from a point that lies at −<paramref name="by"/> from the present one, so that every x grows by <c>by.X</c>.</summary>
    public AreaMoments Shifted(Vector2D by) =>
        new(
            Area,
            Sx + (Area * by.X),
            Sy + (Area * by.Y),
            Ixx + (2 * by.Y * Sy) + (Area * by.Y * by.Y),
            Iyy + (2 * by.X * Sx) + (Area * by.X * by.X),
            Ixy + (by.X * Sy) + (by.Y * Sx) + (Area * by.X * by.Y));

    /// <summary>The triangle from the origin to two points, by the polygon formulas of reference table 12d (Green's theorem).</summary>
    internal static AreaMoments Triangle(Vector2D p, Vector2D q)
    {
        double c = p.Cross(q);
        return new(
            c / 2,
            (p.X + q.X) * c / 6,
            (p.Y + q.Y) * c / 6,
            ((p.Y * p.Y) + (p.Y * q.Y) + (q.Y * q.Y)) * c / 12,
            ((p.X * p.X) + (p.X * q.X) + (q.X * q.X)) * c / 12,
            ((p.X * q.Y) + (2 * p.X * p.Y) + (2 * q.X * q.Y) + (q.X * p.Y)) * c / 24);
    }

    /// <summary>The piece between an arc and its chord, positive when the arc turns counter-clockwise, about <paramref name="about"/>.</summary>
    internal static AreaMoments Segment(ArcEdge arc, Point2D about)
    {
        ArcSegmentMoments unit = ArcSegmentMoments.Of(Math.Abs(arc.Sweep) / 2);
        double r = arc.Radius, r2 = r * r, sign = Math.Sign(arc.Sweep);
        Vector2D e = Vector2D.FromAngle(arc.StartAngle + (arc.Sweep / 2));
        Vector2D t = e.Left;
        double first = sign * unit.Height * r2 * r;
        double along = sign * unit.Along * r2 * r2, across = sign * unit.Across * r2 * r2;
        AreaMoments local = new(
            sign * unit.Area * r2,
            first * e.X,
            first * e.Y,
            (along * t.Y * t.Y) + (across * e.Y * e.Y),
            (along * t.X * t.X) + (across * e.X * e.X),
            (along * t.X * t.Y) + (across * e.X * e.Y));
        // The chord's middle from its ends, not from the centre: a far centre would cost digits.
        return local.Shifted(Point2D.Lerp(arc.Start, arc.End, 0.5) - about);
    }
}
