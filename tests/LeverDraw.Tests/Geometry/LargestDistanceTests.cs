using LeverDraw.Geometry;

namespace LeverDraw.Tests.Geometry;

public sealed class LargestDistanceTests
{
    private const double Tolerance = 1e-6;

    /// <summary>The farthest point of a circle from another one, both cut by the line of centres: | distance of its two outermost points from the other centre − the other radius |, the larger.</summary>
    [Theory]
    [InlineData(5, 3, 0, 2)]
    [InlineData(5, 5, 1, 1)]
    [InlineData(3, 5, 1, 3)]
    [InlineData(2, 2, 10, 10)]
    public void Between_Circles_IsByHand(double first, double second, double apart, double expected) =>
        Assert.Equal(expected, LargestDistance.Between(Contour.Circle(Point2D.Origin, first), Contour.Circle(new(apart, 0), second)).Distance, Tolerance);

    /// <summary>A square of 10 shifted by (2, 0): the farthest side lies 2 off. Shifted by (3, 4): a corner lies 5 from the other's corner.</summary>
    [Theory]
    [InlineData(2, 0, 2)]
    [InlineData(3, 4, 5)]
    public void Between_ShiftedSquares_IsByHand(double dx, double dy, double expected) =>
        Assert.Equal(expected, LargestDistance.Between(Rectangle(0, 0, 10, 10), Rectangle(dx, dy, 10, 10)).Distance, Tolerance);

    /// <summary>A circle of 5 in a square of 10: every corner is 5√2 − 5 from the circle, the circle's diagonal points are 5 − 5/√2 from the sides.</summary>
    [Fact]
    public void Between_CircleAndSquareRoundIt_DiffersByDirection()
    {
        Contour circle = Contour.Circle(Point2D.Origin, 5), square = Rectangle(-5, -5, 10, 10);
        FarthestPoint out1 = LargestDistance.Between(square, circle), in1 = LargestDistance.Between(circle, square);
        Assert.Equal((5 * Math.Sqrt(2)) - 5, out1.Distance, Tolerance);
        Assert.Equal(5 - (5 / Math.Sqrt(2)), in1.Distance, Tolerance);
        Assert.Equal(out1.Distance, out1.From.DistanceTo(out1.To), 1e-12);
    }

    [Fact]
    public void Between_ContourAndItself_IsNothing()
    {
        Contour slot = Contour.Of([new LineEdge(new(0, 0), new(10, 0)), new ArcEdge(new(10, 3), 3, -Math.PI / 2, Math.PI), new LineEdge(new(10, 6), new(0, 6)), new ArcEdge(new(0, 3), 3, Math.PI / 2, Math.PI)]);
        Assert.Equal(0, LargestDistance.Between(slot, slot).Distance, Tolerance);
    }

    internal static Contour Rectangle(double x, double y, double width, double height) =>
        Contour.Of([new LineEdge(new(x, y), new(x + width, y)), new LineEdge(new(x + width, y), new(x + width, y + height)), new LineEdge(new(x + width, y + height), new(x, y + height)), new LineEdge(new(x, y + height), new(x, y))]);
}
