using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Readings;
using LeverDraw.Specimens.Reconstruction;

namespace LeverDraw.Tests.Specimens.Reconstruction;

/// <summary>The rules of the trade notes, 4.2: witness first, the extreme by count, never a mean of worn.</summary>
public sealed class SizeEstimatorTests
{
    [Theory]
    [InlineData("pads.thickness", new[] { 2.9, 3.1, 2.8 }, 3.1, EstimateRule.Extreme)]
    [InlineData("hole.diameter", new[] { 3.2, 3.1, 3.3 }, 3.1, EstimateRule.Extreme)]
    [InlineData("pads.thickness", new[] { 2.9, 3.1, 2.8, 3.0, 2.7, 2.6 }, 3.0, EstimateRule.SecondExtreme)]
    [InlineData("fork.gap", new[] { 14.1, 14.0 }, 14.0, EstimateRule.Extreme)]
    [InlineData("arms.thickness", new[] { 3.5, 3.7, 3.6 }, 3.6, EstimateRule.Median)]
    [InlineData("arms.thickness", new[] { 3.5, 3.7 }, 3.6, EstimateRule.Median)]
    public void Of_WornOrNot_FollowsTheRule(string name, double[] values, double expected, EstimateRule rule)
    {
        SizeEstimate estimate = Of(name, values, worn: true);
        Assert.Equal((expected, rule), (Math.Round(estimate.Value, 9), estimate.Rule));
        Assert.InRange(estimate.Value, estimate.From, estimate.To);
    }

    /// <summary>The notes' rule ends at ten: the second largest of forty is far too large.</summary>
    [Fact]
    public void Of_MoreThanTen_IsNoExtreme()
    {
        SizeEstimate pad = Of("pads.thickness", [.. Enumerable.Range(0, 40).Select(i => 2.8 + (0.01 * i))], worn: true);
        Assert.Equal(EstimateRule.Likeliest, pad.Rule);
        Assert.InRange(pad.Value, 2.9, 3.17);
    }

    /// <summary>A gap wears by less than it scatters: the smallest of three would be too small, the mean too large.</summary>
    [Fact]
    public void Of_SlightWear_TakesTheMiddleOfTheLikelihood()
    {
        SizeEstimate gap = Of("fork.gap", [14.0, 14.1, 14.2], worn: true);
        Assert.Equal((EstimateRule.Likeliest, gap.Value), (gap.Rule, gap.Likeliest));
        Assert.InRange(gap.Value, 14.0 + 1e-6, 14.1 - 1e-6);
        SizeEstimate pad = Of("pads.thickness", [2.9, 3.0, 3.1], worn: true);
        Assert.Equal(3.1, pad.Value, 1e-9);
        Assert.InRange(pad.Likeliest!.Value, pad.From, pad.To);
    }

    [Fact]
    public void Of_WitnessBesideWorn_TakesTheWitnessOnly()
    {
        Measurand pad = Measurands.Find("pads.thickness")!;
        SizeEstimate estimate = SizeEstimator.Of(pad, [Value(2.6, true), Value(3.02, false), Value(3.06, false)]);
        Assert.Equal((3.04, EstimateRule.Witness, 2), (Math.Round(estimate.Value, 9), estimate.Rule, estimate.Specimens));
    }

    /// <summary>The unworn pad may be much thicker than the worn one, but hardly thinner; a hole the other way round.</summary>
    [Fact]
    public void Of_OneWorn_IntervalLeansAwayFromTheWear()
    {
        SizeEstimate pad = Of("pads.thickness", [3.0], worn: true), hole = Of("hole.diameter", [3.1], worn: true);
        Assert.True(pad.To - pad.Value > 3 * (pad.Value - pad.From));
        Assert.True(hole.Value - hole.From > 3 * (hole.To - hole.Value));
    }

    /// <summary>By hand: one cast size, made 0.10 mm, caliper 0.02/√3 and 0.01/√12 beside it: √(0.1² + 0.0115² + 0.0029²) = 0.1007, and t of 30 degrees of freedom is 2.04 (printed table): 0.206.</summary>
    [Fact]
    public void Of_OneUnworn_IsTheProcessSpread()
    {
        SizeEstimate arm = Of("arms.thickness", [3.6], worn: false);
        Assert.Equal(0.206, arm.To - arm.Value, 0.001);
        Assert.Equal(0.206, arm.Value - arm.From, 0.001);
    }

    /// <summary>Grouped data by hand: three radius gauges of 0.25 mm steps say that a radius lies from 4.875 to 5.125 mm; the interval is never let end short of their median, and is shorter than the scatter of three such steps alone.</summary>
    [Fact]
    public void Of_WideSteps_HoldsTheMedian()
    {
        Measurand radius = Measurands.Find("pads.crown_radius")!;
        SpecimenValue[] read = [.. new[] { 4.75, 5.0, 5.75 }.Select(v => new SpecimenValue("x", v, false, 0.25 / Math.Sqrt(12), 0.25 / Math.Sqrt(3), 1) { Step = 0.25 })];
        SizeEstimate estimate = SizeEstimator.Of(radius, [.. read]);
        Assert.Equal(5.0, estimate.Value, 1e-9);
        Assert.InRange(estimate.From, 4.5, 5.0);
        // The mean of the three is 5.17: the grouped likelihood leans to it, the median does not.
        Assert.True(estimate.To - estimate.Value > estimate.Value - estimate.From);
    }

    [Fact]
    public void Within_Interval_ListsWhatIsInsideAndPicksNone()
    {
        Measurand hole = Measurands.Find("hole.diameter")!;
        // #31 is 0.120 in = 3.048 mm (drill table); 1/8 in is 3.175 mm; 3.25 mm is outside.
        Assert.Equal(["drill #31", "1/8 in"], SensibleSizes.Within(hole, 3.04, 3.18).Select(s => s.Name));
        Assert.Equal(["1/8 in", "taper pin 3/0"], SensibleSizes.Within(Measurands.Find("pin.large_end")!, 3.17, 3.18).Select(s => s.Name));
        Assert.Empty(SensibleSizes.Within(hole, 3.06, 3.07));
    }

    private static SizeEstimate Of(string name, double[] values, bool worn)
    {
        Measurand measurand = Measurands.Find(name)!;
        return SizeEstimator.Of(measurand, [.. values.Select(v => Value(v, worn && measurand.Wear != WearSide.None))]);
    }

    private static SpecimenValue Value(double value, bool worn) => new("x", value, worn, 0.01 / Math.Sqrt(12), 0.02 / Math.Sqrt(3), 1);
}
