using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever.Sheets;

namespace LeverDraw.Tests.Parts.AdjustingLever.Sheets;

public class ClearArcsTests
{
    [Fact]
    public void Off_LevelOnTheArc_KeepsTheLongerPieceClearOfIt()
    {
        // A quarter from (10, 0) to (0, 10): an edge seen at 2 ends on it near its lower end.
        ArcEdge quarter = new(Point2D.Origin, 10, 0, Math.PI / 2), kept = ClearArcs.Off(2, quarter);
        Assert.Equal(quarter.End.Y, kept.End.Y, 1e-9);
        Assert.InRange(kept.Start.Y, 2.8, 3.8);
    }

    [Fact]
    public void Off_LevelElsewhereOrAllAlongTheArc_LeavesItWhole()
    {
        ArcEdge quarter = new(Point2D.Origin, 10, 0, Math.PI / 2), small = new(Point2D.Origin, 0.5, 0, Math.PI / 2);
        Assert.Equal(quarter, ClearArcs.Off(-5, quarter));
        Assert.Equal(small, ClearArcs.Off(0.25, small));
    }
}
