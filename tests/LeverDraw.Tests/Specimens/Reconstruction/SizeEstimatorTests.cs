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

    /// <summary>Taper from two pin-gauge readings by hand: (3.19 − 3.00)/9.5 = 0.02, 1 in 50, where 1 in 48 (0.0208333…) is the taper read.</summary>
    /// <remarks>
    /// Then the two ends should differ by 9.5/48 = 0.197917, and differ by 0.19. With equal weights at both ends and the head's width as good as certain, the misfit of 0.007917 is shared: each end moves by half of it,
    /// 0.003958, and the middle is (3.19 + 3.00)/2 = 3.095. Its variance is half of one end's: ±0.02/√2 = ±0.01414.
    /// </remarks>
    [Fact]
    public void Adjust_HoleFromBothEnds_GivesMiddleTaperAndResidualsByHand()
    {
        var estimates = new Dictionary<string, SizeEstimate>(StringComparer.Ordinal);
        foreach ((string name, double value, double reach) in new[] { ("hole.larger_side", 3.19, 0.02), ("hole.smaller_side", 3.00, 0.02), ("head.width", 9.5, 0.0001) })
            estimates[name] = new SizeEstimate(Measurands.Find(name)!, value, value - reach, value + reach, EstimateRule.Extreme, 1, 1);
        TieGroup tie = Assert.Single(TiedSizes.Adjust(estimates, Measurands.Lever, 1.0 / 48));
        SizeEstimate middle = estimates["hole.diameter"];
        Assert.Equal(3.095, middle.Value, 1e-6);
        Assert.Equal(0.01414, middle.To - middle.Value, 1e-5);
        Assert.Equal(3.193958, tie.Residuals.Single(r => r.Name == "hole.larger_side").Adjusted, 1e-6);
        Assert.Equal(2.996042, tie.Residuals.Single(r => r.Name == "hole.smaller_side").Adjusted, 1e-6);
    }

    /// <summary>The form asks for the distance from the axis to the head's top: twice that is the height, with twice the uncertainty.</summary>
    [Fact]
    public void Adjust_TopFromAxis_GivesTheHeadsHeight()
    {
        var estimates = new Dictionary<string, SizeEstimate>(StringComparer.Ordinal) { ["head.top_from_axis"] = new(Measurands.Find("head.top_from_axis")!, 4.75, 4.65, 4.85, EstimateRule.Median, 2, 2) };
        TiedSizes.Adjust(estimates, Measurands.Lever, 0);
        SizeEstimate height = estimates["head.height"];
        Assert.Equal((9.5, 9.3, 9.7, EstimateRule.Tied), (Math.Round(height.Value, 6), Math.Round(height.From, 6), Math.Round(height.To, 6), height.Rule));
    }

    /// <summary>Gap 14 and arms 5.2 against 24.7 over all: the 0.3 too much is shared by the squares of the uncertainties, arms twice.</summary>
    [Fact]
    public void Adjust_WidthOverAll_IsItsParts()
    {
        var estimates = new Dictionary<string, SizeEstimate>(StringComparer.Ordinal);
        foreach ((string name, double value) in new[] { ("fork.gap", 14.0), ("arms.width", 5.2), ("fork.outside", 24.7) })
            estimates[name] = new SizeEstimate(Measurands.Find(name)!, value, value - 0.196, value + 0.196, EstimateRule.Median, 1, 1);
        TieGroup tie = Assert.Single(TiedSizes.Adjust(estimates, Measurands.Lever, 0));
        // Equal uncertainties u and the misclosure m = 0.3: corrections m·(1, 2)/(1 + 4 + 1).
        Assert.Equal(14.05, estimates["fork.gap"].Value, 1e-6);
        Assert.Equal(5.3, estimates["arms.width"].Value, 1e-6);
        Assert.Equal(24.65, tie.Residuals.Single(r => r.Name == "fork.outside").Adjusted, 1e-6);
        Assert.Equal(0.3 * 0.3 / (6 * 0.1 * 0.1), tie.ChiSquare, 1e-6);
        Assert.True(tie.Agrees);
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
