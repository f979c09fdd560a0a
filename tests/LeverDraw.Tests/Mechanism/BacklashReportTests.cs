using LeverDraw.Mechanism;
using LeverDraw.Mechanism.Setups;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.HostPlanes;
using LeverDraw.Profiles;
using LeverDraw.Tests.Support;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Tests.Mechanism;

public sealed class BacklashReportTests
{
    // Common practice, no source: a serviceable groove alone costs about an eighth of a turn, a badly worn one about half a turn.
    [Theory]
    [InlineData("middle", null, 0.125)]
    [InlineData("middle", 3.5, 0.5)]
    [InlineData("early", null, 0.125)]
    [InlineData("early", 3.75, 0.5)]
    public void Groove_Alone_CostsWhatCommonPracticeSays(string name, double? worn, double turns)
    {
        Assembly found = DiskProfiles.Setup(name).Found;
        if (worn is { } width)
            found = found with { Plane = found.Plane with { Nut = found.Plane.Nut with { Groove = new SizeValue(Length.FromMillimetres(width)) } } };
        Assert.Equal(turns, GapShare.Of(Linkage.Of(found)!).Single(s => s.Gap == Gap.Groove).Turns, 0.02);
    }

    // Common practice, no source: a thicker iron adds backlash.
    [Theory]
    [InlineData("early")]
    [InlineData("middle")]
    [InlineData("late")]
    [InlineData("smallest")]
    public void Iron_Thicker_AddsBacklash(string name)
    {
        Linkage before = DiskProfiles.Setup(name).Linkage, after = Linkage.Of(WithIron(before.Assembly, 0.6))!;
        Assert.True(after.Turns(after.Idle) > before.Turns(before.Idle) + 0.1);
    }

    // Common practice, no source: early pins and holes are closer than late ones.
    [Fact]
    public void Pivot_EarlyLever_IsCloserThanTheLateOne()
    {
        double[] play = [.. new[] { "early", "middle", "late" }.Select(n => DiskProfiles.Setup(n).Linkage.Typical.Pivot.Millimetres)];
        Assert.True(play[0] < play[1] && play[1] < play[2]);
    }

    // Trade notes 6.1 foretell 0.58, 1.00, 2.12 and 1.48 turns for planes whose tongue bears 2 mm nearer to the pivot than on ours: the order stays.
    [Fact]
    public void Eras_Unworn_StandInTheirOrder()
    {
        double[] turns = [.. new[] { "early", "middle", "smallest", "late" }.Select(n => DiskProfiles.Setup(n).Linkage).Select(l => l.Turns(l.Idle))];
        Assert.Equal(turns.Order(), turns);
        Assert.InRange(turns[0], 0.4, 0.7);
        Assert.InRange(turns[3], 1.6, 2.3);
    }

    // By hand from the profile's sizes: pivot 8 + iron 2.2 + broken edge 0.3; the flank of 8° bears 0.8 below the nose centre (11.3): 4 + 2·0.8·tan 8° = 4.225.
    [Fact]
    public void Bearing_MiddleLever_IsByHand()
    {
        Bearing bearing = DiskProfiles.Setup("middle").Linkage.Bearing;
        Assert.Equal(10.5, bearing.Height.Millimetres, 9);
        Assert.Equal(4.225, bearing.Thickness.Millimetres, 0.001);
        Assert.Equal(8, bearing.Slope.Degrees, 6);
        // The nose's radius is 2·cos 8° = 1.9805, so the tip stands 11.3 + 1.9805 − 10.2 over the iron, and the flank ends 1.9805·sin 8° above the nose centre.
        Assert.Equal(3.0805, bearing.StandOut.Millimetres, 0.0002);
        Assert.Equal(1.0756, bearing.Land.Millimetres, 0.0002);
    }

    // By hand: arm of the nut 21; the flank presses 8° off the bed, so the iron's arm is 10.5 − 4.225/2·tan 8° = 10.203; 0.9·10.203/21 = 0.4373, times sin 45°.
    [Fact]
    public void Travel_MiddleLever_IsByHand()
    {
        Linkage linkage = DiskProfiles.Setup("middle").Linkage;
        Assert.Equal(10.203, linkage.IronArm.Millimetres, 0.001);
        Assert.Equal(0.4373, linkage.TravelPerTurn.Millimetres, 0.0001);
        Assert.Equal(0.3092, linkage.DepthPerTurn.Millimetres, 0.0001);
        TravelPoint middle = TravelPoint.Over(linkage, 9)[4];
        Assert.Equal(0.4373, middle.PerTurn!.Value.Millimetres, 0.001);
    }

    [Fact]
    public void Travel_AlongTheNutsWay_IsWhatTheRatiosSayTogether()
    {
        // The ratio of forces at an instant must be the slope of the iron's way: compare with small steps.
        Linkage linkage = DiskProfiles.Setup("early").Linkage;
        foreach (double nut in (double[])[-2, 0, 1.5])
        {
            double before = linkage.Solver.WithNutAt(nut - 1e-4, Drive.Advance)!.Value.Iron, after = linkage.Solver.WithNutAt(nut + 1e-4, Drive.Advance)!.Value.Iron;
            Assert.Equal((before - after) / 2e-4, linkage.Solver.WithNutAt(nut, Drive.Advance)!.Value.Ratio, 1e-5);
        }
    }

    [Fact]
    public void LargeGaps_FormulaAndExact_AreToldApart()
    {
        Setup setup = DiskProfiles.Setup("late");
        Assembly worn = setup.Found with { Hole = new SizeLimits(Length.FromMillimetres(3.4), Length.FromMillimetres(3.4)) };
        LostTurns lost = LostTurns.Of("worn", Linkage.Of(worn)!);
        Assert.True(lost.Differ);
        Assert.Equal(lost.Exact, lost.Meant);
    }

    [Fact]
    public void Cures_EverySet_IsWorkedOutAndTheCheapestReachesTheTarget()
    {
        Setup setup = DiskProfiles.Setup("rattling");
        BacklashReport report = BacklashReport.Of(setup, new BacklashQuestion(Draws: 100));
        Assert.Equal(16, report.Cures.Length);
        Assert.Equal(report.Cures.OrderBy(c => c.Price).Select(c => c.Price), report.Cures.Select(c => c.Price));
        Cure cheapest = report.Cheapest!;
        Assert.True(cheapest.Turns <= report.Target);
        Assert.DoesNotContain(report.Cures, c => c.Price < cheapest.Price && c.Turns <= report.Target);
        // All four new: what the unworn setup of the same parts loses.
        Linkage unworn = DiskProfiles.Setup("middle").Linkage;
        Assert.Equal(unworn.Turns(unworn.ExactIdle()!.Value), report.Cures.Single(c => c.Parts.Length == 4).Turns!.Value, 1e-9);
    }

    [Fact]
    public void Report_SameQuestion_GivesTheSameNumbers()
    {
        Setup setup = DiskProfiles.Setup("middle");
        Assert.Equal(BacklashReport.Of(setup, new BacklashQuestion(Draws: 5000)).Simulation, BacklashReport.Of(setup, new BacklashQuestion(Draws: 5000)).Simulation);
    }

    // The simulation follows the same sizes as the chain: for normal sizes its deviation is a third of the root sum square.
    [Fact]
    public void Simulation_NormalSizes_AgreesWithTheRootSumSquare()
    {
        BacklashReport report = BacklashReport.Of(DiskProfiles.Setup("middle"), new BacklashQuestion(Draws: 200_000));
        (double low, double high) = report.InTurns(report.Tolerances.RootSumSquare);
        Assert.Equal((high - low) / 6, report.Simulation.StandardDeviation, 0.001);
        Assert.Equal((high + low) / 2, report.Simulation.Mean.Value, 0.001);
    }

    private static Assembly WithIron(Assembly assembly, double thicker)
    {
        CuttingIron iron = assembly.Plane.Iron;
        return assembly with { Plane = assembly.Plane with { Iron = iron with { Thickness = new SizeValue(iron.Thickness.Nominal + Length.FromMillimetres(thicker)) } } };
    }
}
