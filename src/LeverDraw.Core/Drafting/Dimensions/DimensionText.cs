using System.Globalization;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Profiles;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Drafting.Dimensions;

/// <summary>The only place that turns a size into the words of a dimension: units, decimals, zeros, tolerances, brackets.</summary>
/// <remarks>Millimetres without trailing zeros, inches with fixed decimals and no leading zero (reference 10h). Round brackets mean a reference size, square ones the second unit.</remarks>
/// <param name="millimetreDecimals">Most decimals of a millimetre size; fewer for sizes that nobody can make or measure so finely, such as a casting's.</param>
public sealed partial class DimensionText(ShownUnits units, ToleranceForm form = ToleranceForm.Stated, int millimetreDecimals = DimensionText.MillimetreDecimals)
{
    /// <summary>Of a millimetre size without a tolerance of its own.</summary>
    public const int MillimetreDecimals = 3;

    /// <summary>Of an inch size without a tolerance of its own.</summary>
    public const int InchDecimals = 3;

    public ShownUnits Units => units;

    private LengthUnit First => units.First();

    private LengthUnit? Second => units.Second();

    /// <summary>A size with whatever tolerance it states.</summary>
    /// <param name="sign">Such as <c>⌀</c>, <c>R</c> or <c>2× </c>, before the number.</param>
    /// <param name="after">Words after it; in two units after both, where both stand in one line.</param>
    public Label Size(SizeValue size, string sign = "", string after = "")
    {
        string first = Toleranced(size, First, sign);
        int decimals = DecimalsOf(size, First);
        if (Second is not { } other)
            return new Label([first + after], decimals);
        string second = "[" + Toleranced(size, other, "") + "]";
        return size.Tolerance is null ? new Label([first + " " + second + after], decimals) : new Label([first + after, second], decimals);
    }

    /// <summary>A derived size that is checked: its limits alone, the lower first, for its nominal size is nobody's number. Without a tolerance of its own, as <see cref="Size(SizeValue, string, string)"/>.</summary>
    public Label LimitsOnly(SizeValue size, string sign)
    {
        if (form == ToleranceForm.Limits || StatedLimits.Of(size) is not { } limits)
            return Size(size, sign);
        ShownSize shown = ShownSize.Inwards(limits, First);
        string first = sign + shown.LimitsInLine;
        return new Label(Second is { } other ? [first, "[" + ShownSize.Inwards(LimitsFor(other, shown) ?? limits, other).LimitsInLine + "]"] : [first], shown.LimitDecimals);
    }

    public Label Size(Length size, string sign = "", string after = "") => Size(new SizeValue(size), sign, after);

    /// <summary>A size that follows from others and is given for convenience: in round brackets.</summary>
    public Label Reference(Length size, string sign = "")
    {
        string second = Second is { } other ? " [" + Plain(size, other) + "]" : "";
        return new Label(["(" + sign + Plain(size, First) + ")" + second], DecimalsOf(new SizeValue(size), First)) { IsReference = true };
    }

    /// <summary>A reference size that a table or a fine tolerance also speaks of: inches with four decimals, as there; the second unit below the first.</summary>
    public Label FineReference(Length size, string sign = "")
    {
        string first = "(" + sign + FinePlain(size, First) + ")";
        return new Label(Second is { } other ? [first, "[" + FinePlain(size, other) + "]"] : [first], First == LengthUnit.Inch ? FineInchDecimals : DecimalsOf(new SizeValue(size), First)) { IsReference = true };
    }

    /// <summary>A theoretically exact size: in a box, without a tolerance; a geometrical tolerance or a gauge refers to it. Inches take a fourth decimal where three would round it.</summary>
    public Label Basic(Length size, string sign = "")
    {
        bool round = Math.Abs(size.Inches - Math.Round(size.Inches, InchDecimals)) < 1e-7;
        string second = Second is { } other ? " [" + Text(other) + "]" : "";
        return new Label([sign + Text(First) + second], First == LengthUnit.Inch && !round ? FineInchDecimals : DecimalsOf(new SizeValue(size), First), true);

        string Text(LengthUnit unit) => round ? Plain(size, unit) : FinePlain(size, unit);
    }

    /// <summary>A size that occurs <paramref name="times"/> times alike: <c>2× R1.5</c>.</summary>
    public Label Repeated(int times, SizeValue size, string sign = "") => Size(size, Times(times) + sign);

    /// <summary>Before a size: how often it occurs.</summary>
    public static string Times(int times) => times.ToString(CultureInfo.InvariantCulture) + "× ";

    /// <summary>The length of an arc, along it; the arc sign stands before the number.</summary>
    public Label ArcLength(SizeValue size) => Size(size, "⌒");

    /// <summary>An angle in degrees, at most two decimals.</summary>
    public static Label Degrees(Angle angle, string sign = "", string after = "") =>
        new([sign + DegreesText(angle) + after], 2);

    public static string DegreesText(Angle angle) => angle.Degrees.ToString("0.##", CultureInfo.InvariantCulture) + "°";

    /// <summary>The ratio, as lettered after the taper sign: <c>1:48</c>.</summary>
    public static string TaperRatio(Taper taper) => TaperText.Format(taper);

    /// <summary>Width of a tolerance zone in the sheet's first unit; inches rounded down to a tenth of a thousandth or finer, never wider.</summary>
    public string Zone(Length width) => Zone(width, First);

    /// <summary>The same in every unit of the sheet, for a note: a frame has room for one.</summary>
    public string ZoneInEachUnit(Length width) => InEachUnit(unit => Zone(width, unit));

    private string Zone(Length width, LengthUnit unit) => unit == LengthUnit.Millimetre
        ? Plain(width, unit)
        : InchesAtMost(width, FineInchDecimals).Value.ToString(".0#####", CultureInfo.InvariantCulture);

    /// <summary>Inches in the second place never leave the millimetres shown before them, which may be rounded inwards already. Millimetres after inches are what was meant, and stay so.</summary>
    private static SizeLimits? LimitsFor(LengthUnit second, ShownSize first) => second == LengthUnit.Inch ? first.Limits : null;

    private static string Name(LengthUnit unit) => unit == LengthUnit.Millimetre ? " mm" : " in";

    private string Plain(Length size, LengthUnit unit) => unit == LengthUnit.Millimetre
        ? LengthText.Millimetres(size, millimetreDecimals)
        : LengthText.InchDecimal(size, InchDecimals, leadingZero: false);

    private SizeValue Rounded(SizeValue size, LengthUnit unit) => unit == LengthUnit.Millimetre && millimetreDecimals < MillimetreDecimals
        ? size with { Nominal = Length.FromMillimetres(Math.Round(size.Millimetres, millimetreDecimals, MidpointRounding.AwayFromZero)) }
        : size;

    private int DecimalsOf(SizeValue size, LengthUnit unit)
    {
        if (size.Tolerance is not null)
            return ShownSize.Of(Rounded(size, unit), unit).Decimals;
        if (unit == LengthUnit.Inch)
            return InchDecimals;
        string number = Plain(size.Nominal, unit);
        int point = number.IndexOf('.', StringComparison.Ordinal);
        return point < 0 ? 0 : number.Length - point - 1;
    }

    private string Toleranced(SizeValue size, LengthUnit unit, string sign)
    {
        if (size.Tolerance is null)
            return sign + Plain(size.Nominal, unit);
        ShownSize shown = ShownSize.Of(Rounded(size, First), First);
        if (unit != First)
            shown = ShownSize.Of(Rounded(size, unit), unit, LimitsFor(unit, shown));
        if (form == ToleranceForm.Limits)
            return sign + shown.LimitsStacked;
        string code = size.Tolerance is ZoneTolerance zone ? " " + zone.Code : "";
        return sign + shown.NominalText + code + (code.Length > 0 && form == ToleranceForm.Stated ? " (" + shown.LimitsInLine + ")" : " " + shown.DeviationsText);
    }
}
