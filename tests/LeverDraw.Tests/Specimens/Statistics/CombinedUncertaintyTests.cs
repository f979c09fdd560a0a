using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Readings;
using LeverDraw.Specimens.Statistics;
using LeverDraw.Units;

namespace LeverDraw.Tests.Specimens.Statistics;

/// <summary>The worked examples of the GUM (JCGM 100:2008): 4.4.3 compared with a quotation of its data, H.1 from memory.</summary>
public sealed class CombinedUncertaintyTests
{
    /// <summary>H.1, end gauge: components 25, 9.7, 2.9 and 16.6 nm with 18, 25.6, 50 and 2 degrees of freedom; published: 32 nm, 16 degrees of freedom, 93 nm for 99 %.</summary>
    [Fact]
    public void Of_GumEndGauge_GivesThePublishedUncertainty()
    {
        (double combined, double freedom) = CombinedUncertainty.Of((25, 18), (9.7, 25.6), (2.9, 50), (16.6, 2));
        Assert.Equal(32, combined, 0.5);
        Assert.Equal(16, Math.Floor(freedom));
        Assert.Equal(93, Quantiles.StudentTwoSided(Math.Floor(freedom), 0.99) * 32, 0.5);
    }

    /// <summary>What is known has no part in the degrees of freedom: 3 with 10 and 4 known are 5 with 10·(5/3)⁴ = 77.16.</summary>
    [Fact]
    public void Of_KnownCause_RaisesTheFreedom()
    {
        (double combined, double freedom) = CombinedUncertainty.Of((3, 10), (4, double.PositiveInfinity));
        Assert.Equal(5, combined, 1e-12);
        Assert.Equal(77.16, freedom, 0.005);
    }

    /// <summary>4.4.3, twenty repeated readings of one quantity (there degrees Celsius): published mean 100.145, standard deviation of the mean 0.333.</summary>
    [Fact]
    public void SpecimenValue_GumRepeatedReadings_GivesThePublishedMeanAndDeviation()
    {
        double[] read = [96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72];
        var exact = new Instrument("exact", Length.Zero, 0, _ => Length.Zero);
        ImmutableArray<Reading> readings = [.. read.Select(v => new Reading("A", Measurands.Find("arms.length")!, v, null, exact, ReadAt.Unsaid, false, string.Empty, SourcePosition.WholeFile("gum")))];
        SpecimenValue value = SpecimenValue.Of(readings);
        Assert.Equal(100.145, value.Value, 0.0005);
        Assert.Equal(0.333, value.Own, 0.0005);
        Assert.Equal(20, value.Readings);
    }
}
