using LeverDraw.Specimens.Statistics;

namespace LeverDraw.Tests.Specimens.Statistics;

/// <summary>Grouped readings where the answer is known by hand.</summary>
public sealed class SteppedPosteriorTests
{
    /// <summary>Made to no scatter: a gauge of 0.25 mm steps says no more than the quarter it stands for, 95 % of ±0.125.</summary>
    [Fact]
    public void Of_NoScatter_IsEvenOverTheStep() => Holds(SteppedPosterior.Of([new(5, 0.25)], 0.002, 0), 5, 0.95 * 0.125, 0.004);

    /// <summary>Two gauges that meet at one mark: the size is that mark.</summary>
    [Fact]
    public void Of_NeighbouringSteps_IsTheMarkBetween() => Holds(SteppedPosterior.Of([new(5, 0.25), new(5.25, 0.25)], 0.002, 0), 5.125, 0, 0.01);

    /// <summary>An error that all readings share, of which only the limit is known: even between its limits.</summary>
    [Fact]
    public void Of_SharedErrorAlone_IsEvenBetweenItsLimits() => Holds(SteppedPosterior.Of([new(5, 0.01)], 0.002, 0.25), 5, 0.95 * 0.25, 0.005);

    /// <summary>A step much finer than the scatter does nothing: 1.96 deviations over √4; the three scales widen it by 3 % at most (by hand: the mean of their squares is 1.034).</summary>
    [Fact]
    public void Of_FineStep_IsTheNormalLaw() => Holds(SteppedPosterior.Of([new(4.9, 0.001), new(5, 0.001), new(5, 0.001), new(5.1, 0.001)], 0.1, 0), 5, 1.96 * 0.1 / 2, 0.006);

    /// <summary>No step at all is the same normal law.</summary>
    [Fact]
    public void Of_NoStep_IsTheNormalLaw() => Holds(SteppedPosterior.Of([new(4.9, 0), new(5, 0), new(5, 0), new(5.1, 0)], 0.1, 0), 5, 1.96 * 0.1 / 2, 0.006);

    /// <summary>A gauge of 0.25 mm steps at 5 allows all from 4.875 to 5.125 mm alike; within that, the reading without a step at 5.05 says it all: ±1.96·0.01.</summary>
    [Fact]
    public void Of_MixedSteps_TheReadingWithoutStepSaysMost() => Holds(SteppedPosterior.Of([new(5, 0.25), new(5.05, 0)], 0.01, 0), 5.05, 1.96 * 0.01, 0.002);

    private static void Holds(GridLaw law, double middle, double reach, double within)
    {
        Assert.Equal(middle, law.Quantile(0.5), within);
        Assert.Equal(middle - reach, law.Quantile(0.025), within);
        Assert.Equal(middle + reach, law.Quantile(0.975), within);
    }
}
