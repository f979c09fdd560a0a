using CsCheck;
using LeverDraw.Units;

namespace LeverDraw.Tests.Units;

public class TextProperties
{
    private static readonly Gen<double> Sizes = Gen.OneOf(
        Gen.Double[-1e6, 1e6], Gen.Double[-20, 20], Gen.Double[1e-9, 1e-4], Gen.Int[-9999, 9999].Select(n => n / 100.0))
        .Select(mm => Math.Abs(mm) < 1e-9 ? 0 : mm);

    [Fact]
    public void Length_ExactThenParse_IsTheSame() =>
        Sizes.Sample(mm => Assert.Equal(Length.FromMillimetres(mm), LengthText.Parse(LengthText.Exact(Length.FromMillimetres(mm)), LengthUnit.Inch).Value));

    [Fact]
    public void Length_RoundedThenParse_IsWithinHalfAStep() =>
        Gen.Select(Sizes, Gen.Int[0, LengthText.MostDecimals], Gen.Bool).Sample((mm, decimals, inch) =>
        {
            LengthUnit unit = inch ? LengthUnit.Inch : LengthUnit.Millimetre;
            Length length = Length.FromMillimetres(mm);
            Length back = LengthText.Parse(LengthText.Number(length, unit, decimals), unit).Value;
            double step = Math.Pow(10, -decimals) * (inch ? 25.4 : 1);
            Assert.True(Math.Abs(back.Millimetres - mm) <= (step / 2 * (1 + 1e-9)) + (Math.Abs(mm) * 1e-15));
        });

    [Fact]
    public void Length_64thsThenParse_IsTheSameWithinRounding() =>
        Gen.Int[-64_000, 64_000].Sample(n =>
        {
            Length length = Length.FromInches(n / 64.0);
            Assert.Equal(length.Millimetres, LengthText.Parse(LengthText.InchFraction(length)!, LengthUnit.Inch).Value.Millimetres, 9);
        });

    [Fact]
    public void Length_AnyText_NeverThrowsAndPointsIntoIt() =>
        Gen.String[Gen.OneOf(Gen.Char["0123456789./-+ \"'°½mminftdeg:,eE\u2033\u00A0"], Gen.Char), 0, 80].Sample(text =>
        {
            foreach (TextFault? fault in new[] { LengthText.Parse(text, LengthUnit.Inch).Fault, AngleText.Parse(text).Fault, TaperText.Parse(text).Fault })
                Assert.True(fault is null || (fault.Index >= 0 && fault.Index <= text.Length));
        });

    [Fact]
    public void Angle_FormatThenParse_IsTheSameWithinRounding() =>
        Gen.Double[-360, 360].Sample(degrees =>
        {
            Angle angle = Angle.FromDegrees(degrees);
            Assert.Equal(degrees, AngleText.Parse(AngleText.Degrees(angle, 9)).Value.Degrees, 1e-9);
            Assert.Equal(degrees, AngleText.Parse(AngleText.DegreesMinutesSeconds(angle)).Value.Degrees, 0.5 / 3600 + 1e-9);
        });

    [Fact]
    public void Taper_FormatThenParse_IsTheSameWithinRounding() =>
        Gen.Double[1, 1000].Sample(n =>
            Assert.Equal(n, TaperText.Parse(TaperText.Format(Taper.OneIn(n), 9)).Value.LengthPerUnit, 1e-9));
}
