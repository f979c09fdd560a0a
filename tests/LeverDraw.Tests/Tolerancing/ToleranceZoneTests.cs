using CsCheck;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;

namespace LeverDraw.Tests.Tolerancing;

public sealed class ToleranceZoneTests
{
    [Theory]
    [InlineData("H8", FitFeature.Hole, DeviationLetter.H, 8)]
    [InlineData("f7", FitFeature.Shaft, DeviationLetter.F, 7)]
    [InlineData("js6", FitFeature.Shaft, DeviationLetter.JS, 6)]
    [InlineData("JS9", FitFeature.Hole, DeviationLetter.JS, 9)]
    [InlineData("s18", FitFeature.Shaft, DeviationLetter.S, 18)]
    [InlineData("C1", FitFeature.Hole, DeviationLetter.C, 1)]
    public void Parse_Zone_IsRead(string text, FitFeature feature, DeviationLetter letter, int grade)
    {
        ToleranceZone zone = ToleranceZone.Parse(text).Value;
        Assert.Equal((feature, letter, grade), (zone.Feature, zone.Letter, zone.Grade));
        Assert.Equal(text, zone.Text);
    }

    [Theory]
    [InlineData("")]
    [InlineData("H")]
    [InlineData("8")]
    [InlineData("H0")]
    [InlineData("H19")]
    [InlineData("H08")]
    [InlineData("H8 ")]
    [InlineData(" H8")]
    [InlineData("H 8")]
    [InlineData("Js7")]
    [InlineData("jS7")]
    [InlineData("A9")]
    [InlineData("j6")]
    [InlineData("cd6")]
    [InlineData("h6.5")]
    [InlineData("h-6")]
    [InlineData("h\u0666")]
    [InlineData("H7/g6")]
    [InlineData("8H")]
    [InlineData("h100")]
    public void Parse_BadText_IsRefusedNamingTheTextAndTheLetters(string text)
    {
        Answer<ToleranceZone> answer = ToleranceZone.Parse(text);
        Assert.False(answer.IsGiven);
        Assert.Contains("\"" + text + "\"", answer.Refusal, StringComparison.Ordinal);
        Assert.Contains("grade 1 to 18", answer.Refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void Parse_OwnText_IsIdentity() =>
        Gen.Select(Gen.Bool, Gen.Enum<DeviationLetter>(), Gen.Int[1, 18]).Sample((hole, letter, grade) =>
        {
            ToleranceZone zone = hole ? ToleranceZone.Hole(letter, grade) : ToleranceZone.Shaft(letter, grade);
            Assert.Equal(zone, ToleranceZone.Parse(zone.Text).Value);
        });

    [Fact]
    public void Parse_AnyText_IsReadBackOrRefused() =>
        Gen.String[Gen.Char["0123456789hHjJsSkKzZ./ "], 0, 5].Sample(text =>
        {
            Answer<ToleranceZone> answer = ToleranceZone.Parse(text);
            if (answer.IsGiven)
                Assert.Equal(text, answer.Value.Text);
        });

    [Theory]
    [InlineData(0)]
    [InlineData(19)]
    public void Hole_NoSuchGrade_Throws(int grade) => Assert.Throws<ArgumentOutOfRangeException>(() => ToleranceZone.Hole(DeviationLetter.H, grade));
}
