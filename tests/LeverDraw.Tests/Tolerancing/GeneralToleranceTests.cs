using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Tests.Tolerancing;

public sealed class GeneralToleranceTests
{
    // Both ends of every step. Three public tables of ISO 2768-1:1989 table 1 print these values.
    [Theory]
    [InlineData("f", 0.5, 0.05)]
    [InlineData("f", 3, 0.05)]
    [InlineData("m", 0.5, 0.1)]
    [InlineData("m", 3, 0.1)]
    [InlineData("c", 0.5, 0.2)]
    [InlineData("c", 3, 0.2)]
    [InlineData("f", 3.001, 0.05)]
    [InlineData("f", 6, 0.05)]
    [InlineData("m", 3.001, 0.1)]
    [InlineData("m", 6, 0.1)]
    [InlineData("c", 3.001, 0.3)]
    [InlineData("c", 6, 0.3)]
    [InlineData("v", 3.001, 0.5)]
    [InlineData("v", 6, 0.5)]
    [InlineData("f", 6.001, 0.1)]
    [InlineData("f", 30, 0.1)]
    [InlineData("m", 6.001, 0.2)]
    [InlineData("m", 30, 0.2)]
    [InlineData("c", 6.001, 0.5)]
    [InlineData("c", 30, 0.5)]
    [InlineData("v", 6.001, 1)]
    [InlineData("v", 30, 1)]
    [InlineData("f", 30.001, 0.15)]
    [InlineData("f", 120, 0.15)]
    [InlineData("m", 30.001, 0.3)]
    [InlineData("m", 120, 0.3)]
    [InlineData("c", 30.001, 0.8)]
    [InlineData("c", 120, 0.8)]
    [InlineData("v", 30.001, 1.5)]
    [InlineData("v", 120, 1.5)]
    [InlineData("f", 120.001, 0.2)]
    [InlineData("f", 400, 0.2)]
    [InlineData("m", 120.001, 0.5)]
    [InlineData("m", 400, 0.5)]
    [InlineData("c", 120.001, 1.2)]
    [InlineData("c", 400, 1.2)]
    [InlineData("v", 120.001, 2.5)]
    [InlineData("v", 400, 2.5)]
    [InlineData("f", 400.001, 0.3)]
    [InlineData("f", 1000, 0.3)]
    [InlineData("m", 400.001, 0.8)]
    [InlineData("m", 1000, 0.8)]
    [InlineData("c", 400.001, 2)]
    [InlineData("c", 1000, 2)]
    [InlineData("v", 400.001, 4)]
    [InlineData("v", 1000, 4)]
    [InlineData("f", 1000.001, 0.5)]
    [InlineData("f", 2000, 0.5)]
    [InlineData("m", 1000.001, 1.2)]
    [InlineData("m", 2000, 1.2)]
    [InlineData("c", 1000.001, 3)]
    [InlineData("c", 2000, 3)]
    [InlineData("v", 1000.001, 6)]
    [InlineData("v", 2000, 6)]
    [InlineData("m", 2000.001, 2)]
    [InlineData("m", 4000, 2)]
    [InlineData("c", 2000.001, 4)]
    [InlineData("c", 4000, 4)]
    [InlineData("v", 2000.001, 8)]
    [InlineData("v", 4000, 8)]
    public void OfLength_BothEndsOfEveryStep_IsThePublishedValue(string letter, double mm, double plusMinus)
    {
        LimitDeviations found = Class(letter).OfLength(Length.FromMillimetres(mm)).Value;
        Assert.Equal(plusMinus, found.Upper.Millimetres);
        Assert.Equal(-plusMinus, found.Lower.Millimetres);
    }

    // Both ends of every step; three public tables agree up to 30 mm, where the checks stop.
    [Theory]
    [InlineData("f", 0.5, 0.2)]
    [InlineData("f", 3, 0.2)]
    [InlineData("m", 0.5, 0.2)]
    [InlineData("m", 3, 0.2)]
    [InlineData("c", 0.5, 0.4)]
    [InlineData("c", 3, 0.4)]
    [InlineData("v", 0.5, 0.4)]
    [InlineData("v", 3, 0.4)]
    [InlineData("f", 3.001, 0.5)]
    [InlineData("f", 6, 0.5)]
    [InlineData("m", 3.001, 0.5)]
    [InlineData("m", 6, 0.5)]
    [InlineData("c", 3.001, 1)]
    [InlineData("c", 6, 1)]
    [InlineData("v", 3.001, 1)]
    [InlineData("v", 6, 1)]
    [InlineData("f", 6.001, 1)]
    [InlineData("f", 30, 1)]
    [InlineData("m", 6.001, 1)]
    [InlineData("m", 30, 1)]
    [InlineData("c", 6.001, 2)]
    [InlineData("c", 30, 2)]
    [InlineData("v", 6.001, 2)]
    [InlineData("v", 30, 2)]
    public void OfRadius_BothEndsOfEveryStepToThirty_IsThePublishedValue(string letter, double mm, double plusMinus) =>
        Assert.Equal(plusMinus, Class(letter).OfRadius(Length.FromMillimetres(mm)).Value.Upper.Millimetres);

    // Both ends of every step of the shorter side, arc minutes; two public tables.
    [Theory]
    [InlineData("f", 0.001, 60)]
    [InlineData("f", 10, 60)]
    [InlineData("m", 0.001, 60)]
    [InlineData("m", 10, 60)]
    [InlineData("c", 0.001, 90)]
    [InlineData("c", 10, 90)]
    [InlineData("v", 0.001, 180)]
    [InlineData("v", 10, 180)]
    [InlineData("f", 10.001, 30)]
    [InlineData("f", 50, 30)]
    [InlineData("m", 10.001, 30)]
    [InlineData("m", 50, 30)]
    [InlineData("c", 10.001, 60)]
    [InlineData("c", 50, 60)]
    [InlineData("v", 10.001, 120)]
    [InlineData("v", 50, 120)]
    [InlineData("f", 50.001, 20)]
    [InlineData("f", 120, 20)]
    [InlineData("m", 50.001, 20)]
    [InlineData("m", 120, 20)]
    [InlineData("c", 50.001, 30)]
    [InlineData("c", 120, 30)]
    [InlineData("v", 50.001, 60)]
    [InlineData("v", 120, 60)]
    [InlineData("f", 120.001, 10)]
    [InlineData("f", 400, 10)]
    [InlineData("m", 120.001, 10)]
    [InlineData("m", 400, 10)]
    [InlineData("c", 120.001, 15)]
    [InlineData("c", 400, 15)]
    [InlineData("v", 120.001, 30)]
    [InlineData("v", 400, 30)]
    [InlineData("f", 400.001, 5)]
    [InlineData("f", 2000, 5)]
    [InlineData("m", 400.001, 5)]
    [InlineData("m", 2000, 5)]
    [InlineData("c", 400.001, 10)]
    [InlineData("c", 2000, 10)]
    [InlineData("v", 400.001, 20)]
    [InlineData("v", 2000, 20)]
    public void OfAngle_BothEndsOfEveryStep_IsThePublishedValue(string letter, double shorterSide, double minutes) =>
        Assert.Equal(minutes, Class(letter).OfAngle(Length.FromMillimetres(shorterSide)).Value.Degrees * 60, 9);

    [Theory]
    [InlineData("f", 2000.001, "2000")]
    [InlineData("v", 3, "3 mm")]
    [InlineData("m", 0.499, "0.5")]
    [InlineData("m", 4000.001, "4000")]
    public void OfLength_OutsideTheClass_IsRefusedWithTheRange(string letter, double mm, string range)
    {
        Answer<LimitDeviations> answer = Class(letter).OfLength(Length.FromMillimetres(mm));
        Assert.False(answer.IsGiven);
        Assert.Contains(range, answer.Refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void OfAngle_NoShorterSide_IsRefused() => Assert.False(Class("m").OfAngle(Length.Zero).IsGiven);

    [Theory]
    [InlineData("M")]
    [InlineData("")]
    [InlineData("fm")]
    [InlineData("x")]
    public void Lettered_NoSuchClass_IsRefused(string text) => Assert.False(GeneralToleranceClasses.Lettered(text).IsGiven);

    [Fact]
    public void Text_Medium_IsAsInTheTitleBlock() => Assert.Equal("ISO 2768-m", Class("m").Text);

    private static GeneralTolerance Class(string letter) => new(GeneralToleranceClasses.Lettered(letter).Value);
}
