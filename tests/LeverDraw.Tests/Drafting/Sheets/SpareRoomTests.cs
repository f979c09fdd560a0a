using LeverDraw.Drafting.Sheets;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Sheets;

public class SpareRoomTests
{
    private static readonly Box2D Inside = new(0, 0, 100, 100);

    /// <summary>Gap between blocks 5 (docs/adr/0006-layout.md), at most 12 on a side.</summary>
    [Fact]
    public void Of_NeighbourToTheRight_StopsAGapBeforeItAndAtTheField() =>
        Assert.Equal(new Box2D(0, 28, 55, 72), SpareRoom.Of(0, [new(4, 40, 50, 60), new(60, 0, 100, 100)], 1, Inside));

    [Fact]
    public void Of_NeighbourCornerwise_IsMindedTheWayItIsFartherOff() =>
        Assert.Equal(new Box2D(28, 28, 62, 51), SpareRoom.Of(0, [new(40, 40, 50, 50), new(53, 56, 90, 90)], 1, Inside));

    [Fact]
    public void Of_NeighbourTooNear_NeverShrinks() =>
        Assert.Equal(50, SpareRoom.Of(0, [new(40, 40, 50, 50), new(52, 30, 90, 90)], 1, Inside).MaxX);

    /// <summary>Of the 10 mm between the two, 5 stay free and each takes 2.5.</summary>
    [Fact]
    public void Of_NeighbourThatGrowsToo_TakesHalfOfWhatIsBeyondTheGap()
    {
        Box2D[] boxes = [new(4, 40, 50, 60), new(60, 0, 80, 100)];
        Assert.Equal((52.5, 57.5), (SpareRoom.Of(0, boxes, 2, Inside).MaxX, SpareRoom.Of(1, boxes, 2, Inside).MinX));
    }
}
