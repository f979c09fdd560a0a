using System.Collections.Immutable;
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

    // Common practice, no source: a thicker cap iron adds backlash. By geometry it does so only with its broken edge (decision 0009): a slanted flank bears on the lower end of the slot's faces,
    // which lies on the iron, over the broken edge; what the cap iron has above it moves nothing.
    [Theory]
    [InlineData("early")]
    [InlineData("middle")]
    [InlineData("late")]
    [InlineData("smallest")]
    public void CapIron_Thicker_AddsBacklashOnlyByItsBrokenEdge(string name)
    {
        Linkage before = DiskProfiles.Setup(name).Linkage;
        Linkage sameEdge = Linkage.Of(WithCapIron(before.Assembly, 1, 0))!, largerEdge = Linkage.Of(WithCapIron(before.Assembly, 1, 0.15))!;
        Assert.Equal(before.Turns(before.Idle), sameEdge.Turns(sameEdge.Idle), 1e-12);
        Assert.Equal(before.ExactIdle()!.Value.Millimetres, sameEdge.ExactIdle()!.Value.Millimetres, 1e-9);
        Assert.True(largerEdge.Turns(largerEdge.Idle) > before.Turns(before.Idle) + 0.02);
        // The broken edge lifts the bearing as an iron thicker by as much does.
        Linkage iron = Linkage.Of(WithIron(before.Assembly, 0.15))!;
        Assert.Equal(iron.Turns(iron.Idle), largerEdge.Turns(largerEdge.Idle), 1e-9);
    }

    // Common practice, no source: early pins and holes are closer than late ones.
    [Fact]
    public void Pivot_EarlyLever_IsCloserThanTheLateOne()
    {
        double[] play = [.. new[] { "early", "middle", "late" }.Select(n => DiskProfiles.Setup(n).Linkage.Typical.Pivot.Millimetres)];
        Assert.True(play[0] < play[1] && play[1] < play[2]);
    }

    // Trade notes 6.1 foretell 0.58, 1.00, 2.12 and 1.48 turns for planes whose tongue bears 2 mm nearer to the pivot than on ours (decision 0009): the order stays.
    [Fact]
    public void Eras_Unworn_StandInTheirOrder()
    {
        double[] turns = [.. new[] { "early", "middle", "smallest", "late" }.Select(n => DiskProfiles.Setup(n).Linkage).Select(l => l.Turns(l.Idle))];
        Assert.Equal(turns.Order(), turns);
        Assert.InRange(turns[0], 0.4, 0.7);
        Assert.InRange(turns[3], 1.6, 2.3);
    }

    // Trade notes 6.1 itself: pivot 6.0 (4.2) below the bed and the tongue bearing at 8.5 (6.5), 0.8 below the nose centre; the gaps come from the drawn outline, the arms are the notes' plain ones.
    [Theory]
    [InlineData("early", 9.3, 6.0, 8.5, 0.58)]
    [InlineData("middle", 9.3, 6.0, 8.5, 1.00)]
    [InlineData("late", 9.3, 6.0, 8.5, 2.12)]
    [InlineData("smallest", 7.3, 4.2, 6.5, 1.48)]
    public void Eras_WithTheTradeNotesArms_LoseWhatTheyForetell(string name, double nose, double pivot, double height, double turns)
    {
        Assembly ours = DiskProfiles.Setup(name).Found;
        Lever lever = LeverPart.Build(DemoLevers.Named(name).With(LeverFields.TongueLength, nose)).Value!;
        Linkage linkage = Linkage.Of(ours with { Lever = lever, Plane = ours.Plane with { PivotDepth = new SizeValue(Length.FromMillimetres(pivot)) } })!;
        Assert.Equal(height, linkage.Bearing.Height.Millimetres, 0.01);
        // At nominal sizes, as the notes reckon: no tolerance that lies to one side only.
        double lost = linkage.Turns(LostMotion.Of(linkage.NutArm, Length.FromMillimetres(height), linkage.StudAngle).Idle(Nominal(linkage)));
        Assert.Equal(turns, lost, 0.02);
    }

    private static FourGaps Nominal(Linkage linkage)
    {
        Assembly a = linkage.Assembly;
        Length tongue = linkage.Bearing.Thickness - a.TongueChange.Mid;
        return new FourGaps(
            a.Plane.Nut.Play.Nominal, a.Plane.Nut.Groove.Nominal - a.Lever.Sizes[LeverFields.PadThickness].Nominal, a.Lever.Sizes[LeverFields.HoleDiameter].Nominal - a.Pin.Middle, a.Plane.CapIron.Slot.Nominal - tongue);
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

    // 1.323 and 1.326 of the invented smallest plane: 1.32 beside gaps that add up to 1.33. 0.852 and 0.853 of the middle one both read 0.85.
    [Theory]
    [InlineData("smallest", true)]
    [InlineData("middle", false)]
    public void FormulaAndExact_ThatReadOtherwise_AreToldApart(string setup, bool differ)
    {
        LostTurns lost = LostTurns.Of("", DiskProfiles.Setup(setup).Linkage);
        Assert.Equal(differ, lost.Differ);
    }

    [Fact]
    public void LargeGaps_FormulaAndExact_AreToldApart()
    {
        Setup setup = DiskProfiles.Setup("late");
        Assembly worn = setup.Found with { Hole = new SizeLimits(Length.FromMillimetres(3.4), Length.FromMillimetres(3.4)) };
        LostTurns lost = LostTurns.Of("worn", Linkage.Of(worn)!);
        Assert.True(lost.Differ);
        Assert.False(lost.GapsAreSmall);
        Assert.Equal(lost.Exact, lost.Meant);
    }

    [Fact]
    public void SmallGaps_FormulaAndExact_AreToldToBeTheSame()
    {
        LostTurns lost = LostTurns.Of("new", DiskProfiles.Setup("early").Linkage);
        Assert.True(lost.GapsAreSmall);
        Assert.Equal(lost.Exact!.Value, lost.Formula, 0.001);
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

    // By hand: pads worn to 2.8 still run in a groove closed up to 2.95, a new lever's 3.05 do not go in: that set is no cure at any price.
    [Fact]
    public void Cures_NewPartThatDoesNotGoIn_IsNoCure()
    {
        Setup setup = DiskProfiles.Setup("rattling");
        Assembly found = setup.Found with
        {
            Pad = new SizeLimits(Length.FromMillimetres(2.8), Length.FromMillimetres(2.8)),
            Plane = setup.Found.Plane with { Nut = setup.Found.Plane.Nut with { Groove = new SizeValue(Length.FromMillimetres(2.95)) } },
        };
        ImmutableArray<Cure> cures = Cures.All(setup with { Found = found, Linkage = Linkage.Of(found)! });
        Assert.Null(cures.Single(c => c.Parts.SequenceEqual([MechanismPart.Lever])).Turns);
        Assert.NotNull(cures.Single(c => c.Parts.IsEmpty).Turns);
        Assert.NotNull(cures.Single(c => c.Parts.Length == 2 && c.Parts.Contains(MechanismPart.Lever) && c.Parts.Contains(MechanismPart.Nut)).Turns);
    }

    [Fact]
    public void Report_SameQuestion_GivesTheSameNumbers()
    {
        Setup setup = DiskProfiles.Setup("middle");
        Assert.Equal(BacklashReport.Of(setup, new BacklashQuestion(Draws: 5000)).Simulation, BacklashReport.Of(setup, new BacklashQuestion(Draws: 5000)).Simulation);
    }

    // Reckoned apart from the profiles' sizes, by hand and with Python 3's random.gauss (seed 1, 300,000 draws, limits at three deviations; the iron's thickness, a hundredth of the variance, held still).
    // Arms 21 and 10.5 − 4.075/2·tan 8° = 10.2136, so k = 2.05607; the flank presses 8° off the bed, so the pin carries √(1 + (k/cos 8°)² + 2·k/cos 8°·cos(40° ± 8°)), 2.90808 in the middle.
    // (0.15 + 0.5 + 2.90808·0.18 + 2.05607·0.405)/0.9 = 2.22907 turns.
    [Fact]
    public void Rattling_LostTurns_AreThoseReckonedApart()
    {
        BacklashReport report = BacklashReport.Of(DiskProfiles.Setup("rattling"), new BacklashQuestion(Draws: 400_000));
        Assert.Equal(2.22907, report.Now.Formula, 1e-4);
        Assert.Equal([0.0748, 0.2492, 0.2609, 0.4151], report.Shares.Select(s => Math.Round(s.Share, 4)));
        Assert.Equal(2.2292, report.Simulation.Mean.Value, 0.001);
        Assert.Equal(2.1506, report.Simulation.LowEnd.Value, 0.002);
        Assert.Equal(2.3078, report.Simulation.HighEnd.Value, 0.002);
        // The other eight allow 0.3095 at worst, 0.1204 by the root sum square. A millimetre more of iron takes 2·tan 8° off the tongue and makes the iron's arm 1.0197 longer:
        // (0.578 − 0.083 − 0.036)/0.9 = 0.51 turn, times its 0.02 is 0.0102.
        (double least, double most) = report.InTurns(report.Tolerances.WorstCase);
        Assert.Equal(0.3095 + 0.0102, (most - least) / 2, 0.001);
        (double low, double high) = report.InTurns(report.Tolerances.RootSumSquare);
        Assert.Equal(Math.Sqrt((0.1204 * 0.1204) + (0.0102 * 0.0102)), (high - low) / 2, 0.001);
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

    private static Assembly WithCapIron(Assembly assembly, double thicker, double edge)
    {
        CapIron cap = assembly.Plane.CapIron;
        return assembly with { Plane = assembly.Plane with { CapIron = cap with { Thickness = More(cap.Thickness, thicker), EdgeBreak = More(cap.EdgeBreak, edge) } } };
    }

    private static SizeValue More(SizeValue size, double millimetres) => new(size.Nominal + Length.FromMillimetres(millimetres));

    private static Assembly WithIron(Assembly assembly, double thicker)
    {
        CuttingIron iron = assembly.Plane.Iron;
        return assembly with { Plane = assembly.Plane with { Iron = iron with { Thickness = new SizeValue(iron.Thickness.Nominal + Length.FromMillimetres(thicker)) } } };
    }
}
