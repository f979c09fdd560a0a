using System.Globalization;
using CsCheck;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Tests.Standards;

public sealed class TwistDrillsTests
{
    /// <summary>Two public tables print these number drills (#57 in one of them only), inch, from #80 down to #1.</summary>
    private const string PublishedNumbers =
        """
        0.0135 0.0145 0.016 0.018 0.02 0.021 0.0225 0.024 0.025 0.026 0.028 0.0292 0.031 0.032 0.033 0.035
        0.036 0.037 0.038 0.039 0.04 0.041 0.042 0.043 0.0465 0.052 0.055 0.0595 0.0635 0.067 0.07 0.073
        0.076 0.0785 0.081 0.082 0.086 0.089 0.0935 0.096 0.098 0.0995 0.1015 0.104 0.1065 0.11 0.111 0.113
        0.116 0.12 0.1285 0.136 0.1405 0.144 0.147 0.1495 0.152 0.154 0.157 0.159 0.161 0.166 0.1695 0.173
        0.177 0.18 0.182 0.185 0.189 0.191 0.1935 0.196 0.199 0.201 0.204 0.2055 0.209 0.213 0.221 0.228
        """;

    /// <summary>Three public tables print these letter drills, inch, from A to Z.</summary>
    private const string PublishedLetters =
        """
        0.234 0.238 0.242 0.246 0.25 0.257 0.261 0.266 0.272 0.277 0.281 0.29 0.295
        0.302 0.316 0.323 0.332 0.339 0.348 0.358 0.368 0.377 0.386 0.397 0.404 0.413
        """;

    [Fact]
    public void Numbers_AllEighty_AreThePublishedOnes()
    {
        double[] published = Values(PublishedNumbers);
        Assert.Equal(80, published.Length);
        for (int i = 0; i < 80; i++)
            Assert.Equal(published[i], TwistDrills.Named(string.Create(CultureInfo.InvariantCulture, $"#{80 - i}")).Value.Diameter.Inches, 9);
    }

    [Fact]
    public void Letters_AllTwentySix_AreThePublishedOnes()
    {
        double[] published = Values(PublishedLetters);
        Assert.Equal(26, published.Length);
        for (int i = 0; i < 26; i++)
            Assert.Equal(published[i], TwistDrills.Named(((char)('A' + i)).ToString()).Value.Diameter.Inches, 9);
    }

    [Theory]
    [InlineData("1/64", 0.015625)]
    [InlineData("7/64", 0.109375)]
    [InlineData("1/8", 0.125)]
    [InlineData("3/4", 0.75)]
    [InlineData("1", 1)]
    public void Fractions_Named_AreExact(string name, double inches) => Assert.Equal(inches, TwistDrills.Named(name).Value.Diameter.Inches, 12);

    [Theory]
    [InlineData("2/64")]
    [InlineData("#0")]
    [InlineData("#81")]
    [InlineData("a")]
    [InlineData("")]
    public void Named_NoSuchDrill_IsRefused(string name) => Assert.False(TwistDrills.Named(name).IsGiven);

    [Fact]
    public void NearestNotAbove_AnySize_IsTheLastDrillThatFits() =>
        Gen.Double[0.0135, 1.0].Sample(inches =>
        {
            Length wanted = Length.FromInches(inches);
            TwistDrill found = TwistDrills.NearestNotAbove(wanted).Value;
            Assert.True(found.Diameter.Millimetres <= wanted.Millimetres + 1e-6);
            Assert.DoesNotContain(TwistDrills.All, d => d.Diameter > found.Diameter && d.Diameter.Millimetres <= wanted.Millimetres - 1e-6);
        });

    [Fact]
    public void All_Sorted_HoldsEveryDrillOnce()
    {
        Assert.Equal(80 + 26 + 64, TwistDrills.All.Length);
        Assert.Equal(TwistDrills.All.Length, TwistDrills.All.Select(d => d.Name).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(TwistDrills.All.OrderBy(d => d.Diameter.Millimetres).Select(d => d.Diameter), TwistDrills.All.Select(d => d.Diameter));
        Assert.False(TwistDrills.NearestNotAbove(Length.FromInches(0.0134)).IsGiven);
        Assert.False(TwistDrills.NearestNotAbove(Length.FromInches(1.001)).IsGiven);
    }

    // Steps of the series from one encyclopedia article: 0.05 to 3, 0.1 to 14, 0.25 to 25 mm.
    [Theory]
    [InlineData(2.78, 2.75)]
    [InlineData(3.0, 3.0)]
    [InlineData(3.09, 3.0)]
    [InlineData(2.9999999, 3.0)]
    [InlineData(13.95, 13.9)]
    [InlineData(14.3, 14.25)]
    [InlineData(25, 25)]
    public void Metric_NearestNotAbove_FollowsTheSteps(double mm, double drill) =>
        Assert.Equal(drill, MetricTwistDrills.NearestNotAbove(Length.FromMillimetres(mm)).Value.Millimetres, 9);

    [Theory]
    [InlineData(0.99)]
    [InlineData(25.1)]
    public void Metric_Outside_IsRefused(double mm) => Assert.False(MetricTwistDrills.NearestNotAbove(Length.FromMillimetres(mm)).IsGiven);

    private static double[] Values(string text) =>
        [.. text.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries).Select(t => double.Parse(t, CultureInfo.InvariantCulture))];
}
