using LeverDraw.Drafting.Layout;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Layout;

public class ShortListTests
{
    [Fact]
    public void Offer_MoreThanStay_KeepsTheCheapestInOrder()
    {
        var list = new ShortList(2, 4);
        list.Offer(9, -1, 0, new Point2D(0, 0));
        list.Offer(5, -1, 1, new Point2D(10, 0));
        list.Offer(7, -1, 2, new Point2D(20, 0));
        Assert.Equal([1, 2], list.Ranks);
        Assert.Equal(7, list.Limit(double.PositiveInfinity, 100));
        Assert.Equal(6, list.Limit(double.PositiveInfinity, 1));
    }

    [Fact]
    public void Offer_OneAlike_StaysOnlyWhereItIsCheaper()
    {
        var list = new ShortList(4, 4);
        list.Offer(5, 1, 0, new Point2D(0, 0));
        list.Offer(6, 1, 1, new Point2D(50, 0));
        list.Offer(6, 2, 2, new Point2D(3, 0));
        Assert.Equal([0], list.Ranks);
        list.Offer(4, 2, 3, new Point2D(3, 0));
        Assert.Equal([3], list.Ranks);
        Assert.True(list.HasCheaper(2, 4.5));
        Assert.False(list.HasCheaper(2, 3.5));
        Assert.False(list.HasCheaper(-1, 9));
    }

    [Fact]
    public void Limit_EmptyList_IsWhatWouldBeHopeless() => Assert.Equal(12, new ShortList(2, 0).Limit(12, 3));
}
