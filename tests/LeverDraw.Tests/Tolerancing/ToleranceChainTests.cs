using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Tests.Tolerancing;

public sealed class ToleranceChainTests
{
    // Published worked example, reference table 11a, source S132 (a public page on tolerance stacks, "three parts in a housing"), inch:
    // 4.020 ±0.005 less 2.000 ±0.003, 1.500 ±0.002 and 0.500 ±0.005; it prints worst case ±0.015 and root sum square ±0.00794 about 0.020.
    [Fact]
    public void Chain_ThreePartsInAHousing_AgreesWithThePublishedExample()
    {
        ToleranceChain chain = new(
        [
            Link(4.02, 0.005, 1),
            Link(2, 0.003, -1),
            Link(1.5, 0.002, -1),
            Link(0.5, 0.005, -1),
        ]);
        Assert.Equal(0.02, chain.Nominal.Inches, 12);
        Assert.Equal(0.005, chain.WorstCase.Min.Inches, 12);
        Assert.Equal(0.035, chain.WorstCase.Max.Inches, 12);
        Assert.Equal(0.02 + 0.00794, chain.RootSumSquare.Max.Inches, 5);
    }

    // Published, reference table 11a, sources S133 (a public machining tool's page, both) and S134 (a page that explains the root sum square, ten parts):
    // five (ten) equal parts of ±0.1 mm; they print worst case ±0.5 (±1.0) and root sum square ±0.224 (±0.316).
    [Theory]
    [InlineData(5, 0.5, 0.224)]
    [InlineData(10, 1.0, 0.316)]
    public void Chain_EqualParts_AgreesWithThePublishedExample(int parts, double worst, double statistical)
    {
        ToleranceChain chain = new(Enumerable.Range(0, parts).Select(_ => new ChainLink("part", Length.Zero, Pm(Length.FromMillimetres(0.1)))));
        Assert.Equal(worst, chain.WorstCase.Max.Millimetres, 9);
        Assert.Equal(statistical, chain.RootSumSquare.Max.Millimetres, 3);
    }

    // Reference table 11a, source S131 (a public page on housing gaps), mm: 40 ±0.1 less 25 ±0.05, 2 ±0.03 and 10 ±0.05. The page prints the gap of 3.00;
    // its other results were not at hand, so by hand: 0.1 + 0.05 + 0.03 + 0.05 = 0.23 and √(0.01 + 0.0025 + 0.0009 + 0.0025) = 0.126095.
    [Fact]
    public void Chain_HousingGap_HasThePublishedGap()
    {
        (double Size, double PlusMinus, double Factor)[] links = [(40, 0.1, 1), (25, 0.05, -1), (2, 0.03, -1), (10, 0.05, -1)];
        ToleranceChain chain = new(links.Select(l => new ChainLink("part", Length.FromMillimetres(l.Size), Pm(Length.FromMillimetres(l.PlusMinus)), l.Factor)));
        Assert.Equal(3, chain.Nominal.Millimetres, 12);
        Assert.Equal(3.23, chain.WorstCase.Max.Millimetres, 9);
        Assert.Equal(3.126095, chain.RootSumSquare.Max.Millimetres, 6);
    }

    // By hand: 10 (+0.2/0) minus 4 (0/−0.1): middle 10.1 − 3.95 = 6.15, width 0.3, √(0.2² + 0.1²)/2 = 0.111803.
    [Fact]
    public void Chain_OneSidedDeviations_ShiftTheMiddle()
    {
        ToleranceChain chain = new(
        [
            new ChainLink("slot", Length.FromMillimetres(10), new LimitDeviations(Length.Zero, Length.FromMillimetres(0.2))),
            new ChainLink("tongue", Length.FromMillimetres(4), new LimitDeviations(Length.FromMillimetres(-0.1), Length.Zero), -1),
        ]);
        Assert.Equal(6, chain.Nominal.Millimetres, 12);
        Assert.Equal(6.0, chain.WorstCase.Min.Millimetres, 12);
        Assert.Equal(6.3, chain.WorstCase.Max.Millimetres, 12);
        Assert.Equal(6.15 + 0.111803, chain.RootSumSquare.Max.Millimetres, 6);
    }

    // By hand: a lever of 2:1 doubles 3 ±0.1 to 6 ±0.2.
    [Fact]
    public void Chain_Factor_ScalesNominalAndTolerance()
    {
        ToleranceChain chain = new([new ChainLink("arm", Length.FromMillimetres(3), Pm(Length.FromMillimetres(0.1)), 2)]);
        Assert.Equal(5.8, chain.WorstCase.Min.Millimetres, 12);
        Assert.Equal(6.2, chain.RootSumSquare.Max.Millimetres, 12);
    }

    [Fact]
    public void Chain_Empty_IsZero() => Assert.Equal(Length.Zero, new ToleranceChain([]).WorstCase.Width);

    private static ChainLink Link(double inches, double plusMinus, double factor) =>
        new("part", Length.FromInches(inches), Pm(Length.FromInches(plusMinus)), factor);

    private static LimitDeviations Pm(Length value) => LimitDeviations.PlusMinus(value);
}
