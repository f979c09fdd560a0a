using System.Collections.Immutable;
using LeverDraw.Comparison;
using LeverDraw.Geometry;
using LeverDraw.Parts;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Tests.Support;
using LeverDraw.Units;

namespace LeverDraw.Tests.Comparison;

public sealed class LeverComparisonTests
{
    [Theory]
    [InlineData(Alignment.Pivot)]
    [InlineData(Alignment.Pads)]
    [InlineData(Alignment.Nose)]
    public void Of_VariantWithItself_DiffersInNothing(Alignment alignment)
    {
        foreach (string name in ShippedProfiles.Names)
        {
            LeverComparison same = OverlayPairs.Compare(name, name, alignment);
            Assert.Empty(same.Sizes);
            Assert.DoesNotContain(same.Figures, f => f.Differs);
            foreach (ViewOverlay view in (ViewOverlay[])[same.Side, same.Fork])
            {
                Assert.Equal((0, 0), (view.Areas.OnlyA.Area, view.Areas.OnlyB.Area));
                Assert.Equal(0, view.AFromB.Distance.Millimetres + view.BFromA.Distance.Millimetres, 2 * LargestDistance.Error);
            }
        }
    }

    /// <summary>Arms of 21 and 16 (trade notes 6.1): the smaller lever's pads go 5 down to meet the larger one's. Noses at 11.3 and 8.8, both at 40°: 2.5 along the tongue.</summary>
    [Fact]
    public void Of_Aligned_MovesTheSecondOntoTheFirst()
    {
        Vector2D pads = OverlayPairs.Compare("early", "smallest", Alignment.Pads).Shift, nose = OverlayPairs.Compare("early", "smallest", Alignment.Nose).Shift;
        Assert.Equal((0, -5), (Math.Round(pads.X, 9), Math.Round(pads.Y, 9)));
        double sweep = 40 * Math.PI / 180;
        Assert.Equal(2.5 * Math.Sin(sweep), nose.X, 9);
        Assert.Equal(2.5 * Math.Cos(sweep), nose.Y, 9);
        Assert.Equal(default, OverlayPairs.Compare("early", "smallest").Shift);
    }

    /// <summary>By hand from the table of eras: round heads of 9 and 7.2 about one pivot are 0.9 apart, and nothing of that pair lies farther.</summary>
    [Fact]
    public void Of_EarlyAndLate_HeadStandsOutByHalfTheDifferenceOfDepths()
    {
        ViewOverlay side = OverlayPairs.Compare("early", "late").Side;
        Assert.Equal(0.9, side.AFromB.Distance.Millimetres, 1e-6);
        Assert.True(side.AFromB.Outside);
        Assert.Equal(0.9, side.BFromA.Distance.Millimetres, 1e-6);
        Assert.False(side.BFromA.Outside);
    }

    /// <summary>Both arms' modulus 2·aw·ta²/6 by hand: 2·5.5·4.2²/6 = 32.34, 2·5.2·3.6²/6 = 22.464, 2·5·3²/6 = 15.</summary>
    [Theory]
    [InlineData("early", 32.34)]
    [InlineData("middle", 22.464)]
    [InlineData("late", 15)]
    public void Strength_OfShipped_IsByHand(string name, double modulus) =>
        Assert.Equal(modulus, ArmStrength.Of(OverlayPairs.Variant(name).Lever).Modulus, 9);

    /// <summary>
    /// By hand, at z = −8: the lever arm is 21 − 8 = 13. Outside, a sharp shoulder from (4.75, 0) to (12.5, −12.5) is at 4.75 + 7.75 · 8/12.5 = 9.71; inside, the crotch's arc about (0.5, −12.5) of 6.5 is at 0.5 + √(6.5² − 4.5²) = 5.19:
    /// 4.52 wide, 13/(2 · 4.52 · 4.2²/6) = 0.489. The shoulder's fillet sets it lower by less than 1 mm, which at the same level takes less than 0.4 off the width: at most 0.536. Below the arc the arms are whole: 8.5/32.34 = 0.263; so the weakest level lies between.
    /// </summary>
    [Fact]
    public void Stress_OfEarly_LiesBetweenTheCrotchsEnds()
    {
        ArmStrength strength = ArmStrength.Of(OverlayPairs.Variant("early").Lever);
        Assert.InRange(strength.StressPerNewton, 0.489, 0.536);
        Assert.InRange(strength.WeakestLevel.Millimetres, 7, 10);
    }

    /// <summary>Shown with two decimals; a shoulder's or crotch's arc must not hide between two levels.</summary>
    [Fact]
    public void Stress_TenTimesFinerLevels_ShowsTheSame()
    {
        foreach (Lever lever in OverlayPairs.RandomLeversOf(40))
            Assert.Equal(ArmStrength.Of(lever, 20_000).StressPerNewton, ArmStrength.Of(lever).StressPerNewton, 0.0005);
    }

    /// <summary>By hand: round head 7.2 deep, 9.2 wide, hole 2.8 parallel: 9.2 · (7.2 − 2.8) = 40.48 were the chord at the axis just the head; blends only add.</summary>
    [Fact]
    public void HoleSection_OfLate_IsTheMetalBesideTheHole() =>
        Assert.InRange(ArmStrength.Of(OverlayPairs.Variant("late").Lever).HoleSection, 40.48 - 1e-6, 50);

    /// <summary>The trade notes' table of eras, its differences taken by hand.</summary>
    [Theory]
    [InlineData("early", "middle", "arms.thickness", -0.6)]
    [InlineData("early", "middle", "head.depth", -0.8)]
    [InlineData("early", "middle", "head.height", -0.5)]
    [InlineData("early", "middle", "arms.width", -0.3)]
    [InlineData("early", "middle", "pads.thickness", -0.25)]
    [InlineData("early", "middle", "hole.diameter", -0.366)]
    [InlineData("early", "middle", "tongue.thickness", -0.1)]
    [InlineData("middle", "late", "arms.thickness", -0.6)]
    [InlineData("middle", "late", "head.width", -0.3)]
    [InlineData("middle", "late", "hole.diameter", -0.257)]
    [InlineData("late", "smallest", "fork.gap", -2.6)]
    [InlineData("late", "smallest", "arms.length", -5)]
    [InlineData("late", "smallest", "tongue.length", -2.5)]
    [InlineData("smallest", "late", "tongue.length", 2.5)]
    public void Sizes_OfTheEras_DifferAsTheTableSays(string a, string b, string field, double delta) =>
        Assert.Equal(delta, OverlayPairs.Compare(a, b).Sizes.Single(r => r.Name == field).Delta!.Value.Millimetres, 9);

    /// <summary>Curved arms carry the rare lever's pads aside, by 1/8 in (its profile, invented, to three decimals of the sagitta); straight ones none: that decides whether one replaces the other.</summary>
    [Fact]
    public void Sizes_OfACurvedArm_TellHowFarThePadsStandAside()
    {
        ComparedRow row = OverlayPairs.Compare("middle", "rare").Sizes.Single(r => r.Name == "arms.pad_shift");
        Assert.Equal(3.175, row.Delta!.Value.Millimetres, 5);
        Assert.Equal(Matter.Fit, row.Matters);
        Assert.DoesNotContain(OverlayPairs.Compare("middle", "late").Sizes, r => r.Name == "arms.pad_shift");
    }

    [Fact]
    public void Sizes_EqualInBoth_AreNotListed()
    {
        string[] listed = [.. OverlayPairs.Compare("early", "middle").Sizes.Select(r => r.Name)];
        Assert.DoesNotContain("arms.length", listed);
        Assert.DoesNotContain("fork.gap", listed);
        // The bosses of the early lever are gone in the middle one: 9.5 + 2 · 0.5 against 9.5.
        Assert.Contains("boss.sides", listed);
        Assert.Contains("head.over_faces", listed);
    }

    /// <summary>Levels that follow from other sizes are seen in the overlay, so the table has them. Invented levers: the head's half height and the web of 1 under it, 3.75 + 1 and 4.75 + 1; below that the crotch's radius, 5 and 6.5.</summary>
    [Fact]
    public void Sizes_OfTheFork_HaveItsLevelsAsTheSheetsDo()
    {
        ImmutableArray<ComparedRow> rows = OverlayPairs.Compare("smallest", "middle").Sizes;
        Assert.Equal(["4.75", "5.75"], ValueText.Of(rows.Single(r => r.Name == "fork.gap_top"), LengthUnit.Millimetre));
        Assert.Equal(["9.75", "12.25"], ValueText.Of(rows.Single(r => r.Name == "fork.shoulder_end"), LengthUnit.Millimetre));
        // Neither has bosses: the head's width says what stands between the lugs.
        Assert.DoesNotContain(rows, r => r.Name == "head.over_faces");
        // A concave shoulder ends where its radius takes it.
        Assert.DoesNotContain(OverlayPairs.Compare("middle", "rare").Sizes, r => r.Name == "fork.shoulder_end");
    }

    /// <summary>Play of the eras with their pins, trade notes 6.1: 0.04, 0.08, 0.23, 0.14.</summary>
    [Theory]
    [InlineData("early", "middle", 0.04, 0.08)]
    [InlineData("late", "smallest", 0.23, 0.14)]
    public void Sizes_WithPins_TellThePlay(string a, string b, double first, double second)
    {
        BuiltPart[] pins = [.. ((string[])[a, b]).Select(n => PartKinds.Pin.Build(SheetMaker.Profile("pins/" + n)).Value!)];
        LeverComparison both = LeverComparison.Of(OverlayPairs.Variant(a).WithPinOf(pins), OverlayPairs.Variant(b).WithPinOf(pins), Alignment.Pivot);
        ComparedRow play = both.Sizes.Single(r => r.Name == "hole.play");
        Assert.Equal(Matter.Fit, play.Matters);
        Assert.Equal([first, second], play.Values.Select(v => Math.Round(((ComparedSize)v!).Size.Millimetres, 2)));
        Assert.Contains(both.Sizes, r => r.Name == "pin.at_large_end");
    }
}
