using LeverDraw.Drafting.Layout;

namespace LeverDraw.Tests.Drafting.Layout;

public class KnownPairsTests
{
    [Fact]
    public void Price_OfTwoPlaces_IsKeptEitherWayRoundUntilOneMoves()
    {
        Candidate a = Place(), b = Place(), moved = Place();
        var pairs = new KnownPairs(3);
        Assert.Equal(double.NaN, pairs.Price(0, a, 2, b));
        pairs.Price(0, a, 2, b) = 7;
        Assert.Equal(7, pairs.Price(2, b, 0, a));
        Assert.Equal(double.NaN, pairs.Price(0, a, 1, b));
        Assert.Equal(double.NaN, pairs.Price(0, moved, 2, b));
        Assert.Equal(double.NaN, pairs.Price(0, a, 2, b));
    }

    private static Candidate Place() => new([], [], 0, () => throw new InvalidOperationException());
}
