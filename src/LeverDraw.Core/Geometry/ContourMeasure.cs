namespace LeverDraw.Geometry;

/// <summary>Second moments of area, mm⁴: Ixx = ∫y² dA, Iyy = ∫x² dA, Ixy = ∫xy dA.</summary>
public readonly record struct SecondMoments(double Ixx, double Iyy, double Ixy);

/// <summary>Exact measures of outlines: chords' polygon by Green's theorem plus each arc's segment in closed form.</summary>
public static class ContourMeasure
{
    /// <summary>mm², positive when counter-clockwise.</summary>
    public static double Area(Contour contour) => Moments(contour, contour.Edges[0].Start).Area;

    public static double Length(Contour contour)
    {
        double sum = 0;
        foreach (Edge edge in contour.Edges)
            sum += edge.Length;
        return sum;
    }

    /// <summary>The area's centre, the same for either direction of travel.</summary>
    /// <exception cref="ArgumentException">The contour encloses no area, so it has no centre of area.</exception>
    public static Point2D Centroid(Contour contour)
    {
        Point2D about = contour.Edges[0].Start;
        AreaMoments m = Moments(contour, about);
        if (Math.Abs(m.Area) <= Coincidence.Distance * Length(contour))
            throw new ArgumentException("The contour encloses no area.", nameof(contour));
        return about + new Vector2D(m.Sx / m.Area, m.Sy / m.Area);
    }

    /// <summary>About axes through <paramref name="about"/> parallel to x and y; negative when the contour is clockwise, so that holes subtract.</summary>
    public static SecondMoments SecondMoments(Contour contour, Point2D about)
    {
        AreaMoments m = Moments(contour, about);
        return new SecondMoments(m.Ixx, m.Iyy, m.Ixy);
    }

    /// <summary>Everything at once; add those of an outline and its clockwise holes to get a region's.</summary>
    public static AreaMoments Moments(Contour contour, Point2D about)
    {
        AreaMoments sum = default;
        foreach (Edge edge in contour.Edges)
        {
            sum += AreaMoments.Triangle(edge.Start - about, edge.End - about);
            if (edge is ArcEdge arc)
                sum += AreaMoments.Segment(arc, about);
        }

        return sum;
    }

    public static Box2D Box(Contour contour) => contour.Box;
}
