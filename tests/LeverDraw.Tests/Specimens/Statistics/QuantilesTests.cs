using LeverDraw.Specimens.Statistics;

namespace LeverDraw.Tests.Specimens.Statistics;

public sealed class QuantilesTests
{
    /// <summary>The usual printed table of Student's t, as the GUM's annex G has it (computed anew for the project's reference; two decimals).</summary>
    [Theory]
    [InlineData(1, 0.90, 6.31)]
    [InlineData(1, 0.95, 12.71)]
    [InlineData(2, 0.95, 4.30)]
    [InlineData(3, 0.99, 5.84)]
    [InlineData(4, 0.95, 2.78)]
    [InlineData(5, 0.9973, 5.51)]
    [InlineData(9, 0.95, 2.26)]
    [InlineData(16, 0.99, 2.92)]
    [InlineData(20, 0.9545, 2.13)]
    [InlineData(30, 0.9545, 2.09)]
    [InlineData(100, 0.99, 2.63)]
    [InlineData(double.PositiveInfinity, 0.95, 1.96)]
    public void StudentTwoSided_Table(double freedom, double probability, double printed) =>
        Assert.Equal(printed, Quantiles.StudentTwoSided(freedom, probability), 0.00501);

    /// <summary>The usual printed table of chi-square (from memory, three decimals).</summary>
    [Theory]
    [InlineData(1, 0.95, 3.841)]
    [InlineData(2, 0.95, 5.991)]
    [InlineData(3, 0.95, 7.815)]
    [InlineData(5, 0.95, 11.070)]
    [InlineData(10, 0.95, 18.307)]
    [InlineData(1, 0.99, 6.635)]
    [InlineData(4, 0.99, 13.277)]
    [InlineData(10, 0.05, 3.940)]
    [InlineData(30, 0.95, 43.773)]
    public void ChiSquare_Table(double freedom, double probability, double printed) =>
        Assert.Equal(printed, Quantiles.ChiSquare(freedom, probability), 0.00051);

    /// <summary>GUM H.1, end gauge: components 25, 9.7, 2.9 and 16.6 nm with 18, 25.6, 50 and 2 degrees of freedom; published: 32 nm, 16 degrees of freedom, 93 nm for 99 % (from memory of JCGM 100, arithmetic reproduced in the reference).</summary>
    [Fact]
    public void StudentTwoSided_GumEndGauge_GivesThePublishedUncertainty()
    {
        double[] u = [25, 9.7, 2.9, 16.6], v = [18, 25.6, 50, 2];
        double combined = Math.Sqrt(u.Sum(x => x * x));
        double freedom = Math.Pow(combined, 4) / u.Zip(v, (x, n) => Math.Pow(x, 4) / n).Sum();
        Assert.Equal(32, combined, 0.5);
        Assert.Equal(16, Math.Floor(freedom));
        Assert.Equal(93, Quantiles.StudentTwoSided(Math.Floor(freedom), 0.99) * 32, 0.5);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void ChiSquare_NoProbability_Throws(double probability) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Quantiles.ChiSquare(3, probability));
}
