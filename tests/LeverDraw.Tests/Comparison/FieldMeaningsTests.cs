using LeverDraw.Comparison;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Tests.Comparison;

public sealed class FieldMeaningsTests
{
    [Fact]
    public void Of_EveryFieldOfLeverAndPin_IsGiven()
    {
        foreach (FieldSpec field in (FieldSpec[])[.. LeverFields.All, .. PinFields.All])
            Assert.NotEmpty(FieldMeanings.Of(field).Why);
    }

    /// <summary>The sizes that the trade notes' list (section 6) marks as critical.</summary>
    [Theory]
    [InlineData("Lh")]
    [InlineData("Wi")]
    [InlineData("tn")]
    [InlineData("Rn")]
    [InlineData("e")]
    [InlineData("sw")]
    [InlineData("wh")]
    [InlineData("Dm")]
    [InlineData("Ct")]
    [InlineData("tt")]
    [InlineData("Rt")]
    [InlineData("g")]
    [InlineData("Lt")]
    public void Of_SizesMarkedCritical_IsFit(string sign) =>
        Assert.All(LeverFields.All.Where(f => f.Symbol == sign), f => Assert.Equal(Matter.Fit, FieldMeanings.Of(f).Matter));

    [Theory]
    [InlineData("ta", Matter.Strength)]
    [InlineData("dh", Matter.Strength)]
    [InlineData("df", Matter.Look)]
    [InlineData("mk", Matter.Look)]
    public void Of_OtherSizes_IsNoFit(string sign, Matter matter) =>
        Assert.Equal(matter, FieldMeanings.Of(LeverFields.All.Single(f => f.Symbol == sign)).Matter);

    [Theory]
    [InlineData(4.2, 3.6, "−0.6", "−.0236")]
    [InlineData(3, 4.5, "+1.5", "+.0591")]
    public void Delta_OfSizes_HasSignAndBothUnits(double a, double b, string millimetres, string inches)
    {
        // 0.6/25.4 = 0.02362, 1.5/25.4 = 0.05906.
        ComparedRow row = new("x", null, Matter.Fit, "", [new ComparedSize(Length.FromMillimetres(a)), new ComparedSize(Length.FromMillimetres(b))]);
        Assert.Equal((millimetres, inches), (ValueText.Delta(row, LengthUnit.Millimetre, shown: true), ValueText.Delta(row, LengthUnit.Inch, shown: false)));
    }

    /// <summary>What a reader gets with pencil and paper: 1.19 − 0.74 = 0.45, though 1.194 − 0.737 would round to 0.46; 320.10 − 356.97 = −36.87.</summary>
    [Theory]
    [InlineData(0.737, 1.194, "+0.45")]
    [InlineData(356.966, 320.104, "−36.87")]
    public void Delta_OfFigures_IsThatOfTheFiguresShown(double a, double b, string delta)
    {
        ComparedRow row = new("x", null, null, "", [new ComparedFigure(a, "g", 2), new ComparedFigure(b, "g", 2)]);
        Assert.Equal(delta, ValueText.Delta(row, LengthUnit.Millimetre, shown: true));
    }

    /// <summary>4.2 and 3.6 mm are shown as .1654 and .1417 in, which are .0237 apart; the sizes are .0236 apart.</summary>
    [Fact]
    public void Delta_OfSizesShownInInches_IsThatOfTheFiguresShown()
    {
        ComparedRow row = new("x", null, Matter.Fit, "", [new ComparedSize(Length.FromMillimetres(3.6)), new ComparedSize(Length.FromMillimetres(4.2))]);
        Assert.Equal([".1417", ".1654"], ValueText.Of(row, LengthUnit.Inch));
        Assert.Equal("+.0237", ValueText.Delta(row, LengthUnit.Inch, shown: true));
        Assert.Equal("+.0236", ValueText.Delta(row, LengthUnit.Inch, shown: false));
    }

    [Fact]
    public void Differs_SameSizeFromTwoUnits_No()
    {
        // 9/16 in is 14.2875 mm exactly.
        ComparedRow row = new("x", null, Matter.Fit, "", [new ComparedSize(Length.FromInches(9.0 / 16)), new ComparedSize(Length.FromMillimetres(14.2875))]);
        Assert.False(row.Differs);
    }

    [Fact]
    public void Differs_SameSizeOtherTolerance_YesAndBothAreTold()
    {
        ComparedRow row = new("x", null, Matter.Fit, "", [new ComparedSize(new SizeValue(Length.FromMillimetres(3), new ZoneTolerance("H7"))), new ComparedSize(new SizeValue(Length.FromMillimetres(3), new ZoneTolerance("H8")))]);
        Assert.True(row.Differs);
        Assert.Equal(["3 H7", "3 H8"], ValueText.Of(row, LengthUnit.Millimetre));
    }
}
