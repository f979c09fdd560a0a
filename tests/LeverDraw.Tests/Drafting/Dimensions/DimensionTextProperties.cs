using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Profiles;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Tests.Drafting.Dimensions;

/// <summary>What is lettered never allows more than the profile does, in any form and either unit.</summary>
public partial class DimensionTextProperties
{
    private static readonly string[] Zones =
        ["H6", "H7", "H8", "H9", "H11", "h5", "h6", "h7", "h9", "js6", "JS7", "f7", "g6", "G7", "F8", "E9", "d9", "k6", "K7", "m6", "n6", "N9", "P7", "p6", "D10", "H13"];

    // To the tenth of a micrometre, as profiles have them, and sizes taken over from 64ths of an inch.
    private static readonly Gen<Length> Sizes = Gen.OneOf(
        Gen.Int[10_000, 1_200_000].Select(i => Length.FromMillimetres(i / 10_000.0)),
        Gen.Int[3, 300].Select(i => Length.FromInches(i / 64.0)));

    private static readonly Gen<SizeValue> Fits = Gen.Select(Sizes, Gen.Int[0, Zones.Length - 1].Select(i => Zones[i]), (n, z) => new SizeValue(n, new ZoneTolerance(z)))
        .Where(s => StatedLimits.Of(s) is not null);

    // In hundredths of a millimetre or ten-thousandths of an inch.
    private static readonly Gen<SizeValue> Deviations = Gen.Select(Sizes, Gen.Int[-40, 40], Gen.Int[1, 60], Gen.Bool, (n, low, width, inch) =>
    {
        double unit = inch ? 0.00254 : 0.01;
        return new SizeValue(n, new DeviationTolerance(Length.FromMillimetres((low + width) * unit), Length.FromMillimetres(low * unit)));
    });

    [Fact]
    public void Fits_InEitherUnitAndAnyForm_NeverLeaveTheTrueLimits() =>
        Gen.Select(Fits, Gen.Bool, Gen.Enum<ToleranceForm>()).Sample((size, inch, form) =>
        {
            (decimal? nominal, decimal low, decimal high) = Read(Text(size, inch, form));
            SizeLimits true_ = StatedLimits.Of(size)!.Value;
            double k = inch ? 25.4 : 1;
            Assert.True((double)low * k >= true_.Min.Millimetres - 1e-9 && (double)high * k <= true_.Max.Millimetres + 1e-9 && low <= high, Text(size, inch, form));
            bool inside = size.Millimetres >= true_.Min.Millimetres - 1e-9 && size.Millimetres <= true_.Max.Millimetres + 1e-9;
            Assert.True(!inside || nominal is not { } n || (n >= low && n <= high), Text(size, inch, form) + " for " + size.Millimetres.ToString("R", CultureInfo.InvariantCulture));
        });

    /// <summary>Millimetre deviations are said as typed; the nominal size beside them is to 0.0001 mm, so the limits are to half of that.</summary>
    [Fact]
    public void DeviationsAsTyped_InEitherUnitAndAnyForm_KeepTheirLimits() =>
        Gen.Select(Deviations, Gen.Bool, Gen.Enum<ToleranceForm>()).Sample((size, inch, form) =>
        {
            (_, decimal low, decimal high) = Read(Text(size, inch, form));
            SizeLimits true_ = StatedLimits.Of(size)!.Value;
            double k = inch ? 25.4 : 1;
            double slack = inch ? 1e-9 : 0.5e-4 + 1e-9;
            Assert.True((double)low * k >= true_.Min.Millimetres - slack && (double)high * k <= true_.Max.Millimetres + slack && low < high, Text(size, inch, form));
        });

    /// <summary>Whoever works by the inches in brackets makes nothing that the millimetres before them refuse.</summary>
    [Fact]
    public void Inches_BesideMillimetres_StayWithinTheMillimetresShown() =>
        Gen.Select(Gen.OneOf(Fits, Deviations), Gen.Enum<ToleranceForm>()).Sample((size, form) =>
        {
            string[] lines = [.. new DimensionText(ShownUnits.MillimetresAndInches, form).Size(size).Lines];
            (_, decimal low, decimal high) = Read(lines[0]);
            (_, decimal inchLow, decimal inchHigh) = Read(lines[1][1..^1]);
            Assert.True(inchLow * 25.4m >= low && inchHigh * 25.4m <= high && inchLow <= inchHigh, string.Join('\n', lines));
        });

    [Fact]
    public void NominalShown_IsTheTrueOneWithinItsOwnLastPlace() =>
        Gen.Select(Fits, Gen.Bool).Sample((size, inch) =>
        {
            decimal nominal = Read(Text(size, inch, ToleranceForm.Stated)).Nominal!.Value;
            double off = Math.Abs(((double)nominal * (inch ? 25.4 : 1)) - size.Millimetres);
            Assert.True(off <= (inch ? 0.0001 * 25.4 : 1e-3) + 1e-9, Text(size, inch, ToleranceForm.Stated));
        });

    private static string Text(SizeValue size, bool inch, ToleranceForm form) =>
        new DimensionText(inch ? ShownUnits.Inches : ShownUnits.Millimetres, form).Size(size).ToString();

    /// <summary>Read as a machinist would: limits in brackets or one over the other, or the nominal size and its deviations.</summary>
    private static (decimal? Nominal, decimal Low, decimal High) Read(string text)
    {
        if (InBrackets().Match(text) is { Success: true } fit)
            return (Number(fit.Groups[1].Value), Number(fit.Groups[2].Value), Number(fit.Groups[3].Value));
        if (Stacked().Match(text) is { Success: true } limits)
            return (null, Number(limits.Groups[2].Value), Number(limits.Groups[1].Value));
        if (Symmetric().Match(text) is { Success: true } both)
            return (Number(both.Groups[1].Value), Number(both.Groups[1].Value) - Number(both.Groups[2].Value), Number(both.Groups[1].Value) + Number(both.Groups[2].Value));
        Match pair = Pair().Match(text);
        Assert.True(pair.Success, text);
        decimal nominal = Number(pair.Groups[1].Value);
        return (nominal, nominal + Number(pair.Groups[3].Value), nominal + Number(pair.Groups[2].Value));
    }

    private static decimal Number(string text) => decimal.Parse(text.Replace('−', '-'), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(\d*\.?\d+) [A-Za-z]+\d+ \((\d*\.\d+) / (\d*\.\d+)\)$")]
    private static partial Regex InBrackets();

    [GeneratedRegex(@"^(\d*\.\d+)/(\d*\.\d+)$")]
    private static partial Regex Stacked();

    [GeneratedRegex(@"^(\d*\.?\d+)(?: [A-Za-z]+\d+)? ±(\d*\.?\d+)$")]
    private static partial Regex Symmetric();

    [GeneratedRegex(@"^(\d*\.?\d+)(?: [A-Za-z]+\d+)? ([+−]\d*\.?\d+|0)/([+−]\d*\.?\d+|0)$")]
    private static partial Regex Pair();
}
