using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.TitleBlocks;

// Reference 10j: first angle has the cone left and the circles right, third angle the other way; one text source and memory.
public class ProjectionSymbolTests
{
    [Theory]
    [InlineData(ProjectionMethod.FirstAngle, 1)]
    [InlineData(ProjectionMethod.ThirdAngle, -1)]
    public void Draw_Circles_StandOnTheMethodsSide(ProjectionMethod method, int side)
    {
        PlotItem[] items = [.. ProjectionSymbol.Draw(method, new Point2D(100, 50))];
        Box2D[] circles = [.. items.OfType<PlotLoop>().Select(l => l.Contour.Box)];
        Assert.Equal(2, circles.Length);
        Assert.All(circles, c => Assert.True((c.Centre.X - 100) * side > 3));
        // One inside the other, the larger twice as wide.
        Assert.Equal(2, circles.Max(c => c.Width) / circles.Min(c => c.Width), 9);
        Box2D cone = Cone(items);
        Assert.True((cone.Centre.X - 100) * side < -3);
        Assert.False(cone.Overlaps(circles[1]));
        Assert.Equal(circles.Max(c => c.Height), cone.Height, 9);
    }

    /// <summary>Both circles are seen from the cone's small end. In first angle that view goes to the far side, in third to the near side: the small end is at the left in both.</summary>
    [Theory]
    [InlineData(ProjectionMethod.FirstAngle)]
    [InlineData(ProjectionMethod.ThirdAngle)]
    public void Draw_Cone_HasItsSmallEndAtTheLeft(ProjectionMethod method)
    {
        PlotItem[] items = [.. ProjectionSymbol.Draw(method, Point2D.Origin)];
        LineEdge[] ends = [.. Lines(items).Where(l => l.From.X == l.To.X).OrderBy(l => l.From.X)];
        Assert.Equal(2, ends.Length);
        Assert.Equal(2, ends[1].Length / ends[0].Length, 9);
    }

    [Fact]
    public void Draw_TheTwoMethods_ExchangeTheirPlaces()
    {
        Box2D first = Cone([.. ProjectionSymbol.Draw(ProjectionMethod.FirstAngle, Point2D.Origin)]);
        Box2D third = Cone([.. ProjectionSymbol.Draw(ProjectionMethod.ThirdAngle, Point2D.Origin)]);
        Assert.Equal(first.MinX, -third.MaxX, 9);
        Assert.Equal(first.MaxX, -third.MinX, 9);
    }

    private static Box2D Cone(PlotItem[] items) => Lines(items).Aggregate(Box2D.Empty, (box, l) => box.Union(l.Box));

    private static IEnumerable<LineEdge> Lines(PlotItem[] items) =>
        items.OfType<PlotStroke>().Where(s => s.Role == LineRole.TitleBlock).Select(s => s.Edge).OfType<LineEdge>();
}
