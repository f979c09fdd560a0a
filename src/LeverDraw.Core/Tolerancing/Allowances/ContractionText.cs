using System.Globalization;
using LeverDraw.Units;

namespace LeverDraw.Tolerancing.Allowances;

/// <summary>Contraction as written: <c>1.04 %</c>, <c>1 in 96</c>, <c>1/8 in/ft</c>, <c>10.4 mm/m</c>.</summary>
public static class ContractionText
{
    /// <summary>Greatest that is taken, one part in thirty: no casting metal contracts more (reference 04b, 26 mm/m).</summary>
    private const double Greatest = 1.0 / 30;

    /// <returns>Null when it is none of the four forms, or not from zero to one part in thirty.</returns>
    public static ContractionRate? Parse(string text)
    {
        string s = text.Trim();
        double? value =
            Before(s, "%") is { } percent ? percent / 100
            : Before(s, "mm/m") is { } permille ? permille / 1000
            : Before(s, "in/ft") is { } perFoot ? perFoot / 12
            : s.StartsWith("1 in ", StringComparison.OrdinalIgnoreCase) && Number(s[5..]) is { } n and > 0 ? 1 / n
            : null;
        return value is >= 0 and <= Greatest ? ContractionRate.Of(value.Value) : null;
    }

    /// <summary><c>1 in 96</c>, with a decimal where it is not whole.</summary>
    public static string OneIn(ContractionRate rate) =>
        rate.Value == 0 ? "NONE" : "1 in " + rate.OneInN.ToString("0.#", CultureInfo.InvariantCulture);

    public static string Percent(ContractionRate rate) => rate.Percent.ToString("0.##", CultureInfo.InvariantCulture) + " %";

    private static double? Before(string s, string unit) =>
        s.EndsWith(unit, StringComparison.OrdinalIgnoreCase) ? Number(s[..^unit.Length]) : null;

    // A fraction such as 3/16 is a pure number here; the only parser of fractions is the one for inches.
    private static double? Number(string s) =>
        LengthText.Parse(s.Trim(), LengthUnit.Inch) is { Ok: true, StatesUnit: false } number ? number.Value.Inches : null;
}
