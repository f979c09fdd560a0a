using System.Collections.Immutable;
using CsCheck;
using LeverDraw.Geometry;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Geometry;

public class HatchLinesTests
{
    private static readonly Contour Square = ContourChordsTests.Polygon((0, 0.5), (10, 0.5), (10, 10.5), (0, 10.5));

    [Fact]
    public void Across_SquareLevel_HasOneLinePerMillimetre()
    {
        ImmutableArray<LineEdge> lines = HatchLines.Across([Square], 0, 1);
        Assert.Equal(10, lines.Length);
        Assert.All(lines, l => Assert.Equal(10, l.Length, 1e-12));
        Assert.Equal(1, lines[0].From.Y, 1e-12);
    }

    [Fact]
    public void Across_WithHole_SplitsTheLines()
    {
        Contour hole = Contour.Circle(new Point2D(5, 5), 2.5).Reversed();
        ImmutableArray<LineEdge> lines = HatchLines.Across([Square, hole], 0, 1);
        Assert.Equal(15, lines.Length); // y = 3 to 7 pass the hole
        Assert.Contains(lines, l => Math.Abs(l.From.Y - 5) < 1e-12 && Math.Abs(l.Length - 2.5) < 1e-12);
    }

    [Fact]
    public void Across_KeepOutBox_IsLeftWhite()
    {
        ImmutableArray<LineEdge> lines = HatchLines.Across([Square], 0, 1, [new Box2D(4, 4.5, 6, 5.5)]);
        Assert.Equal(11, lines.Length);
        Assert.Equal([4, 4], lines.Where(l => Math.Abs(l.From.Y - 5) < 1e-9).Select(l => Math.Round(l.Length, 9)).ToArray());
    }

    [Fact]
    public void Across_SpacingNotPositive_Throws() => Assert.Throws<ArgumentOutOfRangeException>(() => HatchLines.Across([Square], 0, 0));

    // Lines times spacing is a strip sum of the area.
    [Fact]
    public void Across_AnyRegion_StaysInsideOutsideBoxesAndFillsIt() => Gen.Select(ContourGen.Any, Gen.Double[-4, 4], Gen.Double[0, 1], Gen.Double[0, 1]).Sample(
        (c, angle, x, y) =>
        {
            Point2D at = new(c.Box.MinX + (x * c.Box.Width), c.Box.MinY + (y * c.Box.Height));
            Box2D box = Box2D.Of([at, at + new Vector2D(3, 1)]);
            Assert.Equal(ContourMeasure.Area(c), HatchLines.Across([c], angle, 0.01).Sum(l => l.Length) * 0.01, 0.005 * ContourMeasure.Area(c));
            foreach (LineEdge line in HatchLines.Across([c], angle, 0.5, [box]))
            {
                Assert.NotEqual(PointPlace.Outside, ContourQueries.Contains(c, line.PointAt(0.5)));
                Assert.False(box.Inflated(-1e-9).Contains(line.PointAt(0.5)));
            }
        },
        iter: 100);
}
