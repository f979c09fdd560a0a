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

    /// <summary>The usual printed table of chi-square, three decimals, compared with two tables at the back of statistics textbooks; that of 30 degrees of freedom from memory.</summary>
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

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void ChiSquare_NoProbability_Throws(double probability) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Quantiles.ChiSquare(3, probability));
}
