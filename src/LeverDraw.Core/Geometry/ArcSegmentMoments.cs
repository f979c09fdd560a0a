namespace LeverDraw.Geometry;

/// <summary>The piece of a disc of radius one between an arc of half angle q and its chord, in axes along the chord (x, from its middle) and square to it (y, toward the arc).</summary>
/// <param name="Area">q − sin q cos q.</param>
/// <param name="Height">∫y dA.</param>
/// <param name="Along">∫x² dA.</param>
/// <param name="Across">∫y² dA.</param>
/// <remarks>The closed forms follow from Green's theorem (reference table 12d: segment area, centroid and both second moments, moved from the centre to the chord).
/// They cancel almost wholly for flat arcs, so there the same functions are summed as power series, whose vanishing first terms are left out.</remarks>
internal readonly record struct ArcSegmentMoments(double Area, double Height, double Along, double Across)
{
    // Where series and closed form agree to the last digits or so; both lose some there.
    private const double SeriesBelow = 0.8;

    /// <param name="q">Half the included angle, 0 to π.</param>
    public static ArcSegmentMoments Of(double q) => q < SeriesBelow ? Series(q) : Closed(q);

    internal static ArcSegmentMoments Closed(double q)
    {
        (double s1, double c1) = Math.SinCos(q);
        (double s2, double c2) = Math.SinCos(2 * q);
        double s3 = Math.Sin(3 * q), s4 = Math.Sin(4 * q);
        return new(
            q - (s2 / 2),
            (0.75 * s1) + (s3 / 12) - (q * c1),
            (q / 4) - (s2 / 6) + (s4 / 48),
            (0.75 * q) + (q * c2 / 2) - (7 * s2 / 12) - (s4 / 48));
    }

    internal static ArcSegmentMoments Series(double q)
    {
        double area = 0, height = 0, along = 0, across = 0;
        double term = q, sign = -1, two = 2, three = 3, four = 4;
        for (int k = 1; k <= 18; k++, sign = -sign)
        {
            int n = (2 * k) + 1;
            term *= q * q / (n * (n - 1.0));
            (two, three, four) = (two * 4, three * 9, four * 16);
            area -= sign * term * two / 2;
            if (k == 1)
                continue;
            height += sign * term * (0.75 + (three / 12) - n);
            along += sign * term * ((four / 48) - (two / 6));
            if (k > 2)
                across += sign * term * ((n * two / 4) - (7 * two / 12) - (four / 48));
        }

        return new(area, height, along, across);
    }
}
