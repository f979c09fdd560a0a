using System.Globalization;
using LeverDraw.Units;

namespace LeverDraw.Tests.Units;

/// <summary>Millimetres worked by hand from 1 in = 25.4 mm exactly.</summary>
public class LengthTextTests
{
    [Theory]
    [InlineData("3.6", 3.6)]
    [InlineData(" 3.6 mm ", 3.6)]
    [InlineData("3.6mm", 3.6)]
    [InlineData(".5", 0.5)]
    [InlineData("5.", 5)]
    [InlineData("+2", 2)]
    [InlineData("-0.25 mm", -0.25)]
    [InlineData("\u22121 mm", -1)]
    [InlineData("9/16 in", 14.2875)]
    [InlineData("1 3/16 in", 30.1625)]
    [InlineData("1-3/16 in", 30.1625)]
    [InlineData("1 - 3/16 in", 30.1625)]
    [InlineData("9/16\"", 14.2875)]
    [InlineData("9/16”", 14.2875)]
    [InlineData("9/16″", 14.2875)]
    [InlineData("9/16''", 14.2875)]
    [InlineData("0.5 IN", 12.7)]
    [InlineData("0.5 in.", 12.7)]
    [InlineData("2 inches", 50.8)]
    [InlineData("½ in", 12.7)]
    [InlineData("1½ in", 38.1)]
    [InlineData("1 ¾\"", 44.45)]
    [InlineData("-1 1/2 in", -38.1)]
    public void Parse_GoodText_GivesMillimetres(string text, double expected) =>
        Assert.Equal(expected, LengthText.Parse(text, LengthUnit.Millimetre).Value.Millimetres, 12);

    [Theory]
    [InlineData("9/16", 14.2875)]
    [InlineData("0.25", 6.35)]
    [InlineData("0.25 mm", 0.25)]
    public void Parse_InchIsTheUnit_PlainNumbersAreInches(string text, double expected) =>
        Assert.Equal(expected, LengthText.Parse(text, LengthUnit.Inch).Value.Millimetres, 12);

    [Theory]
    [InlineData("", "empty", 0)]
    [InlineData("   ", "empty", 0)]
    [InlineData("abc", "number is expected", 0)]
    [InlineData("9/0 in", "zero", 2)]
    [InlineData("9/ in", "missing", 2)]
    [InlineData("9/16", "add 'in'", 4)]
    [InlineData("9/16 mm", "add 'in'", 5)]
    [InlineData("3 mm in", "two units", 5)]
    [InlineData("3 mm\"", "two units", 4)]
    [InlineData("3'", "feet", 1)]
    [InlineData("3 ft", "feet", 2)]
    [InlineData("3' 6\"", "feet", 1)]
    [InlineData("NaN", "finite", 0)]
    [InlineData("-inf", "finite", 0)]
    [InlineData("Infinity", "finite", 0)]
    [InlineData("1e400", "exponent", 1)]
    [InlineData("1E3 mm", "exponent", 1)]
    [InlineData("3,6 mm", "comma", 1)]
    [InlineData("3.6.1", "two decimal points", 3)]
    [InlineData("3 4 mm", "two numbers", 2)]
    [InlineData("1.5 3/16 in", "do not go together", 4)]
    [InlineData("1.5½ in", "do not go together", 3)]
    [InlineData("1 17/16 in", "less than one", 2)]
    [InlineData("1.5/2 in", "whole numbers", 3)]
    [InlineData("1/2/3 in", "two fraction bars", 3)]
    [InlineData("1- in", "after '-'", 3)]
    [InlineData("3 cm", "mm or in", 2)]
    [InlineData("3 furlongs", "mm or in", 2)]
    [InlineData("40°", "angle", 2)]
    [InlineData("40 deg", "angle", 3)]
    [InlineData("3 mm each", "after the unit", 5)]
    [InlineData("3 inx", "mm or in", 2)]
    [InlineData("--3", "number is expected", 1)]
    [InlineData(".", "number is expected", 0)]
    public void Parse_Nonsense_GivesReasonAndPlace(string text, string reason, int index)
    {
        TextFault fault = LengthText.Parse(text, LengthUnit.Millimetre).Fault!;
        Assert.Contains(reason, fault.Reason, StringComparison.Ordinal);
        Assert.True(Math.Abs(fault.Index - index) <= 1, $"index {fault.Index.ToString(CultureInfo.InvariantCulture)}");
    }

    [Fact]
    public void Parse_MegabyteOfDigits_IsRefused() =>
        Assert.Contains("too long", LengthText.Parse(new string('9', 1_000_000), LengthUnit.Millimetre).Fault!.Reason, StringComparison.Ordinal);

    [Fact]
    public void Parse_UnitNamed_IsToldApart()
    {
        Assert.True(LengthText.Parse("3 mm", LengthUnit.Millimetre).StatesUnit);
        Assert.False(LengthText.Parse("3", LengthUnit.Millimetre).StatesUnit);
    }

    [Fact]
    public void Value_OfFault_Throws() =>
        Assert.Throws<InvalidOperationException>(() => LengthText.Parse("x", LengthUnit.Inch).Value);

    [Theory]
    [InlineData(3.6, 2, "3.6")]
    [InlineData(3.0, 2, "3")]
    [InlineData(2.675, 2, "2.68")]
    [InlineData(-2.675, 2, "-2.68")]
    [InlineData(-0.001, 2, "0")]
    [InlineData(1e-7, 3, "0")]
    [InlineData(1e-7, 7, "0.0000001")]
    [InlineData(120, 0, "120")]
    public void Millimetres_Rounded_HasNoTrailingZeros(double mm, int decimals, string expected) =>
        Assert.Equal(expected, LengthText.Millimetres(Length.FromMillimetres(mm), decimals));

    [Theory]
    [InlineData(3.5814, 3, false, ".141")]
    [InlineData(3.5814, 3, true, "0.141")]
    [InlineData(-3.5814, 3, false, "-.141")]
    [InlineData(25.4, 3, false, "1.000")]
    [InlineData(0, 2, false, ".00")]
    [InlineData(0.3, 0, false, "0")]
    public void InchDecimal_Fixed_KeepsItsDecimals(double mm, int decimals, bool leadingZero, string expected) =>
        Assert.Equal(expected, LengthText.InchDecimal(Length.FromMillimetres(mm), decimals, leadingZero));

    [Theory]
    [InlineData(14.2875, "9/16")]
    [InlineData(30.1625, "1 3/16")]
    [InlineData(25.4, "1")]
    [InlineData(0, "0")]
    [InlineData(-12.7, "-1/2")]
    [InlineData(0.396875, "1/64")]
    [InlineData(3.6, null)]
    [InlineData(1e300, null)]
    public void InchFraction_OnlyOfWhole64ths_InLowestTerms(double mm, string? expected) =>
        Assert.Equal(expected, LengthText.InchFraction(Length.FromMillimetres(mm)));

    [Fact]
    public void Both_FractionOrDecimal_StandsInBrackets()
    {
        Assert.Equal("14.288 mm (9/16 in)", LengthText.Both(Length.FromMillimetres(14.2875), 3, 4));
        Assert.Equal("3.6 mm (0.1417 in)", LengthText.Both(Length.FromMillimetres(3.6), 3, 4));
    }

    [Fact]
    public void WithUnit_NamesTheUnit()
    {
        Assert.Equal("0.1417 in", LengthText.WithUnit(Length.FromMillimetres(3.6), LengthUnit.Inch, 4));
        Assert.Equal("3.6 mm", LengthText.WithUnit(Length.FromMillimetres(3.6), LengthUnit.Millimetre, 4));
    }

    [Fact]
    public void ParseAndFormat_CommaCulture_IsNoMatter()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(3.6, LengthText.Parse("3.6 mm", LengthUnit.Inch).Value.Millimetres);
            Assert.Equal("3.6", LengthText.Millimetres(Length.FromMillimetres(3.6), 2));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
