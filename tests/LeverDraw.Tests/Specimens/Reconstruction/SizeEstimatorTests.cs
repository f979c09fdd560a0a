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

    /// <summary>Three radius gauges of 0.25 mm steps: the value is their median, the interval that of grouped data, which leans to their mean of 5.167.</summary>
    /// <remarks>Ends from a second reckoning: a program apart from this one that sums shares by its library's erfc every 0.001 mm from 2 to 8.5 mm, for the deviation 0.25 mm times 0.8, 1 and 1.25 (weights 1, 4, 1), and smears them by ±0.25 mm.</remarks>
    [Fact]
    public void Of_WideSteps_IsTheIntervalOfGroupedData()
    {
        SizeEstimate estimate = OfGauges(4.75, 5.0, 5.75);
        Assert.Equal(5.0, estimate.Value, 1e-9);
        Assert.Equal(4.746, estimate.From, 0.01);
        Assert.Equal(5.588, estimate.To, 0.01);
    }

    /// <summary>Three gauges at 4.75 and two at 6 mm: the likelihood lies about their mean of 5.25, all but 2.5 % of it above the median of 4.75 (0.116 mm and the evenly shared 0.25 mm below it end at 4.9); there the interval is made to begin.</summary>
    [Fact]
    public void Of_WideSteps_HoldsTheMedian()
    {
        SizeEstimate estimate = OfGauges(4.75, 4.75, 4.75, 6.0, 6.0);
        Assert.Equal(4.75, estimate.Value, 1e-9);
        Assert.Equal(4.75, estimate.From, 1e-9);
        Assert.InRange(estimate.To, 5.25, 5.75);
    }

    /// <summary>Two sizes without a step, told by ties, beside gauges: they weigh as much as the gauges do, so the interval lies about the weighted mean of all five.</summary>
    [Fact]
    public void Of_MixedSteps_CountsTheValuesWithoutStep()
    {
        SpecimenValue[] told = [.. new[] { 5.6, 5.6 }.Select(v => Gauge(v) with { Own = 0, Step = 0, Ties = TieEffect.Told })];
        SizeEstimate estimate = SizeEstimator.Of(Radius, [Gauge(5.0), Gauge(5.0), Gauge(5.0), .. told]);
        // Variances by hand 0.25² + 0.25²/12 = 0.0677 for a gauge, 0.0625 for the told: (3·5.0/0.0677 + 2·5.6/0.0625)/(3/0.0677 + 2/0.0625) = 5.252; the gauges alone lie about 5.0.
        Assert.Equal(5.252, (estimate.From + estimate.To) / 2, 0.01);
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

    private static Measurand Radius => Measurands.Find("pads.crown_radius")!;

    private static SizeEstimate OfGauges(params double[] values) => SizeEstimator.Of(Radius, [.. values.Select(Gauge)]);

    /// <summary>A radius gauge of 0.25 mm steps that may err by 0.25 mm.</summary>
    private static SpecimenValue Gauge(double value) => new("x", value, false, 0.25 / Math.Sqrt(12), 0.25 / Math.Sqrt(3), 1) { Step = 0.25 };

    private static SizeEstimate Of(string name, double[] values, bool worn)
    {
        Measurand measurand = Measurands.Find(name)!;
        return SizeEstimator.Of(measurand, [.. values.Select(v => Value(v, worn && measurand.Wear != WearSide.None))]);
    }

    private static SpecimenValue Value(double value, bool worn) => new("x", value, worn, 0.01 / Math.Sqrt(12), 0.02 / Math.Sqrt(3), 1);
}
