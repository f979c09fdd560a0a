using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Lookups;

/// <summary>A value as text and as numbers, in the metric unit and, where there is one, in the inch unit.</summary>
/// <param name="Text">With its unit.</param>
/// <param name="InchText">The same in inches; empty when there is none.</param>
/// <param name="Numbers">One value, or the least and the most, in <paramref name="Unit"/>; none for a word.</param>
/// <param name="Unit">Such as <c>mm</c>, <c>deg</c>, <c>g/cm3</c>; empty for a bare number or a word.</param>
/// <param name="InchNumbers">As <paramref name="Numbers"/>, in <paramref name="InchUnit"/>.</param>
public sealed record LookupValue(
    string Text, string InchText, ImmutableArray<double> Numbers, string Unit, ImmutableArray<double> InchNumbers, string InchUnit)
{
    private const int MillimetreDecimals = 4, InchDecimals = 5, LimitDecimals = 4;

    public static LookupValue Word(string text) => new(text, "", [], "", [], "");

    public static LookupValue Size(Length size) => new(
        LengthText.WithUnit(size, LengthUnit.Millimetre, MillimetreDecimals),
        LengthText.WithUnit(size, LengthUnit.Inch, InchDecimals),
        [Plain(size.Millimetres)], "mm", [Plain(size.Inches)], "in");

    /// <summary>From one size to another, rounded to the nearest; for limits take <see cref="Limits"/>.</summary>
    public static LookupValue Range(Length least, Length most) => least == most ? Size(least) : new(
        LengthText.Millimetres(least, MillimetreDecimals) + " to " + LengthText.WithUnit(most, LengthUnit.Millimetre, MillimetreDecimals),
        Inch(least) + " to " + Inch(most) + " in",
        [Plain(least.Millimetres), Plain(most.Millimetres)], "mm", [Plain(least.Inches), Plain(most.Inches)], "in");

    /// <summary>Limits of size; the inch limits are rounded inwards, so they never let a size pass that the millimetre limits refuse.</summary>
    public static LookupValue Limits(SizeLimits limits)
    {
        // Millimetres are tabled to a tenth of a micrometre (js halves an odd one), so six decimals show them as they are.
        string text = LengthText.Millimetres(limits.Min, 6) + " to " + LengthText.WithUnit(limits.Max, LengthUnit.Millimetre, 6);
        ImmutableArray<double> numbers = [Plain(limits.Min.Millimetres), Plain(limits.Max.Millimetres)];
        Answer<InchLimits> inches = InchRounding.FewestDecimals(limits, LimitDecimals);
        if (!inches.IsGiven)
            inches = InchRounding.Limits(limits, InchRounding.MostDecimals);
        return inches.IsGiven
            ? new(text, Shown(inches.Value.MinInches) + " to " + Shown(inches.Value.MaxInches) + " in",
                numbers, "mm", [(double)inches.Value.MinInches, (double)inches.Value.MaxInches], "in")
            : new(text, "", numbers, "mm", [], "");
    }

    /// <summary>Plus or minus; the inch value is rounded down, so it never widens the tolerance.</summary>
    public static LookupValue PlusMinus(Length value)
    {
        decimal inches = InchRounding.Limits(new SizeLimits(-value, value), InchDecimals).Value.MaxInches;
        return new(
            "±" + LengthText.WithUnit(value, LengthUnit.Millimetre, MillimetreDecimals), "±" + Shown(inches) + " in",
            [Plain(value.Millimetres)], "mm", [(double)inches], "in");
    }

    public static LookupValue Turn(Angle angle) => new(AngleText.Degrees(angle, 3), "", [Plain(angle.Degrees)], "deg", [], "");

    public static LookupValue TurnRange(Angle least, Angle most) => least.CompareTo(most) == 0 ? Turn(least) : new(
        AngleText.Degrees(least, 3).TrimEnd('°') + " to " + AngleText.Degrees(most, 3), "", [Plain(least.Degrees), Plain(most.Degrees)], "deg", [], "");

    public static LookupValue TurnPlusMinus(Angle angle) => new("±" + AngleText.DegreesMinutesSeconds(angle), "", [Plain(angle.Degrees)], "deg", [], "");

    /// <summary>Length per length, shown as mm/m and in/ft.</summary>
    public static LookupValue PerLength(double least, double most)
    {
        double[] ends = least == most ? [least] : [least, most];
        return new(
            string.Join(" to ", ends.Select(e => Shown(e * 1000, 2))) + " mm/m",
            string.Join(" to ", ends.Select(e => LengthText.InchFraction(Length.FromInches(e * 12)) ?? Shown(e * 12, 4))) + " in/ft",
            [.. ends.Select(e => Plain(e * 1000))], "mm/m", [.. ends.Select(e => Plain(e * 12))], "in/ft");
    }

    /// <summary>Numbers of a unit that has no inch twin; <paramref name="unit"/> may be empty.</summary>
    public static LookupValue Amount(double least, double most, string unit)
    {
        double[] ends = least == most ? [least] : [least, most];
        return new(
            string.Join(" to ", ends.Select(e => Shown(e, 4))) + (unit.Length == 0 ? "" : " " + unit), "",
            [.. ends.Select(Plain)], unit, [], "");
    }

    private static string Inch(Length length) =>
        LengthText.InchFraction(length) ?? Shown(Math.Round((decimal)length.Inches, InchDecimals, MidpointRounding.AwayFromZero));

    private static string Shown(decimal number) => number.ToString("0.######", CultureInfo.InvariantCulture);

    private static string Shown(double number, int decimals) =>
        Math.Round((decimal)number, decimals, MidpointRounding.AwayFromZero).ToString("0.####", CultureInfo.InvariantCulture);

    // 3.06 + 0.018 is not quite 3.078 in binary; a picometre is beneath every table.
    private static double Plain(double number) => Math.Round(number, 9, MidpointRounding.AwayFromZero) + 0.0;
}
