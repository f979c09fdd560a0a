using LeverDraw.Geometry;

namespace LeverDraw.Tests.Geometry;

/// <summary>Check values: reference table 12e (closed formulas, derived and verified by quadrature), ten digits.</summary>
public class ContourMeasureTests
{
    private const double TenDigits = 3e-10;

    [Theory]
    [InlineData(1, Math.PI / 6, 0.09058607371, 0.9199353711, 0.004604322514, 0.07677310616)]
    [InlineData(1, Math.PI / 3, 0.6141848493, 0.7050201619, 0.09941962459, 0.3159259755)]
    [InlineData(1, Math.PI / 2, 1.570796327, 0.4244131816, 0.3926990817, 0.3926990817)]
    [InlineData(1, 2.0, 2.378401248, 0.2107373445, 0.6467453794, 0.4381651096)]
    [InlineData(12.5, Math.PI / 4, 44.59346303, 10.32339599, 724.6795455, 4793.689962)]
    [InlineData(5, Math.PI / 2, 39.26990817, 2.122065908, 245.4369261, 245.4369261)]
    public void Moments_CircleSegment_MatchReference(double radius, double q, double area, double centroid, double aboutAxis, double aboutDiameter)
    {
        // The axis of symmetry is +x, so the segment hugs the circle's right side.
        ArcEdge arc = new(Point2D.Origin, radius, -q, 2 * q);
        Contour segment = Contour.Of([arc, new LineEdge(arc.End, arc.Start)]);
        Relative(area, ContourMeasure.Area(segment));
        Relative(centroid, ContourMeasure.Centroid(segment).X);
        Assert.Equal(0, ContourMeasure.Centroid(segment).Y, 1e-12);
        SecondMoments second = ContourMeasure.SecondMoments(segment, Point2D.Origin);
        Relative(aboutAxis, second.Ixx);
        Relative(aboutDiameter, second.Iyy);
    }

    [Fact]
    public void Moments_Stadium_MatchReference()
    {
        Contour slot = Contour.Of([
            new LineEdge(new Point2D(-10, -5), new Point2D(10, -5)),
            new ArcEdge(new Point2D(10, 0), 5, -Math.PI / 2, Math.PI),
            new LineEdge(new Point2D(10, 5), new Point2D(-10, 5)),
            new ArcEdge(new Point2D(-10, 0), 5, Math.PI / 2, Math.PI),
        ]);
        Relative(278.5398163, ContourMeasure.Area(slot));
        SecondMoments second = ContourMeasure.SecondMoments(slot, Point2D.Origin);
        Relative(2157.540519, second.Ixx);
        Relative(18344.85549, second.Iyy);
        Assert.Equal(0, second.Ixy, 1e-9);
        Assert.Equal(40 + (10 * Math.PI), ContourMeasure.Length(slot), 1e-12);
        Assert.Equal(new Box2D(-15, -5, 15, 5), ContourMeasure.Box(slot));
    }

    [Fact]
    public void Moments_QuarterSpandrel_MatchReference()
    {
        // Tangent faces on the axes, the arc concave (clockwise) about (5, 5).
        Contour spandrel = Contour.Of([
            new LineEdge(new Point2D(0, 0), new Point2D(5, 0)),
            new ArcEdge(new Point2D(5, 5), 5, -Math.PI / 2, -Math.PI / 2),
            new LineEdge(new Point2D(0, 5), new Point2D(0, 0)),
        ]);
        Relative(5.365045915, ContourMeasure.Area(spandrel));
        Relative(1.116839695, ContourMeasure.Centroid(spandrel).X);
        Relative(1.116839695, ContourMeasure.Centroid(spandrel).Y);
    }

    [Fact]
    public void Moments_RightTriangle_MatchReference()
    {
        Point2D a = new(0, 0), b = new(4, 0), c = new(4, 3);
        Contour triangle = Contour.Of([new LineEdge(a, b), new LineEdge(b, c), new LineEdge(c, a)]);
        Relative(6, ContourMeasure.Area(triangle));
        Relative(2.666666667, ContourMeasure.Centroid(triangle).X);
        SecondMoments second = ContourMeasure.SecondMoments(triangle, a);
        Relative(9, second.Ixx);
        Relative(48, second.Iyy);
    }

    // Closed formulas of a disc: πr², πr⁴/4 about a diameter.
    [Fact]
    public void Moments_FarAwayCircle_MatchDisc()
    {
        Contour disc = Contour.Circle(new Point2D(300, -200), 2);
        Relative(4 * Math.PI, ContourMeasure.Area(disc));
        Assert.True(ContourMeasure.Centroid(disc).DistanceTo(new Point2D(300, -200)) < 1e-10);
        Relative(4 * Math.PI, ContourMeasure.SecondMoments(disc, new Point2D(300, -200)).Ixx);
    }

    // A crown of sagitta s on a chord 2a is a parabola to first order: area 4as/3, centroid 2s/5 above the chord.
    // Exact ratio for the circle, by series in s/a: area 4as/3·(1 + (s/a)²/5 …), here (s/a)² = 2.5e-11.
    [Fact]
    public void Moments_VeryFlatArc_KeepTheirDigits()
    {
        double a = 2, s = 1e-5, radius = ((a * a) + (s * s)) / (2 * s), q = Math.Asin(a / radius);
        ArcEdge arc = new(new Point2D(0, s - radius), radius, (Math.PI / 2) - q, 2 * q);
        Contour sliver = Contour.Of([arc, new LineEdge(arc.End, arc.Start)]);
        Assert.Equal(1, ContourMeasure.Area(sliver) / (4 * a * s / 3), 1e-9);
        Assert.Equal(2 * s / 5, ContourMeasure.Centroid(sliver).Y, 1e-10);
    }

    [Theory]
    [InlineData(0.6)]
    [InlineData(0.8)]
    [InlineData(1.0)]
    public void SegmentMoments_SeriesAndClosedForm_Agree(double q)
    {
        ArcSegmentMoments series = ArcSegmentMoments.Series(q), closed = ArcSegmentMoments.Closed(q);
        Assert.Equal(closed.Area, series.Area, 1e-14);
        Assert.Equal(closed.Height, series.Height, 1e-14);
        Assert.Equal(closed.Along, series.Along, 1e-14);
        Assert.Equal(closed.Across, series.Across, 1e-14);
    }

    [Fact]
    public void Centroid_NoArea_Throws()
    {
        LineEdge there = new(Point2D.Origin, new Point2D(1, 0));
        Assert.Throws<ArgumentException>(() => ContourMeasure.Centroid(Contour.Of([there, there.Reversed()])));
    }

    private static void Relative(double expected, double actual) => Assert.Equal(1, actual / expected, TenDigits);
}
