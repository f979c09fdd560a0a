using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Tests.Tolerancing;

public sealed class FitTests
{
    // Limits: each was compared with two or more public tables; the clearances are differences worked apart from this code.
    // 29 H7/h8 (0 to 54 µm) is a published example.
    [Theory]
    [InlineData(25, "H7/g6", 0, 21, -20, -7, 7, 41, FitKind.Clearance)]
    [InlineData(25, "H7/h6", 0, 21, -13, 0, 0, 34, FitKind.Clearance)]
    [InlineData(10, "H8/f7", 0, 22, -28, -13, 13, 50, FitKind.Clearance)]
    [InlineData(6, "H7/m6", 0, 12, 4, 12, -12, 8, FitKind.Transition)]
    [InlineData(6, "H8/h8", 0, 18, -18, 0, 0, 36, FitKind.Clearance)]
    [InlineData(25, "H7/p6", 0, 21, 22, 35, -35, -1, FitKind.Interference)]
    [InlineData(20, "H7/s6", 0, 21, 35, 48, -48, -14, FitKind.Interference)]
    [InlineData(50, "H7/s6", 0, 25, 43, 59, -59, -18, FitKind.Interference)]
    [InlineData(29, "H7/h8", 0, 21, -33, 0, 0, 54, FitKind.Clearance)]
    [InlineData(16, "H8/e8", 0, 27, -59, -32, 32, 86, FitKind.Clearance)]
    [InlineData(12, "H9/d9", 0, 43, -93, -50, 50, 136, FitKind.Clearance)]
    [InlineData(20, "H11/c11", 0, 130, -240, -110, 110, 370, FitKind.Clearance)]
    [InlineData(25, "H7/k6", 0, 21, 2, 15, -15, 19, FitKind.Transition)]
    [InlineData(6, "H7/n6", 0, 12, 8, 16, -16, 4, FitKind.Transition)]
    public void On_CheckedFit_GivesItsLimitsAndKind(
        double nominal, string fit, double holeLower, double holeUpper, double shaftLower, double shaftUpper, double least, double most, FitKind kind)
    {
        FitLimits found = Fit.Parse(fit).Value.On(Length.FromMillimetres(nominal)).Value;
        Assert.Equal(nominal + holeLower / 1000, found.Hole.Min.Millimetres, 9);
        Assert.Equal(nominal + holeUpper / 1000, found.Hole.Max.Millimetres, 9);
        Assert.Equal(nominal + shaftLower / 1000, found.Shaft.Min.Millimetres, 9);
        Assert.Equal(nominal + shaftUpper / 1000, found.Shaft.Max.Millimetres, 9);
        Assert.Equal(least / 1000, found.MinClearance.Millimetres, 9);
        Assert.Equal(most / 1000, found.MaxClearance.Millimetres, 9);
        Assert.Equal(kind, found.Kind);
    }

    [Fact]
    public void Kind_ClearanceOfExactlyZero_IsClearance()
    {
        // 3.06 mm is no exact double; H8/h8 must not become a transition fit by rounding.
        Assert.Equal(FitKind.Clearance, Fit.Parse("H8/h8").Value.On(Length.FromMillimetres(3.06)).Value.Kind);
    }

    [Fact]
    public void Kind_LargestHoleEqualsSmallestShaft_IsInterference()
    {
        SizeLimits hole = new(Length.FromMillimetres(9.9), Length.FromMillimetres(10));
        SizeLimits shaft = new(Length.FromMillimetres(10), Length.FromMillimetres(10.1));
        Assert.Equal(FitKind.Interference, new FitLimits(hole, shaft).Kind);
    }

    [Theory]
    [InlineData("H8")]
    [InlineData("H8/")]
    [InlineData("/f7")]
    [InlineData("f7/H8")]
    [InlineData("H8/F7")]
    [InlineData("H8/f7/g6")]
    [InlineData("")]
    public void Parse_NotAFit_IsRefused(string text) => Assert.False(Fit.Parse(text).IsGiven);

    [Fact]
    public void Constructor_TwoHoles_Throws() =>
        Assert.Throws<ArgumentException>(() => new Fit(ToleranceZone.Hole(DeviationLetter.H, 7), ToleranceZone.Hole(DeviationLetter.H, 7)));
}
