using System.Text;
using LeverDraw.Writers;

namespace LeverDraw.Tests.Writers;

public class PaperNumberTests
{
    [Theory]
    [InlineData(0, "0")]
    [InlineData(-0.0, "0")]
    [InlineData(-0.00004, "0")]
    [InlineData(12.5, "12.5")]
    [InlineData(-12.34567, "-12.3457")]
    [InlineData(100, "100")]
    [InlineData(0.0001, "0.0001")]
    [InlineData(0.79375, "0.7938")]
    [InlineData(0.79374999999999984, "0.7938")]
    [InlineData(-0.79374999999999984, "-0.7938")]
    [InlineData(1e7, "10000000")]
    public void Paper_Value_IsRoundedOnceAndTrimmed(double value, string expected) =>
        Assert.Equal(expected, Text(value, PaperNumber.Paper));

    [Theory]
    [InlineData(5, "5.0")]
    [InlineData(-0.0, "0.0")]
    [InlineData(4e-11, "0.0")]
    [InlineData(-4e-11, "0.0")]
    [InlineData(0.1234567890123, "0.123456789")]
    [InlineData(1.0000000001, "1.0000000001")]
    [InlineData(-297.25, "-297.25")]
    public void Exact_Value_HasOneToTenDecimals(double value, string expected) =>
        Assert.Equal(expected, Text(value, PaperNumber.Exact));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(1e8)]
    public void AnyForm_NotADrawingsNumber_Throws(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Text(value, PaperNumber.Paper));
        Assert.Throws<ArgumentOutOfRangeException>(() => Text(value, PaperNumber.Exact));
        Assert.Throws<ArgumentOutOfRangeException>(() => Text(value, PaperNumber.Full));
    }

    [Fact]
    public void Full_SmallValue_HasNoExponent() => Assert.Equal("0.00000123", Text(0.00000123, PaperNumber.Full));

    internal delegate int Form(double value, Span<byte> to);

    internal static string Text(double value, Form form)
    {
        Span<byte> buffer = stackalloc byte[PaperNumber.MaxBytes];
        return Encoding.ASCII.GetString(buffer[..form(value, buffer)]);
    }
}
