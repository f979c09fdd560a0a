using CsCheck;
using LeverDraw.Drafting.Layout;
using LeverDraw.Geometry;
using NetTopologySuite.Geometries;

namespace LeverDraw.Tests.Drafting.Layout;

public class StrokeTests
{
    private static readonly Gen<Point2D> Points = Gen.Select(Gen.Double[-15, 15], Gen.Double[-15, 15], (x, y) => new Point2D(Math.Round(x, 6), Math.Round(y, 6)));

    [Theory]
    [InlineData(0, 0, 10, 0, 5, -5, 5, 5, true)]
    [InlineData(0, 0, 10, 0, 5, 0, 5, 5, false)]
    [InlineData(0, 0, 10, 0, 10, 0, 10, 5, false)]
    [InlineData(0, 0, 10, 0, 11, -5, 11, 5, false)]
    [InlineData(0, 0, 10, 0, 0, 1, 10, 1, false)]
    [InlineData(0, 0, 10, 10, 0, 10, 10, 0, true)]
    public void Crosses_InsideBothOnly(double ax, double ay, double bx, double by, double cx, double cy, double dx, double dy, bool crosses)
    {
        Stroke s = Of(ax, ay, bx, by), t = Of(cx, cy, dx, dy);
        Assert.Equal(crosses, s.Crosses(t));
        Assert.Equal(crosses, t.Crosses(s));
    }

    [Fact]
    public void Crosses_RandomStrokes_AgreesWithAnotherKernel() =>
        Gen.Select(Points, Points, Points, Points).Sample((a, b, c, d) =>
        {
            LineString s = new([At(a), At(b)]), t = new([At(c), At(d)]);
            // An end that lies on the other stroke is no question for rounded numbers.
            if (new[] { a, b }.Any(p => new Point(At(p)).Distance(t) < 1e-6) || new[] { c, d }.Any(p => new Point(At(p)).Distance(s) < 1e-6))
                return;
            Assert.Equal(s.Crosses(t), new Stroke(a, b, StrokeKind.Leader).Crosses(new Stroke(c, d, StrokeKind.Leader)));
        }, iter: 3000);

    // 0.4 is the distance asked; 0.3 mm of common run still counts as a point.
    [Theory]
    [InlineData(0, 0.3, 10, 0.3, true)]
    [InlineData(10, 0.3, 0, 0.3, true)]
    [InlineData(0, 0.5, 10, 0.5, false)]
    [InlineData(8, 0, 20, 0, true)]
    [InlineData(10, 0, 20, 0, false)]
    [InlineData(-20, 0, 0.2, 0, false)]
    [InlineData(0, 0, 10, 1, false)]
    [InlineData(3, -5, 3, 5, false)]
    public void RunsAlong_NearAndParallelOverALength(double cx, double cy, double dx, double dy, bool along) =>
        Assert.Equal(along, Of(0, 0, 10, 0).RunsAlong(Of(cx, cy, dx, dy), 0.4));

    [Fact]
    public void IsNear_Strokes_NeverMissesThoseThatCross() =>
        Gen.Select(Points, Points, Points, Points).Sample((a, b, c, d) =>
        {
            Stroke s = new(a, b, StrokeKind.Leader), t = new(c, d, StrokeKind.Leader);
            Assert.True(!s.Crosses(t) || s.IsNear(t, 0));
            double gap = new LineString([At(a), At(b)]).Distance(new LineString([At(c), At(d)]));
            Assert.True(gap > 0.5 || s.IsNear(t, 0.5));
        });

    private static Stroke Of(double ax, double ay, double bx, double by) => new(new Point2D(ax, ay), new Point2D(bx, by), StrokeKind.DimensionLine);

    private static Coordinate At(Point2D p) => new(p.X, p.Y);
}
