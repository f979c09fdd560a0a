using LeverDraw.Drafting;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Symbols;

// Reference 10j (from memory there): a triangle, and the letter in a square frame of height 2 h (10i). The triangle's base of h is from memory too.
public class DatumIndicatorTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(90)]
    [InlineData(-90)]
    [InlineData(180)]
    [InlineData(37)]
    public void Ink_AnyDirection_StandsOnTheFeatureAndReachesASquareFrame(double degrees)
    {
        var foot = new Point2D(3, 4);
        Vector2D outward = Vector2D.FromAngle(degrees * Math.PI / 180);
        var datum = new DatumIndicator("B", DraftingStyle.Large);
        PlotItem[] ink = [.. datum.Ink(foot, outward, 0, null, "v")];
        PlotFill triangle = Assert.Single(ink.OfType<PlotFill>());
        double[] above = [.. triangle.Corners.Select(c => (c - foot).Dot(outward)).Order()];
        Assert.Equal(0, above[0], 9);
        Assert.Equal(0, above[1], 9);
        // Equilateral on a base of 3.5: 3.031 high.
        Assert.Equal(3.031, above[2], 3);
        LineEdge[] frame = [.. ink.Lines().Where(l => Math.Abs(l.Length - 7) < 1e-9)];
        Assert.Equal(4, frame.Length);
        Box2D square = frame.Aggregate(Box2D.Empty, (b, l) => b.Union(l.Box));
        Assert.Equal((7, 7), (Math.Round(square.Width, 9), Math.Round(square.Height, 9)));
        LineEdge stem = Assert.Single(ink.Lines(), l => Math.Abs(l.Length - 7) > 1e-9);
        Assert.Equal(2.1, stem.Length, 9);
        // The stem ends on the frame's edge.
        Assert.True(Math.Abs(Math.Max(Math.Abs(stem.To.X - square.Centre.X), Math.Abs(stem.To.Y - square.Centre.Y)) - 3.5) < 1e-9);
        PlotText letter = Assert.Single(ink.OfType<PlotText>());
        Assert.Equal(square.Centre.X, letter.Anchor.X + (letter.Width / 2), 9);
        Assert.True(datum.Box(foot, outward, 0, 0).Bounds.Inflated(1e-9).Contains(square));
    }
}
