using CsCheck;
using LeverDraw.Geometry;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Geometry;

public sealed class InscribedCircleTests
{
    // Inradius of a right triangle: (a + b − c) / 2, Euclid's Elements IV.4 worked for 3-4-5: 1, at (1, 1).
    [Fact]
    public void Largest_RightTriangle_TouchesAllSides()
    {
        InscribedCircle found = InscribedCircle.Largest(Polygon(new(0, 0), new(4, 0), new(0, 3)));
        Assert.Equal(1, found.Radius, InscribedCircle.Error);
        Assert.Equal(0, found.Centre.DistanceTo(new Point2D(1, 1)), 0.01);
    }

    [Fact]
    public void Largest_Oblong_IsHalfItsLesserSide() =>
        Assert.Equal(2, InscribedCircle.Largest(Polygon(new(0, 0), new(10, 0), new(10, 4), new(0, 4))).Radius, InscribedCircle.Error);

    [Fact]
    public void Largest_Circle_IsItself() =>
        Assert.Equal(4.5, InscribedCircle.Largest(Contour.Circle(new Point2D(3, -2), 4.5)).Radius, InscribedCircle.Error);

    // An L of arms 4 wide with a sharp inner corner: the circle touches the two outer sides and the corner, so r·√2 + r = 4·√2 (from the outer corner along the bisector).
    [Fact]
    public void Largest_Bend_IsLargerThanItsArms()
    {
        InscribedCircle found = InscribedCircle.Largest(Polygon(new(0, 0), new(20, 0), new(20, 4), new(4, 4), new(4, 20), new(0, 20)));
        Assert.Equal(4 * Math.Sqrt(2) / (1 + Math.Sqrt(2)), found.Radius, InscribedCircle.Error);
    }

    [Fact]
    public void Largest_AnyOutline_NoPointLiesDeeper() => Gen.Select(ContourGen.Any, Gen.Double[0, 1], Gen.Double[0, 1]).Sample(
        (outline, x, y) =>
        {
            double radius = InscribedCircle.Largest(outline).Radius;
            Point2D p = new(outline.Box.MinX + (x * outline.Box.Width), outline.Box.MinY + (y * outline.Box.Height));
            if (ContourQueries.Contains(outline, p) == PointPlace.Inside)
                Assert.True(ContourQueries.NearestPoint(outline, p).Distance <= radius + InscribedCircle.Error);
        },
        iter: 300);

    private static Contour Polygon(params Point2D[] corners) =>
        Contour.Of(corners.Select((p, i) => new LineEdge(p, corners[(i + 1) % corners.Length])));
}
