using CsCheck;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Tests.Tolerancing;

/// <summary>Drills of the number list (ASME B94.11M) found by hand; the tenth of a millimetre is common practice, no source.</summary>
public sealed class PilotDrillTests
{
    // 2.858 mm = .11252 in: #33 is .1130, #34 .1110. 3.2136 mm = .12652 in: #30 is .1285, then 1/8 comes before #31 (.1200).
    // 2.678 mm = .10543 in: #36 is .1065, #37 .1040. 3.0845 mm = .12144 in: 1/8 is over, #31 .1200.
    [Theory]
    [InlineData(2.958, "#34", 0.1110)]
    [InlineData(3.3136, "1/8", 0.1250)]
    [InlineData(2.778, "#37", 0.1040)]
    [InlineData(3.1845, "#31", 0.1200)]
    public void ForTapered_SmallEnd_LeavesATenth(double smallEnd, string name, double inches)
    {
        PilotDrill drill = PilotDrill.ForTapered(Length.FromMillimetres(smallEnd)).Value;
        Assert.Equal(name, drill.Name);
        Assert.Equal(inches, drill.Diameter.Inches, 9);
    }

    // 3.4 mm = .13386 in: #29 is .1360, #30 .1285 = 3.2639 mm, 0.236 under. 2.7 mm = .1063 in: #37.
    // 3.45 mm = .13583 in: #30 again, but 0.286 under 3.55: the metric 3.4 is nearer.
    [Theory]
    [InlineData(3.5, "#30", 3.2639)]
    [InlineData(2.8, "#37", 2.6416)]
    [InlineData(3.55, "", 3.4)]
    public void ForParallel_Hole_LeavesATenthAndNotMuchMore(double hole, string name, double drill)
    {
        PilotDrill found = PilotDrill.ForParallel(Length.FromMillimetres(hole)).Value;
        Assert.Equal(name, found.Name);
        Assert.Equal(drill, found.Diameter.Millimetres, 0.00005);
    }

    [Fact]
    public void Any_Hole_LeavesTheReamerItsStock() => Gen.Double[1.2, 12].Sample(mm =>
    {
        Length hole = Length.FromMillimetres(mm);
        foreach (Length drill in new[] { PilotDrill.ForTapered(hole).Value.Diameter, PilotDrill.ForParallel(hole).Value.Diameter, PilotDrill.MetricUnder(hole).Value })
            Assert.InRange((hole - drill).Millimetres, 0.1 - 2e-6, 1);
    });

    [Fact]
    public void Hole_BelowTheSmallestDrill_IsRefused() => Assert.False(PilotDrill.ForTapered(Length.FromMillimetres(0.4)).IsGiven);
}
