using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Tests.Tolerancing;

/// <summary>Zones over 3 to 6 mm by hand from ISO 286-2 tables (K7 +3/−9, R7 −11/−23, S7 −15/−27 µm).</summary>
public sealed class LugHoleTests
{
    // 3.448 to 3.460 in R7, 3.437 to 3.449: the smallest pin would be loose by a micrometre. In S7, 3.433 to 3.445: 3 to 27 µm of grip.
    // m6 on 4 mm is 4.004 to 4.012: H7 (to 4.012) may be loose; K7, 3.991 to 4.003, grips by 1 to 21 µm.
    [Theory]
    [InlineData(3.46, 3.448, 3.46, "S7", 3.433, 3.445, 0.003, 0.027)]
    [InlineData(4, 4.004, 4.012, "K7", 3.991, 4.003, 0.001, 0.021)]
    public void For_Pin_IsTheLoosestThatAlwaysGrips(double nominal, double least, double most, string zone, double min, double max, double leastGrip, double mostGrip)
    {
        LugHole hole = LugHole.For(Length.FromMillimetres(nominal), new SizeLimits(Length.FromMillimetres(least), Length.FromMillimetres(most)))!;
        Assert.Equal(zone, hole.Zone.Text);
        Assert.Equal([min, max, leastGrip, mostGrip], new[] { hole.Limits.Min, hole.Limits.Max, hole.LeastGrip, hole.MostGrip }.Select(l => Math.Round(l.Millimetres, 6)));
    }

    // h11 is 75 µm wide: S7 is loose on the smallest. A pin from 25 to 37 µm over grips even in H7 (0/+12) by 13 to 37 µm: more than 35.
    [Theory]
    [InlineData(3.925, 4)]
    [InlineData(4.025, 4.037)]
    public void For_PinThatNoZoneHoldsSafely_IsToBeAgreed(double least, double most) =>
        Assert.Null(LugHole.For(Length.FromMillimetres(4), new SizeLimits(Length.FromMillimetres(least), Length.FromMillimetres(most))));
}
