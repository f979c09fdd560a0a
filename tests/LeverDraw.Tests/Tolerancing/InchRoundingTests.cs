using CsCheck;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Tests.Tolerancing;

public sealed class InchRoundingTests
{
    // Worked by hand: 10.000/25.4 = 0.393701, 10.022/25.4 = 0.394567.
    [Theory]
    [InlineData(10.0, 10.022, 4, "0.3938", "0.3945")]
    [InlineData(10.0, 10.022, 3, "0.394", "0.394")]
    [InlineData(6.35, 6.35, 2, "0.25", "0.25")]
    [InlineData(25.4, 50.8, 0, "1", "2")]
    [InlineData(-0.4, -0.2, 3, "-0.015", "-0.008")]
    public void Limits_Rounded_GoInwards(double min, double max, int decimals, string minInches, string maxInches)
    {
        InchLimits found = InchRounding.Limits(Limits(min, max), decimals).Value;
        Assert.Equal(decimal.Parse(minInches, System.Globalization.CultureInfo.InvariantCulture), found.MinInches);
        Assert.Equal(decimal.Parse(maxInches, System.Globalization.CultureInfo.InvariantCulture), found.MaxInches);
    }

    [Fact]
    public void Limits_TooCloseForTheDecimals_IsRefused()
    {
        Answer<InchLimits> answer = InchRounding.Limits(Limits(10.0, 10.022), 2);
        Assert.False(answer.IsGiven);
        Assert.Contains("2 decimals", answer.Refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void Limits_AnySize_NeverLeaveTheMillimetreLimits() =>
        Gen.Select(Gen.Double[-5, 500], Gen.Double[0, 2], Gen.Int[0, 6]).Sample((min, width, decimals) =>
        {
            SizeLimits limits = Limits(min, min + width);
            Answer<InchLimits> answer = InchRounding.Limits(limits, decimals);
            double step = Math.Pow(10, -decimals);
            if (answer.IsGiven)
            {
                // 1e-9 mm: the picometre the conversion rounds to.
                Assert.True(answer.Value.Min.Millimetres >= limits.Min.Millimetres - 1e-9);
                Assert.True(answer.Value.Max.Millimetres <= limits.Max.Millimetres + 1e-9);
                Assert.True(answer.Value.MinInches <= answer.Value.MaxInches);
                // Not narrower than need be: one step further out would be outside.
                Assert.True((double)answer.Value.MinInches - step < limits.Min.Inches + 1e-9);
                Assert.True((double)answer.Value.MaxInches + step > limits.Max.Inches - 1e-9);
            }
            else
            {
                Assert.True(limits.Width.Inches < step);
            }
        });

    /// <summary>Every zone, in every grade, on sizes all over the table, with every number of decimals and with the number chosen.</summary>
    [Fact]
    public void Limits_EveryZoneGradeAndDecimals_StayInsideTheMillimetres()
    {
        int given = 0;
        foreach (ToleranceZone zone in Enum.GetValues<DeviationLetter>().SelectMany(l => Enumerable.Range(1, 18).SelectMany(g => new[] { ToleranceZone.Hole(l, g), ToleranceZone.Shaft(l, g) })))
        {
            foreach (double mm in (double[])[0.5, 1.0001, 3, 3.06, 3.175, 6, 9.525, 25.4, 120.0001, 254, 300, 500])
            {
                if (Iso286.Limits(zone, Length.FromMillimetres(mm)) is not { IsGiven: true } limits)
                    continue;
                Answer<InchLimits>[] all = [InchRounding.FewestDecimals(limits.Value, 3), .. Enumerable.Range(0, 7).Select(d => InchRounding.Limits(limits.Value, d))];
                foreach (Answer<InchLimits> inches in all.Where(a => a.IsGiven))
                {
                    Assert.True(inches.Value.Min.Millimetres >= limits.Value.Min.Millimetres - 1e-9, zone.Text);
                    Assert.True(inches.Value.Max.Millimetres <= limits.Value.Max.Millimetres + 1e-9, zone.Text);
                    given++;
                }
            }
        }

        Assert.True(given > 10_000);
    }

    [Fact]
    public void FewestDecimals_FineTolerance_TakesEnough()
    {
        // 10.000 to 10.022: four decimals keep 0.0007 of 0.00087 in (81 %), five keep 0.00086 (99 %).
        Assert.Equal(5, InchRounding.FewestDecimals(Limits(10.0, 10.022), 3).Value.Decimals);
        Assert.Equal(3, InchRounding.FewestDecimals(Limits(10.0, 11.0), 3).Value.Decimals);
        Assert.False(InchRounding.FewestDecimals(Limits(10.00001, 10.00002), 3).IsGiven);
    }

    private static SizeLimits Limits(double min, double max) => new(Length.FromMillimetres(min), Length.FromMillimetres(max));
}
