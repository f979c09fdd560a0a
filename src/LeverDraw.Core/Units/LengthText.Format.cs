using System.Globalization;

namespace LeverDraw.Units;

/// <content>Writing. Halves are rounded away from zero, on the decimal value nearest to the double.</content>
public static partial class LengthText
{
    public const int MostDecimals = 9;

    /// <summary>A hundred thousandth of a sixty-fourth of an inch: what counts as an exact fraction.</summary>
    private const double FractionSlack = 1e-7;

    private const int FinestFraction = 64;

    /// <summary>The number in <paramref name="unit"/>, without the unit's name.</summary>
    public static string Number(Length length, LengthUnit unit, int decimals) =>
        unit == LengthUnit.Inch ? InchDecimal(length, decimals, leadingZero: true) : Millimetres(length, decimals);

    /// <summary>The number and the unit: <c>3.6 mm</c>, <c>0.1417 in</c>; without trailing zeros.</summary>
    public static string WithUnit(Length length, LengthUnit unit, int decimals) =>
        unit == LengthUnit.Inch ? Trimmed(length.Inches, decimals) + " in" : Millimetres(length, decimals) + " mm";

    /// <summary>Millimetres with at most <paramref name="decimals"/> decimals, no trailing zeros, no unit.</summary>
    public static string Millimetres(Length length, int decimals) => Trimmed(length.Millimetres, decimals);

    /// <summary>Inches with exactly <paramref name="decimals"/> decimals, no unit.</summary>
    /// <param name="leadingZero">False writes <c>.141</c> for 0.141, as inch drawings do.</param>
    public static string InchDecimal(Length length, int decimals, bool leadingZero)
    {
        string text = Rounded(length.Inches, decimals).ToString("F" + Check(decimals).ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        if (leadingZero || decimals == 0)
            return text;
        return text.StartsWith("0.", StringComparison.Ordinal) ? text[1..]
            : text.StartsWith("-0.", StringComparison.Ordinal) ? "-" + text[2..]
            : text;
    }

    /// <summary>Inches as a fraction in lowest terms, such as <c>1 3/16</c>, when the length is a whole number of 64ths within 1e-7 in; otherwise null.</summary>
    public static string? InchFraction(Length length)
    {
        double parts = Math.Abs(length.Inches) * FinestFraction;
        double whole = Math.Round(parts);
        if (Math.Abs(parts - whole) > FractionSlack * FinestFraction || whole > int.MaxValue)
            return null;
        int top = (int)whole;
        int bottom = FinestFraction;
        while (top % 2 == 0 && bottom > 1)
            (top, bottom) = (top / 2, bottom / 2);
        string sign = length.Millimetres < 0 && top != 0 ? "-" : "";
        (int inches, int rest) = Math.DivRem(top, bottom);
        return rest == 0 ? string.Create(CultureInfo.InvariantCulture, $"{sign}{inches}")
            : inches == 0 ? string.Create(CultureInfo.InvariantCulture, $"{sign}{rest}/{bottom}")
            : string.Create(CultureInfo.InvariantCulture, $"{sign}{inches} {rest}/{bottom}");
    }

    /// <summary>Both units: <c>14.2875 mm (9/16 in)</c>, or the decimal inch when there is no exact fraction: <c>3.6 mm (0.1417 in)</c>.</summary>
    public static string Both(Length length, int millimetreDecimals, int inchDecimals) =>
        Millimetres(length, millimetreDecimals) + " mm (" + (InchFraction(length) ?? InchDecimal(length, inchDecimals, leadingZero: true)) + " in)";

    /// <summary>A text that <see cref="Parse"/> reads back to the very same length, if that is zero or of 1e-9 to 1e12 mm either way.</summary>
    public static string Exact(Length length) => PlainDecimal(length.Millimetres) + " mm";

    private static string Trimmed(double value, int decimals)
    {
        string text = Rounded(value, decimals).ToString("F" + Check(decimals).ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text.Contains('.', StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd('.') : text;
    }

    // 2.675 as a double is a little less; a reader of the decimal text expects 2.68, so the shortest decimal form is rounded.
    private static decimal Rounded(double value, int decimals)
    {
        if (Math.Abs(value) >= 1e12)
            throw new ArgumentOutOfRangeException(nameof(value), "A length of more than a thousand million millimetres is not written.");
        decimal rounded = Math.Round(decimal.Parse(PlainDecimal(value), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture), Check(decimals), MidpointRounding.AwayFromZero);
        return rounded == 0 ? 0m : rounded;
    }

    private static int Check(int decimals) =>
        decimals is >= 0 and <= MostDecimals
            ? decimals
            : throw new ArgumentOutOfRangeException(nameof(decimals), "Decimals are from 0 to 9.");

    // "R" goes over to an exponent below 1e-5; 28 decimals is what a decimal can hold.
    private static string PlainDecimal(double value)
    {
        string text = value.ToString("R", CultureInfo.InvariantCulture);
        return text.Contains('E', StringComparison.Ordinal)
            ? value.ToString("F28", CultureInfo.InvariantCulture).TrimEnd('0').TrimEnd('.')
            : text;
    }
}
