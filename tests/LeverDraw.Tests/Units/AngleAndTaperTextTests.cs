using LeverDraw.Units;

namespace LeverDraw.Tests.Units;

public class AngleAndTaperTextTests
{
    // Degrees by hand: 11/60 + 37/3600 = 0.193611…
    [Theory]
    [InlineData("40", 40)]
    [InlineData("40 deg", 40)]
    [InlineData("40 degrees", 40)]
    [InlineData("40°", 40)]
    [InlineData("-7.5°", -7.5)]
    [InlineData("1° 11' 37\"", 1.1936111111111)]
    [InlineData("1°11′37″", 1.1936111111111)]
    [InlineData("1° 11' 37''", 1.1936111111111)]
    [InlineData("30'", 0.5)]
    [InlineData("2° 36\"", 2.01)]
    public void Angle_GoodText_GivesDegrees(string text, double expected) =>
        Assert.Equal(expected, AngleText.Parse(text).Value.Degrees, 10);

    [Theory]
    [InlineData("", "empty")]
    [InlineData("forty", "number is expected")]
    [InlineData("40 mm", "length")]
    [InlineData("1 rad", "degrees")]
    [InlineData("1° 60'", "below 60")]
    [InlineData("1° 30", "missing")]
    [InlineData("30' 1°", "order")]
    [InlineData("1.5° 30'", "decimals")]
    [InlineData("1,5°", "comma")]
    [InlineData("nan", "finite")]
    [InlineData("1° x", "number is expected")]
    public void Angle_Nonsense_GivesReason(string text, string reason) =>
        Assert.Contains(reason, AngleText.Parse(text).Fault!.Reason, StringComparison.Ordinal);

    [Theory]
    [InlineData(7.5, "7.5°", "7° 30'")]
    [InlineData(40, "40°", "40°")]
    [InlineData(1.1936111, "1.194°", "1° 11' 37\"")]
    [InlineData(-0.5, "-0.5°", "-0° 30'")]
    [InlineData(-0.00001, "0°", "0°")]
    public void Angle_Format(double degrees, string decimals, string sexagesimal)
    {
        Assert.Equal(decimals, AngleText.Degrees(Angle.FromDegrees(degrees), 3));
        Assert.Equal(sexagesimal, AngleText.DegreesMinutesSeconds(Angle.FromDegrees(degrees)));
    }

    // 1/4 in per foot is 0.25/12 = 1/48 (ASME taper pins, table 07h).
    [Theory]
    [InlineData("1:48", 48)]
    [InlineData(" 1 : 50 ", 50)]
    [InlineData("0.25 in/ft", 48)]
    [InlineData("1/4 in/ft", 48)]
    [InlineData("1:19.212", 19.212)]
    public void Taper_GoodText_GivesLengthPerUnit(string text, double expected) =>
        Assert.Equal(expected, TaperText.Parse(text).Value.LengthPerUnit, 12);

    [Fact]
    public void Taper_Parallel_IsZero() => Assert.True(TaperText.Parse("Parallel").Value.IsParallel);

    [Theory]
    [InlineData("1/48", "1:n")]
    [InlineData("48", "1:n")]
    [InlineData("straight", "1:n")]
    [InlineData("2:48", "must be 1")]
    [InlineData("1:0", "zero")]
    [InlineData("1:0.5", "steeper")]
    [InlineData("1:", "after ':'")]
    [InlineData("1:48 mm", "after the taper")]
    [InlineData("0 in/ft", "above zero")]
    [InlineData("13 in/ft", "steeper")]
    [InlineData("1 mm in/ft", "two units")]
    [InlineData("1:inf", "after ':'")]
    public void Taper_Nonsense_GivesReason(string text, string reason) =>
        Assert.Contains(reason, TaperText.Parse(text).Fault!.Reason, StringComparison.Ordinal);

    [Fact]
    public void Taper_Format()
    {
        Assert.Equal("1:48", TaperText.Format(Taper.InchPins));
        Assert.Equal("1:50", TaperText.Format(Taper.MetricPins));
        Assert.Equal("1:19.212", TaperText.Format(Taper.OneIn(19.212)));
        Assert.Equal("parallel", TaperText.Format(Taper.Parallel));
    }
}
