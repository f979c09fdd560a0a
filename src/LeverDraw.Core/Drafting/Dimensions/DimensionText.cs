using System.Globalization;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Profiles;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Drafting.Dimensions;

/// <summary>The only place that turns a size into the words of a dimension: units, decimals, zeros, tolerances, brackets.</summary>
/// <remarks>Millimetres without trailing zeros, inches with fixed decimals and no leading zero (reference 10h). Round brackets mean a reference size, square ones the second unit.</remarks>
public sealed class DimensionText(ShownUnits units)
{
    /// <summary>Of a millimetre size without a tolerance of its own.</summary>
    public const int MillimetreDecimals = 3;

    /// <summary>Of a millimetre size with a tolerance of its own: a size taken over from inches keeps its tenth of a thousandth.</summary>
    public const int FineMillimetreDecimals = 4;

    /// <summary>Of an inch size without a tolerance of its own.</summary>
    public const int InchDecimals = 3;

    /// <summary>Of an inch size with a tolerance of its own, at least.</summary>
    public const int FineInchDecimals = 4;

    public ShownUnits Units => units;

    private LengthUnit First => units is ShownUnits.Millimetres or ShownUnits.MillimetresAndInches ? LengthUnit.Millimetre : LengthUnit.Inch;

    private LengthUnit? Second => units switch
    {
        ShownUnits.MillimetresAndInches => LengthUnit.Inch,
        ShownUnits.InchesAndMillimetres => LengthUnit.Millimetre,
        _ => null,
    };

    /// <summary>A size with whatever tolerance it states.</summary>
    /// <param name="sign">Such as <c>⌀</c>, <c>R</c> or <c>2× </c>, before the number.</param>
    /// <param name="after">Words after it.</param>
    public Label Size(SizeValue size, string sign = "", string after = "")
    {
        string first = sign + Toleranced(size, First) + after;
        int decimals = DecimalsOf(size, First);
        if (Second is not { } other)
            return new Label([first], decimals);
        string second = "[" + Toleranced(size, other) + "]";
        return size.Tolerance is null ? new Label([first + " " + second], decimals) : new Label([first, second], decimals);
    }

    public Label Size(Length size, string sign = "", string after = "") => Size(new SizeValue(size), sign, after);

    /// <summary>A size that follows from others and is given for convenience: in round brackets.</summary>
    public Label Reference(Length size, string sign = "")
    {
        string first = "(" + sign + Plain(size, First) + ")";
        return Second is { } other
            ? new Label([first + " [" + Plain(size, other) + "]"], DecimalsOf(new SizeValue(size), First)) { IsReference = true }
            : new Label([first], DecimalsOf(new SizeValue(size), First)) { IsReference = true };
    }

    /// <summary>An angle in degrees, at most two decimals.</summary>
    public static Label Degrees(Angle angle, string sign = "", string after = "") =>
        new([sign + DegreesText(angle) + after], 2);

    public static string DegreesText(Angle angle) => angle.Degrees.ToString("0.##", CultureInfo.InvariantCulture) + "°";

    /// <summary>The ratio, as lettered after the taper sign: <c>1:48</c>.</summary>
    public static string TaperRatio(Taper taper) => TaperText.Format(taper);

    /// <summary>A length in the sheet's units inside a sentence: <c>0.4 mm</c>, <c>.016 in</c>, <c>0.4 mm [.016 in]</c>.</summary>
    public string InSentence(Length size)
    {
        string first = Plain(size, First) + Name(First);
        return Second is { } other ? first + " [" + Plain(size, other) + Name(other) + "]" : first;
    }

    /// <summary>The number alone in the first unit.</summary>
    public string Number(Length size) => Plain(size, First);

    private static string Name(LengthUnit unit) => unit == LengthUnit.Millimetre ? " mm" : " in";

    private static int DecimalsOf(SizeValue size, LengthUnit unit)
    {
        if (unit == LengthUnit.Inch)
        {
            return size.Tolerance switch
            {
                null => InchDecimals,
                DeviationTolerance => InchRounding.FewestDecimals(StatedLimits.Of(size)!.Value, FineInchDecimals).Value.Decimals,
                _ => FineInchDecimals,
            };
        }

        string number = LengthText.Millimetres(size.Nominal, size.Tolerance is null ? MillimetreDecimals : FineMillimetreDecimals);
        int point = number.IndexOf('.', StringComparison.Ordinal);
        return point < 0 ? 0 : number.Length - point - 1;
    }

    private static string Plain(Length size, LengthUnit unit) => unit == LengthUnit.Millimetre
        ? LengthText.Millimetres(size, MillimetreDecimals)
        : LengthText.InchDecimal(size, InchDecimals, leadingZero: false);

    private static string Toleranced(SizeValue size, LengthUnit unit) => size.Tolerance switch
    {
        null => Plain(size.Nominal, unit),
        ZoneTolerance zone => Fine(size.Nominal, unit) + " " + zone.Code + " (" + LimitsText(StatedLimits.Of(size)!.Value, unit) + ")",
        DeviationTolerance deviations when unit == LengthUnit.Millimetre => Fine(size.Nominal, unit) + " " + DeviationText(deviations),
        DeviationTolerance => InchDeviations(size),
        _ => throw new ArgumentOutOfRangeException(nameof(size), size, "Unknown kind of tolerance."),
    };

    private static string Fine(Length size, LengthUnit unit) =>
        unit == LengthUnit.Millimetre ? LengthText.Millimetres(size, FineMillimetreDecimals) : LengthText.InchDecimal(size, FineInchDecimals, leadingZero: false);

    /// <summary>Both limits, the lower first; in inches rounded inwards, never wider.</summary>
    private static string LimitsText(SizeLimits limits, LengthUnit unit)
    {
        if (unit == LengthUnit.Millimetre)
        {
            return limits.Min.Millimetres.ToString("0.000", CultureInfo.InvariantCulture) + " / "
                + limits.Max.Millimetres.ToString("0.000", CultureInfo.InvariantCulture);
        }

        InchLimits inch = InchRounding.FewestDecimals(limits, FineInchDecimals).Value;
        string format = "." + new string('0', inch.Decimals);
        return inch.MinInches.ToString(format, CultureInfo.InvariantCulture) + " / " + inch.MaxInches.ToString(format, CultureInfo.InvariantCulture);
    }

    /// <summary>Nominal and deviations in inches: together they give exactly the limits rounded inwards, never wider than the millimetre ones.</summary>
    private static string InchDeviations(SizeValue size)
    {
        InchLimits limits = InchRounding.FewestDecimals(StatedLimits.Of(size)!.Value, FineInchDecimals).Value;
        string text = LengthText.InchDecimal(size.Nominal, limits.Decimals, leadingZero: false);
        decimal nominal = decimal.Parse(text, CultureInfo.InvariantCulture);
        (decimal upper, decimal lower) = (limits.MaxInches - nominal, limits.MinInches - nominal);
        string format = "." + new string('0', limits.Decimals);
        string Signed(decimal deviation) => deviation == 0
            ? "0"
            : (deviation > 0 ? "+" : "−") + Math.Abs(deviation).ToString(format, CultureInfo.InvariantCulture);
        return upper == -lower
            ? text + " ±" + upper.ToString(format, CultureInfo.InvariantCulture)
            : text + " " + Signed(upper) + "/" + Signed(lower);
    }

    private static string DeviationText(DeviationTolerance deviations)
    {
        if (Math.Abs((deviations.Upper + deviations.Lower).Millimetres) < 1e-9)
            return "±" + Fine(deviations.Upper, LengthUnit.Millimetre);
        return Signed(deviations.Upper) + "/" + Signed(deviations.Lower);
    }

    private static string Signed(Length deviation) => deviation.Millimetres switch
    {
        > 0 => "+" + Fine(deviation, LengthUnit.Millimetre),
        < 0 => "−" + Fine(-deviation, LengthUnit.Millimetre),
        _ => "0",
    };
}
