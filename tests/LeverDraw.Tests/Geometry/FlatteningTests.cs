using CsCheck;
using LeverDraw.Geometry;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Geometry;

public class FlatteningTests
{
    [Fact]
    public void Of_Line_IsItsEnds() =>
        Assert.Equal([Point2D.Origin, new Point2D(3, 4)], Flattening.Of(new LineEdge(Point2D.Origin, new Point2D(3, 4)), 0.1).ToArray());

    [Fact]
    public void Of_Arc_KeepsTheErrorAndWastesNoPoints() => Gen.Select(Gen.Double[0.5, 100], Gen.Double[0.01, 6.28], Gen.Double[-5, -1]).Sample(
        (r, sweep, exponent) =>
        {
            double error = Math.Pow(10, exponent);
            ArcEdge arc = new(new Point2D(1, 2), r, 0.3, sweep);
            System.Collections.Immutable.ImmutableArray<Point2D> points = Flattening.Of(arc, error);
            for (int i = 1; i < points.Length; i++)
                Assert.True(r - Point2D.Lerp(points[i - 1], points[i], 0.5).DistanceTo(arc.Centre) <= error + 1e-12);
            // One piece fewer would break the promise, unless the quarter-turn rule asked for it.
            int pieces = points.Length - 1;
            if (pieces > 1 && sweep / (pieces - 1) < Math.PI / 2)
                Assert.True(r * (1 - Math.Cos(sweep / (pieces - 1) / 2)) > error * (1 - 1e-9));
        },
        iter: 1000);

    [Fact]
    public void Of_Circle_HasAtLeastFourPoints() => Assert.Equal(4, Flattening.Of(Contour.Circle(Point2D.Origin, 1), 50).Length);

    [Fact]
    public void Of_ErrorNotPositive_Throws() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Flattening.Of(Contour.Circle(Point2D.Origin, 1), 0));

    // Error per chord, two thirds of it over the chord's length, so area differs by less than error × length.
    [Fact]
    public void Of_Contour_AreaDiffersByLessThanErrorTimesLength() => ContourGen.Any.Sample(
        c => Assert.Equal(ContourMeasure.Area(c), FlatCopy.Of(c, 0.01).Area, 0.01 * ContourMeasure.Length(c)),
        iter: 200);
}
