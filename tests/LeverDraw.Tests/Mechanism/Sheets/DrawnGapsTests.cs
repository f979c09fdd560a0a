using LeverDraw.Mechanism;
using LeverDraw.Mechanism.Sheets;
using LeverDraw.Tests.Support;
using LeverDraw.Units;

namespace LeverDraw.Tests.Mechanism.Sheets;

/// <summary>A note tells how many times too wide the gaps are drawn: it is true of the one that is widened most, not only of the widest.</summary>
public class DrawnGapsTests
{
    [Theory]
    [InlineData("early")]
    [InlineData("late")]
    [InlineData("smallest")]
    [InlineData("rattling")]
    [InlineData("thick-iron")]
    public void Of_ShippedSetup_IsNoWiderThanItSays(string setup)
    {
        FourGaps gaps = DiskProfiles.Setup(setup).Linkage.Typical;
        DrawnGaps drawn = DrawnGaps.Of(gaps);
        double[] times = [drawn.Groove / gaps.Groove.Millimetres, drawn.Pivot / gaps.Pivot.Millimetres, drawn.Slot / gaps.Slot.Millimetres];
        Assert.Equal(times.Max(), drawn.Times, 9);
        Assert.All(times, t => Assert.InRange(t, 1 - 1e-9, drawn.Times + 1e-9));
        Assert.Contains("UP TO " + Math.Round(drawn.Times).ToString(System.Globalization.CultureInfo.InvariantCulture) + " TIMES TOO WIDE", drawn.Words(), StringComparison.Ordinal);
        // Two outlines 0.5 wide at 2:1 keep some white between them.
        Assert.All([drawn.Groove, drawn.Pivot, drawn.Slot], g => Assert.True(g >= 0.5));
    }
}
