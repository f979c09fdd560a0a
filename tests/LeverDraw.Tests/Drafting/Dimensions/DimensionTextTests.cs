using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Profiles;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Tests.Drafting.Dimensions;

/// <summary>What a size reads like, typed by hand: reference 10h for zeros (millimetres without trailing ones, inches fixed and none before the point), ISO 286-1 table 1 for the zones.</summary>
public class DimensionTextTests
{
    private const ShownUnits Mm = ShownUnits.Millimetres, In = ShownUnits.Inches, MmIn = ShownUnits.MillimetresAndInches, InMm = ShownUnits.InchesAndMillimetres;

    [Theory]
    [InlineData(Mm, 4.2, "4.2", 1)]
    [InlineData(Mm, 10, "10", 0)]
    [InlineData(Mm, 3.05, "3.05", 2)]
    [InlineData(Mm, 0.5, "0.5", 1)]
    [InlineData(Mm, 10.75634, "10.756", 3)]
    [InlineData(In, 25.4, "1.000", 3)]
    [InlineData(In, 4.2, ".165", 3)]
    [InlineData(In, 31.75, "1.250", 3)]
    [InlineData(In, 0.5, ".020", 3)]
    [InlineData(MmIn, 4.2, "4.2 [.165]", 1)]
    [InlineData(InMm, 4.2, ".165 [4.2]", 3)]
    public void Size_WithoutTolerance_ReadsAs(ShownUnits units, double millimetres, string text, int decimals)
    {
        Label label = new DimensionText(units).Size(Length.FromMillimetres(millimetres));
        Assert.Equal(text, label.ToString());
        Assert.Equal(decimals, label.Decimals);
    }

    // 11.4 mm = .448819 in, 11.7 = .460630: the least .4489, and the nominal size, which is the least, with it; no fifth decimal for one limit's sake. 14 mm = .551181: .5512 lies inside as it is.
    [Theory]
    [InlineData(MmIn, 11.4, 0.3, "11.4 +0.3/0\n[.4489 +.0117/0]")]
    [InlineData(MmIn, 14, 0.3, "14 +0.3/0\n[.5512 +.0117/0]")]
    [InlineData(In, 11.4, 0.3, ".4489 +.0117/0")]
    // Meant in inches to five decimals: kept.
    [InlineData(In, 11.400028, 0.3, ".44882 +.01181/0")]
    public void Size_NominalAtItsLimit_TakesNoMoreDecimalsThanTheLimits(ShownUnits units, double millimetres, double upper, string text) =>
        Assert.Equal(text, new DimensionText(units).Size(new SizeValue(Length.FromMillimetres(millimetres), new DeviationTolerance(Length.FromMillimetres(upper), Length.Zero))).ToString());

    // Inches: the lower limit rounded up, the upper down.
    [Theory]
    [InlineData(Mm, 3.423, "H7", "3.423 H7 (3.423 / 3.435)")]
    [InlineData(Mm, 2.8, "H9", "2.8 H9 (2.800 / 2.825)")]
    [InlineData(Mm, 20, "g6", "20 g6 (19.980 / 19.993)")]
    [InlineData(In, 3.5, "H8", ".1378 H8 (.1378 / .1385)")]
    [InlineData(In, 3.423, "H7", ".13477 H7 (.13477 / .13523)")]
    [InlineData(MmIn, 3.5, "H8", "3.5 H8 (3.500 / 3.518)\n[.1378 H8 (.1378 / .1385)]")]
    [InlineData(InMm, 3.5, "H8", ".1378 H8 (.1378 / .1385)\n[3.5 H8 (3.500 / 3.518)]")]
    public void Size_WithZone_GivesCodeAndLimits(ShownUnits units, double millimetres, string zone, string text) =>
        Assert.Equal(text, new DimensionText(units).Size(new SizeValue(Length.FromMillimetres(millimetres), new ZoneTolerance(zone))).ToString());

    // The nominal size of a hole is its least one: shown, it may not fall under the least limit shown, which is rounded up.
    // 2.8 mm = .110236, 2.36 mm = .0929134, 3.5 mm = .1377953 in (the last two are rounded inwards), 3.4234 mm with H7 is 3.4234 to 3.4354, rounded inwards to the micrometre.
    [Theory]
    [InlineData(In, 2.8, "H9", ".11024 H9 (.11024 / .11122)")]
    [InlineData(In, 2.36, "H9", ".09292 H9 (.09292 / .09389)")]
    [InlineData(Mm, 3.4234, "H7", "3.424 H7 (3.424 / 3.435)")]
    [InlineData(In, 3.5, "h8", ".13779 h8 (.13709 / .13779)")]
    public void Size_WithZone_NominalIsWithinTheLimitsShown(ShownUnits units, double millimetres, string zone, string text) =>
        Assert.Equal(text, new DimensionText(units).Size(new SizeValue(Length.FromMillimetres(millimetres), new ZoneTolerance(zone))).ToString());

    [Theory]
    [InlineData(ToleranceForm.Deviations, "⌀3.5 H8 +0.018/0")]
    [InlineData(ToleranceForm.Limits, "⌀3.518/3.500")]
    public void Size_WithZone_InTheOtherForms(ToleranceForm form, string text) =>
        Assert.Equal(text, new DimensionText(Mm, form).Size(new SizeValue(Length.FromMillimetres(3.5), new ZoneTolerance("H8")), "⌀").ToString());

    [Theory]
    [InlineData(Mm, "9.500/9.400")]
    [InlineData(In, ".3740/.3701")]
    [InlineData(MmIn, "9.500/9.400\n[.3740/.3701]")]
    public void Size_WithDeviations_AsLimits(ShownUnits units, string text)
    {
        SizeValue size = new(Length.FromMillimetres(9.5), new DeviationTolerance(Length.FromMillimetres(0), Length.FromMillimetres(-0.1)));
        Assert.Equal(text, new DimensionText(units, ToleranceForm.Limits).Size(size).ToString());
    }

    [Fact]
    public void BasicRepeatedAndArc_HaveTheirSigns()
    {
        Label basic = new DimensionText(Mm).Basic(Length.FromMillimetres(12.5));
        Assert.True(basic.Boxed);
        Assert.Equal("12.5", basic.ToString());
        Assert.Equal("4× ⌀3", new DimensionText(Mm).Repeated(4, new SizeValue(Length.FromMillimetres(3)), "⌀").ToString());
        Assert.Equal("⌒12.5", new DimensionText(Mm).ArcLength(new SizeValue(Length.FromMillimetres(12.5))).ToString());
    }

    [Theory]
    [InlineData(Mm, 4.1, 0.05, -0.05, "4.1 ±0.05")]
    [InlineData(Mm, 9.5, 0, -0.1, "9.5 0/−0.1")]
    [InlineData(Mm, 14, 0.3, 0, "14 +0.3/0")]
    [InlineData(Mm, 10, 0.2, -0.1, "10 +0.2/−0.1")]
    [InlineData(Mm, 10, -0.1, -0.3, "10 −0.1/−0.3")]
    [InlineData(Mm, 10, 0.3, 0.1, "10 +0.3/+0.1")]
    [InlineData(In, 9.5, 0, -0.1, ".3740 0/−.0039")]
    [InlineData(In, 4.1, 0.05, -0.05, ".1614 ±.0019")]
    [InlineData(MmIn, 4.1, 0.05, -0.05, "4.1 ±0.05\n[.1614 ±.0019]")]
    [InlineData(InMm, 4.1, 0.05, -0.05, ".1614 ±.0019\n[4.1 ±0.05]")]
    public void Size_WithDeviations_GivesThemInEitherUnit(ShownUnits units, double millimetres, double upper, double lower, string text)
    {
        SizeValue size = new(Length.FromMillimetres(millimetres), new DeviationTolerance(Length.FromMillimetres(upper), Length.FromMillimetres(lower)));
        Label label = new DimensionText(units).Size(size);
        Assert.Equal(text, label.ToString());
        if (units is In or InMm)
            Assert.Equal(4, label.Decimals);
    }

    [Theory]
    [InlineData(Mm, "(25)")]
    [InlineData(In, "(.984)")]
    [InlineData(MmIn, "(25) [.984]")]
    [InlineData(InMm, "(.984) [25]")]
    public void Reference_Size_StandsInRoundBrackets(ShownUnits units, string text) =>
        Assert.Equal(text, new DimensionText(units).Reference(Length.FromMillimetres(25)).ToString());

    [Fact]
    public void Sign_AndWordsAfter_StandAboutTheFirstNumber()
    {
        Assert.Equal("2× R1.5", new DimensionText(Mm).Size(Length.FromMillimetres(1.5), "2× R").ToString());
        Assert.Equal("(⌀3.4)", new DimensionText(Mm).Reference(Length.FromMillimetres(3.4), "⌀").ToString());
        Assert.Equal("2× 0.4 [.016] × 45°", new DimensionText(MmIn).Size(Length.FromMillimetres(0.4), "2× ", " × 45°").ToString());
    }

    [Theory]
    [InlineData(Mm, "0.4 mm", "0.4")]
    [InlineData(In, ".016 in", ".016")]
    [InlineData(MmIn, "0.4 mm [.016 in]", "0.4 [.016]")]
    [InlineData(InMm, ".016 in [0.4 mm]", ".016 [0.4]")]
    public void InSentence_NamesItsUnits(ShownUnits units, string sentence, string number)
    {
        Assert.Equal(sentence, new DimensionText(units).InSentence(Length.FromMillimetres(0.4)));
        Assert.Equal(number, new DimensionText(units).Number(Length.FromMillimetres(0.4)));
    }

    // 0.08 mm is .00315 in, 0.0104 and 0.0333 mm are .00041 and .00131 in.
    [Theory]
    [InlineData(Mm, "0.08", "0.01 TO 0.033 mm")]
    [InlineData(In, ".0031", ".0004 TO .0013 in")]
    [InlineData(MmIn, "0.08 [.0031]", "0.01 TO 0.033 mm [.0004 TO .0013 in]")]
    public void Fine_SmallNumbers_KeepFourInchDecimals(ShownUnits units, string number, string range)
    {
        DimensionText text = new(units);
        Assert.Equal(number, text.Fine(Length.FromMillimetres(0.08)));
        Assert.Equal(range, text.FineRange(Length.FromMillimetres(0.0104), Length.FromMillimetres(0.0333)));
    }

    // 0.1 mm is .003937 in, 0.37 .014567, 0.45 .017717, 0.01 .000394; 0.002 is .0000787: cut off, with a decimal more where a tenth would be lost.
    [Theory]
    [InlineData(0.1, "±0.1 [.0039]")]
    [InlineData(0.37, "±0.37 [.014]")]
    [InlineData(0.45, "±0.45 [.017]")]
    [InlineData(0.01, "±0.01 [.00039]")]
    [InlineData(0.002, "±0.002 [.000078]")]
    [InlineData(0.254, "±0.254 [.010]")]
    public void PlusMinus_Inches_AreNeverWider(double half, string text)
    {
        Assert.Equal(text, new DimensionText(MmIn).PlusMinus(Length.FromMillimetres(half)));
        Assert.Equal(text[1..], new DimensionText(MmIn).AtMost(Length.FromMillimetres(half)));
    }

    // 0.035 mm is .001378 in.
    [Fact]
    public void FineAtMost_HasOneDecimalMoreThanTheGripsBesideIt() => Assert.Equal("0.035 [.00137]", new DimensionText(MmIn).FineAtMost(Length.FromMillimetres(0.035)));

    // 0.05 mm is .0019685 in, 0.002 .0000787: none is lettered as nothing.
    [Theory]
    [InlineData(0.05, ".0019")]
    [InlineData(0.002, ".000078")]
    [InlineData(0.254, ".01")]
    public void Zone_Inches_AreNeverWiderNorNothing(double width, string text) => Assert.Equal(text, new DimensionText(In).Zone(Length.FromMillimetres(width)));

    // 0.0338 and 0.2412 mm are .001331 and .009496 in.
    [Fact]
    public void Extremes_AreRoundedOutwards() =>
        Assert.Equal("0.033 TO 0.242 mm [.0013 TO .0095 in]", new DimensionText(MmIn).Extremes(new SizeLimits(Length.FromMillimetres(0.0338), Length.FromMillimetres(0.2412))));

    // What was typed in inches: .0010 is 0.0254 mm, .030 is 0.762, .0005 is 0.0127; of .0001 (0.00254) the micrometre would lose a fifth. What was typed in millimetres stays.
    [Theory]
    [InlineData(3.175, 0.0254, 0, "3.175 +0.025/0")]
    [InlineData(19.05, 0.762, -0.762, "19.05 ±0.762")]
    [InlineData(12.7, 0.0127, -0.0127, "12.7 ±0.012")]
    [InlineData(3.175, 0.00254, 0, "3.175 +0.0025/0")]
    [InlineData(3.175, -0.0127, -0.0254, "3.175 −0.013/−0.025")]
    [InlineData(5, 0.0005, 0, "5 +0.0005/0")]
    public void Size_DeviationsFromInches_AreRoundedInwards(double nominal, double upper, double lower, string text) =>
        Assert.Equal(text, new DimensionText(Mm).Size(new SizeValue(Length.FromMillimetres(nominal), new DeviationTolerance(Length.FromMillimetres(upper), Length.FromMillimetres(lower)))).ToString());

    // 3.15596 to 3.17396 mm is .124250 to .124959 in: four decimals would leave .1243 to .1249, less than nine tenths.
    [Theory]
    [InlineData(Mm, "3.156 / 3.173")]
    [InlineData(In, ".12426 / .12495")]
    [InlineData(MmIn, "3.156 / 3.173 [.12426 / .12492]")]
    public void Limits_OfACheck_AreRoundedInwards(ShownUnits units, string text) =>
        Assert.Equal(text, new DimensionText(units).Limits(new SizeLimits(Length.FromMillimetres(3.1559583), Length.FromMillimetres(3.1739583))));

    [Fact]
    public void Column_Numbers_HaveEqualDecimals()
    {
        Length[] walls = [Length.FromMillimetres(2.9125), Length.FromMillimetres(2.7)];
        Assert.Equal(["2.91", "2.70"], new DimensionText(Mm).Column(walls, 3, 2, MidpointRounding.ToNegativeInfinity).ToArray());
        // .114665 and .106299 in.
        Assert.Equal([".115", ".107"], new DimensionText(In).Column(walls, 3, 2, MidpointRounding.ToPositiveInfinity).ToArray());
        Assert.Equal(["2.913\n[.1147]", "2.700\n[.1063]"], new DimensionText(MmIn).Column(walls, 4).ToArray());
    }

    [Theory]
    [InlineData(40, "40°")]
    [InlineData(7.5, "7.5°")]
    [InlineData(33.333, "33.33°")]
    [InlineData(0.05, "0.05°")]
    public void DegreesText_AtMostTwoDecimals(double degrees, string text) => Assert.Equal(text, DimensionText.DegreesText(Angle.FromDegrees(degrees)));

    [Fact]
    public void TaperRatio_Series_IsOneInSoMuch()
    {
        Assert.Equal("1:48", DimensionText.TaperRatio(Taper.InchPins));
        Assert.Equal("1:50", DimensionText.TaperRatio(Taper.MetricPins));
    }

    [Theory]
    [InlineData("R2.5 [.098]", "R2.5\n[.098]")]
    [InlineData("(R2.1) [.083]", "(R2.1)\n[.083]")]
    [InlineData("R2.5", "R2.5")]
    [InlineData("4.1 ±0.05\n[.1614]", "4.1 ±0.05\n[.1614]")]
    [InlineData("[2.5]", "[2.5]")]
    public void Stacked_SecondUnit_GoesUnderTheFirst(string label, string stacked) =>
        Assert.Equal(stacked, new Label([.. label.Split('\n')]).Stacked().ToString());

    [Fact]
    public void Stacked_WithATextureSign_StaysOnTheLineOnWhichTheSignStands()
    {
        Label label = new(["(R2.03) [.080]"]) { Texture = new TextureSign(TextureProcess.NoRemoval) };
        Assert.Same(label, label.Stacked());
    }
}
