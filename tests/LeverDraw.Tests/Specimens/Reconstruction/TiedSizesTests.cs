using System.Collections.Immutable;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Readings;
using LeverDraw.Specimens.Reconstruction;

namespace LeverDraw.Tests.Specimens.Reconstruction;

/// <summary>Tied sizes of one specimen, by hand.</summary>
public sealed class TiedSizesTests
{
    private readonly Dictionary<string, ImmutableArray<SpecimenValue>> _values = new(StringComparer.Ordinal);

    /// <summary>Taper from two pin-gauge readings by hand: (3.19 − 3.00)/9.5 = 0.02, 1 in 50, where 1 in 48 (0.0208333…) is the taper read.</summary>
    /// <remarks>
    /// Then the two ends should differ by 9.5/48 = 0.197917, and differ by 0.19. With equal weights at both ends and the head's width as good as certain beside them, the misfit of 0.007917 is shared: each end moves
    /// by half of it, 0.003958, and the middle is (3.19 + 3.00)/2 = 3.095. What each end has for itself, 0.003, is averaged: 0.003/√2; what one gauge set has for both is not: 0.004.
    /// </remarks>
    [Fact]
    public void Adjust_HoleFromBothEnds_GivesMiddleTaperAndResidualsByHand()
    {
        Read("hole.larger_side", 3.19, own: 0.003, common: 0.004, worn: true);
        Read("hole.smaller_side", 3.00, own: 0.003, common: 0.004, worn: true);
        Read("head.width", 9.5);
        TieGroup tie = Assert.Single(Adjust(1.0 / 48));
        SpecimenValue middle = Assert.Single(_values["hole.diameter"]);
        Assert.Equal(3.095, middle.Value, 1e-6);
        Assert.Equal(0.003 / Math.Sqrt(2), middle.Own, 1e-6);
        Assert.Equal(0.004, middle.Common, 1e-6);
        Assert.Equal((true, TieEffect.Told), (middle.IsWorn, middle.Ties));
        Assert.Equal(3.193958, tie.Residuals.Single(r => r.Name == "hole.larger_side").Adjusted, 2e-5);
        Assert.Equal(2.996042, tie.Residuals.Single(r => r.Name == "hole.smaller_side").Adjusted, 2e-5);
    }

    /// <summary>Both ends have worn together: two readings of one hole are no two holes, and its interval is that of one.</summary>
    [Fact]
    public void Adjust_HoleFromBothEnds_IsAsUncertainAsOneHole()
    {
        Read("hole.larger_side", 3.198958, worn: true);
        Read("hole.smaller_side", 3.001042, worn: true);
        Read("head.width", 9.5);
        Adjust(1.0 / 48);
        Measurand hole = Measurands.Find("hole.diameter")!;
        SizeEstimate tied = SizeEstimator.Of(hole, _values["hole.diameter"]), direct = SizeEstimator.Of(hole, [new SpecimenValue("A", 3.1, true, 0, 0, 1)]);
        Assert.Equal(direct.To - direct.From, tied.To - tied.From, 1e-4);
        Assert.True(tied.IsTied);
    }

    [Fact]
    public void Adjust_WitnessAtOneEnd_LeavesTheWornEndOut()
    {
        Read("hole.larger_side", 3.20, worn: false);
        Read("hole.smaller_side", 3.12, worn: true);
        Read("head.width", 9.6);
        Adjust(1.0 / 48);
        SpecimenValue middle = Assert.Single(_values["hole.diameter"]);
        // 3.20 − 4.8/48.
        Assert.Equal(3.10, middle.Value, 1e-6);
        Assert.False(middle.IsWorn);
    }

    /// <summary>The form asks for the distance from the axis to the head's top: twice that is the height, with twice the uncertainty.</summary>
    [Fact]
    public void Adjust_TopFromAxis_GivesTheHeadsHeight()
    {
        Read("head.top_from_axis", 4.75, own: 0.003, common: 0.01);
        Adjust(0);
        SpecimenValue height = Assert.Single(_values["head.height"]);
        Assert.Equal((9.5, 0.006, 0.02, TieEffect.Told), (Math.Round(height.Value, 6), Math.Round(height.Own, 6), Math.Round(height.Common, 6), height.Ties));
    }

    /// <summary>Gap 14 and arms 5.2 against 24.6 over all: the 0.2 too much is shared by the squares of how much each differs within a part, arms twice.</summary>
    /// <remarks>Half the spread as made: 0.05 for gap and arms, half of 0.005·24.6 = 0.0615 over all. Sum of squares 0.0025·(1 + 4) + 0.00378225 = 0.01628225.</remarks>
    [Fact]
    public void Adjust_WidthOverAll_IsItsParts()
    {
        Read("fork.gap", 14.0);
        Read("arms.width", 5.2);
        Read("fork.outside", 24.6);
        TieGroup tie = Assert.Single(Adjust(0));
        Assert.Equal(14 + (0.2 * 0.0025 / 0.01628225), Assert.Single(_values["fork.gap"]).Value, 1e-6);
        Assert.Equal(5.2 + (0.2 * 2 * 0.0025 / 0.01628225), Assert.Single(_values["arms.width"]).Value, 1e-6);
        Assert.Equal(24.6 - (0.2 * 0.00378225 / 0.01628225), tie.Residuals.Single(r => r.Name == "fork.outside").Adjusted, 1e-6);
        Assert.Equal(0.2 * 0.2 / 0.01628225, tie.ChiSquare, 1e-6);
        // 95 % of chi-square with one degree of freedom: 3.84 (printed table).
        Assert.Equal(3.84, tie.Limit, 0.005);
        Assert.True(tie.Agrees);
    }

    /// <summary>A slip of 1 mm: told, and what it leaves is uncertain by as much.</summary>
    [Fact]
    public void Adjust_WidthOverAllThatDoesNotFit_DisagreesAndWidens()
    {
        Read("fork.gap", 14.0);
        Read("arms.width", 5.2);
        Read("fork.outside", 25.4);
        Assert.False(Assert.Single(Adjust(0)).Agrees);
        Assert.True(Assert.Single(_values["arms.width"]).Own > 0.1);
    }

    /// <summary>The difference of a hole's ends would tell the head's width only to half a millimetre: it is not taken.</summary>
    [Fact]
    public void Adjust_SizeThatTiesHardlyTell_IsLeftOut()
    {
        Read("hole.larger_side", 3.19, own: 0.003, worn: true);
        Read("hole.smaller_side", 3.00, own: 0.003, worn: true);
        Adjust(1.0 / 48);
        Assert.False(_values.ContainsKey("head.width"));
        Assert.Equal(3.095, Assert.Single(_values["hole.diameter"]).Value, 1e-6);
    }

    /// <summary>B's gap was not read: it is what its arms leave of its width over all.</summary>
    [Fact]
    public void Adjust_GapOfOneSpecimenUnread_FollowsFromItsOwnOtherSizes()
    {
        Read("fork.gap", 14.0);
        Read("arms.width", 5.2);
        _values["arms.width"] = [.. _values["arms.width"], Value("B", 5.1)];
        _values["fork.outside"] = [Value("B", 24.4)];
        Adjust(0);
        SpecimenValue gap = _values["fork.gap"].Single(v => v.Specimen == "B");
        // 24.4 − 2·5.1, and nothing of A's 14.0.
        Assert.Equal(14.2, gap.Value, 1e-4);
        Assert.Equal((TieEffect.Told, true), (gap.Ties, gap.IsWorn));
    }

    /// <summary>Width over all by caliper, arms by vernier: the gap is 24.6 − 2·5.3 = 14.0, and the errors 0.02 and twice 0.01 of two instruments make √(0.02² + 0.02²), not 0.02 − 2·0.01 = 0; of one instrument they do cancel (GUM 5.1 and 5.2).</summary>
    [Theory]
    [InlineData("vernier", 0.0282843)]
    [InlineData("caliper", 0)]
    public void Adjust_Instruments_ErrTogetherOnlyWithThemselves(string arms, double common)
    {
        _values["fork.outside"] = [Value("A", 24.6, common: 0.02) with { Instrument = "caliper" }];
        _values["arms.width"] = [Value("A", 5.3, common: 0.01) with { Instrument = arms }];
        Adjust(0);
        SpecimenValue gap = Assert.Single(_values["fork.gap"]);
        Assert.Equal(14.0, gap.Value, 1e-4);
        Assert.Equal(common, gap.Common, 1e-5);
    }

    /// <summary>A distance from the axis in steps of 0.5 mm and the height itself in steps of 0.01 mm: the adjusted height jumps by the share that it has from each, and keeps the wider jump.</summary>
    [Fact]
    public void Adjust_SteppedReading_PassesItsStepOn()
    {
        _values["head.top_from_axis"] = [Value("A", 4.75, own: 0.5 / Math.Sqrt(12)) with { Step = 0.5 }];
        _values["head.height"] = [Value("A", 9.5, own: 0.01 / Math.Sqrt(12)) with { Step = 0.01 }];
        Adjust(0);
        SpecimenValue height = Assert.Single(_values["head.height"]);
        // Squares of the deviations: of the distance 0.5²/12 + 0.05², which as a height is four times that, 0.0933333; of the height 0.01²/12 + 0.05², 0.0025083.
        double share = 0.0025083 / (0.0025083 + 0.0933333);
        Assert.Equal(TieEffect.Adjusted, height.Ties);
        Assert.Equal(Math.Max(2 * 0.5 * share, 0.01 * (1 - share)), height.Step, 1e-6);
    }

    /// <summary>The hole was read where it is worn, and at one end where it is not: that end tells it, 3.20 − 4.8/48, and no reading of the diameter itself is in it.</summary>
    [Fact]
    public void Adjust_WitnessAtOneEnd_ReplacesTheWornDiameterThatWasRead()
    {
        Read("hole.diameter", 3.18, worn: true);
        Read("hole.larger_side", 3.20, worn: false);
        Read("head.width", 9.6);
        Adjust(1.0 / 48);
        SpecimenValue middle = Assert.Single(_values["hole.diameter"]);
        Assert.Equal(3.10, middle.Value, 1e-6);
        Assert.Equal((false, TieEffect.Told), (middle.IsWorn, middle.Ties));
        SizeEstimate hole = SizeEstimator.Of(Measurands.Find("hole.diameter")!, [middle]);
        Assert.Equal((true, false), (hole.IsTied, hole.IsAdjusted));
    }

    private ImmutableArray<TieGroup> Adjust(double taper) => TiedSizes.Adjust(["A", "B"], _values, Measurands.Lever, taper);

    private void Read(string name, double value, double own = 0, double common = 0, bool worn = false) => _values[name] = [Value("A", value, own, common, worn)];

    private static SpecimenValue Value(string specimen, double value, double own = 0, double common = 0, bool worn = false) => new(specimen, value, worn, own, common, 1);
}
