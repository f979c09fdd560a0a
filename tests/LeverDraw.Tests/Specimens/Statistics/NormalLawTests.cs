using LeverDraw.Specimens.Statistics;

namespace LeverDraw.Tests.Specimens.Statistics;

public sealed class NormalLawTests
{
    /// <summary>erfc, from the printed tables of Abramowitz and Stegun (from memory).</summary>
    [Theory]
    [InlineData(0.5, 0.4795001222)]
    [InlineData(1, 0.1572992071)]
    [InlineData(2, 0.0046777350)]
    [InlineData(3, 0.0000220905)]
    [InlineData(-1, 1.8427007929)]
    public void ErrorComplement_Table(double x, double printed) => Assert.Equal(printed, NormalLaw.ErrorComplement(x), 1e-10);

    [Theory]
    [InlineData(1.959964, 0.975)]
    [InlineData(-1.644854, 0.05)]
    [InlineData(0, 0.5)]
    public void Below_Table(double z, double share) => Assert.Equal(share, NormalLaw.Below(z), 1e-6);

    /// <summary>Both forms meet where the one hands over to the other.</summary>
    [Fact]
    public void LogScaledComplement_AtTheBorder_IsSmooth() =>
        Assert.Equal(NormalLaw.LogScaledComplement(2 - 1e-9), NormalLaw.LogScaledComplement(2 + 1e-9), 1e-8);

    /// <summary>A density: all of it is one, its mean is minus the mean wear.</summary>
    [Theory]
    [InlineData(0.1, 0.2)]
    [InlineData(0.02, 0.3)]
    [InlineData(0.2, 0.02)]
    public void WornLaw_Density_IsWholeAndHasTheMeanOfTheWear(double deviation, double wear)
    {
        const double Step = 0.0005;
        double sum = 0, mean = 0;
        for (double d = -8; d < 2; d += Step)
        {
            double p = Math.Exp(WornLaw.LogDensity(d, deviation, wear)) * Step;
            sum += p;
            mean += p * d;
        }

        Assert.Equal(1, sum, 1e-4);
        Assert.Equal(-wear, mean, 1e-4);
    }
}
