using LeverDraw.Mechanism;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Tests.Mechanism;

/// <summary>The formula against the trade notes' worked example 5.1 and 5.2 (worked there by hand), and a right-angled lever worked here.</summary>
public sealed class LostMotionTests
{
    private const double Lead = 0.9;

    // h_a 21, psi 40°; h_t 8.5, or 9.5 with an iron 1 mm thicker.
    [Theory]
    [InlineData("new", 8.5, 0.10, 0.15, 0.08, 0.155, 0.897, 1.00)]
    [InlineData("worn", 8.5, 0.15, 0.40, 0.18, 0.405, 2.145, 2.38)]
    [InlineData("new, thick iron", 9.5, 0.10, 0.15, 0.08, 0.400, 1.378, 1.53)]
    [InlineData("worn, thick iron", 9.5, 0.15, 0.40, 0.18, 0.650, 2.535, 2.82)]
    public void Idle_WorkedStates_AreThoseOfTheTradeNotes(string state, double ironArm, double thread, double groove, double pivot, double slot, double idle, double turns)
    {
        Length x = Motion(ironArm).Idle(Gaps(thread, groove, pivot, slot));
        Assert.True(Math.Abs(x.Millimetres - idle) < 0.001, state);
        Assert.True(Math.Abs((x.Millimetres / Lead) - turns) < 0.006, state);
    }

    [Theory]
    [InlineData(8.5, 2.471, 3.300)]
    [InlineData(9.5, 2.211, 3.045)]
    public void Factors_WorkedStates_AreThoseOfTheTradeNotes(double ironArm, double k, double rho)
    {
        Assert.Equal(k, Motion(ironArm).Slot, 0.0006);
        Assert.Equal(rho, Motion(ironArm).Pivot, 0.0006);
    }

    [Theory]
    [InlineData(Gap.Thread, 0.17, 0.11)]
    [InlineData(Gap.Groove, 0.44, 0.11)]
    [InlineData(Gap.Pivot, 0.66, 0.37)]
    [InlineData(Gap.Slot, 1.11, 0.27)]
    public void Shares_OfTheWornState_AreThoseOfTheTradeNotes(Gap gap, double turns, double perTenth)
    {
        FourGaps worn = Gaps(0.15, 0.40, 0.18, 0.405);
        double factor = Motion(8.5).FactorOf(gap);
        Assert.Equal(turns, factor * worn[gap].Millimetres / Lead, 0.006);
        Assert.Equal(perTenth, factor * 0.1 / Lead, 0.006);
    }

    // Trade notes 5.2: what each action takes off the worn state, in turns.
    [Theory]
    [InlineData("oversize pin, re-ream", 0, 0, 0.10, 0, 0.37)]
    [InlineData("new lever", 0, 0.10, 0.06, 0.15, 0.74)]
    [InlineData("new nut", 0.05, 0.15, 0, 0, 0.22)]
    [InlineData("new cap iron", 0, 0, 0, 0.10, 0.27)]
    [InlineData("new lever and pin", 0, 0.10, 0.10, 0.15, 0.89)]
    public void Gains_OfEachAction_AreThoseOfTheTradeNotes(string action, double thread, double groove, double pivot, double slot, double gained) =>
        Assert.True(Math.Abs((Motion(8.5).Idle(Gaps(thread, groove, pivot, slot)).Millimetres / Lead) - gained) < 0.006, action);

    // Trade notes 5.1: ± tolerances, worst case ±0.73 turn, root sum square ±0.34; the tongue 64 % of the variance, the slot 16, the pad 11.
    [Fact]
    public void Tolerances_OfTheWorkedExample_AreThoseOfTheTradeNotes()
    {
        LostMotion m = Motion(8.5);
        (double PlusMinus, double Factor)[] sizes = [(0.10, 1), (0.05, 1), (0.05, 1), (0.015, m.Pivot), (0.01, m.Pivot), (0.10, m.Slot), (0.05, m.Slot)];
        ToleranceChain chain = new(sizes.Select(s => new ChainLink("size", Length.Zero, LimitDeviations.PlusMinus(Length.FromMillimetres(s.PlusMinus)), s.Factor)));
        Assert.Equal(0.73, chain.WorstCase.Max.Millimetres / Lead, 0.005);
        Assert.Equal(0.34, chain.RootSumSquare.Max.Millimetres / Lead, 0.005);
        double all = sizes.Sum(s => Math.Pow(s.PlusMinus * s.Factor, 2));
        Assert.Equal(0.64, Math.Pow(0.10 * m.Slot, 2) / all, 0.006);
        Assert.Equal(0.16, Math.Pow(0.05 * m.Slot, 2) / all, 0.006);
        Assert.Equal(0.11, Math.Pow(0.10, 2) / all, 0.006);
    }

    // By hand: arms 20 and 15 with their lines of push at a right angle: k = 4/3, the pin carries 5/3 of the nut's force (3-4-5).
    // 0.1 + 0.1 + 5/3·0.06 + 4/3·0.09 = 0.42 mm, half a turn of a 0.84 mm lead.
    [Fact]
    public void Idle_RightAngledLever_IsTheOneByHand()
    {
        LostMotion motion = LostMotion.Of(Length.FromMillimetres(20), Length.FromMillimetres(15), Angle.FromDegrees(90));
        Assert.Equal(4.0 / 3, motion.Slot, 12);
        Assert.Equal(5.0 / 3, motion.Pivot, 12);
        Assert.Equal(0.42, motion.Idle(Gaps(0.1, 0.1, 0.06, 0.09)).Millimetres, 12);
    }

    // By hand: a straight bar, both pushes one way: the pin carries the sum of them.
    [Fact]
    public void Pivot_ParallelPushes_IsTheirSum() =>
        Assert.Equal(3, LostMotion.Of(Length.FromMillimetres(20), Length.FromMillimetres(10), Angle.FromDegrees(0)).Pivot, 12);

    // Trade notes 5: c 0.23, w 9.2, h_a 21 swing 1.05 mm; c 0.04, w 9.5 swing 0.18.
    [Theory]
    [InlineData(0.23, 9.2, 1.05)]
    [InlineData(0.04, 9.5, 0.18)]
    public void SidePlay_WorkedCases_AreThoseOfTheTradeNotes(double clearance, double width, double swing) =>
        Assert.Equal(swing, SidePlay.Of(Length.FromMillimetres(21), Length.FromMillimetres(clearance), Length.FromMillimetres(width)).Millimetres, 0.005);

    private static LostMotion Motion(double ironArm) => LostMotion.Of(Length.FromMillimetres(21), Length.FromMillimetres(ironArm), Angle.FromDegrees(40));

    private static FourGaps Gaps(double thread, double groove, double pivot, double slot) =>
        new(Length.FromMillimetres(thread), Length.FromMillimetres(groove), Length.FromMillimetres(pivot), Length.FromMillimetres(slot));
}
