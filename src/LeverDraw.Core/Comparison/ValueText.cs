using System.Globalization;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Comparison;

/// <summary>The words of a comparison's values and differences, the same on the sheet, on the terminal and in the files.</summary>
public static class ValueText
{
    /// <summary>Stands for a size that a variant has not got.</summary>
    public const string None = "–";

    private const int MillimetreDecimals = 3, InchDecimals = 4, AngleDecimals = 2;

    /// <summary>All variants' values in one unit; tolerances where they differ, fits always.</summary>
    public static string[] Of(ComparedRow row, LengthUnit unit) => [.. row.Values.Select(v => Of(v, unit, row.ShowsTolerances))];

    /// <summary>With its sign: <c>−0.6</c>, <c>+2°</c>; empty where there is no difference to speak of as a number.</summary>
    /// <remarks>What a reader gets who takes the one figure shown from the other. In a unit in which the sizes are not shown it is the difference of the sizes themselves.</remarks>
    /// <param name="unit">Of a length's difference.</param>
    /// <param name="shown">The two sizes stand beside it in this unit.</param>
    public static string Delta(ComparedRow row, LengthUnit unit, bool shown) => row switch
    {
        { Delta: { } length, Values: [ComparedSize a, ComparedSize b] } => Signed(Plain(shown ? Shown(b, unit) - Shown(a, unit) : length, unit)),
        { AngleDelta: not null, Values: [ComparedAngle a, ComparedAngle b] } => Signed(Degrees(Angle.FromDegrees(Shown(Degrees(b.Angle)) - Shown(Degrees(a.Angle))))),
        { FigureDelta: { } figure, Values: [ComparedFigure a, ComparedFigure b] } => Signed(Figure(figure with { Value = Shown(Figure(b)) - Shown(Figure(a)) })),
        _ => string.Empty,
    };

    /// <summary>The unit a row's numbers are in; empty for words.</summary>
    public static string UnitOf(ComparedRow row, LengthUnit unit) => row.Values.FirstOrDefault(v => v is not null) switch
    {
        ComparedSize => unit.Word(),
        ComparedFigure figure => figure.Unit,
        ComparedRoughness => "µm",
        _ => string.Empty,
    };

    /// <summary>How far any area may be off, rounded up so that it stays a bound: <c>0.06 mm²</c>.</summary>
    public static string AreaError(LeverComparison c) => (Math.Ceiling(c.AreaError * 100) / 100).ToString("0.##", CultureInfo.InvariantCulture) + " mm²";

    /// <summary>A length without its unit's name.</summary>
    public static string Plain(Length length, LengthUnit unit) => unit == LengthUnit.Inch
        ? LengthText.InchDecimal(length, InchDecimals, leadingZero: false)
        : LengthText.Millimetres(length, MillimetreDecimals);

    public static string Figure(ComparedFigure figure) => figure.Value.ToString("F" + figure.Decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static string Degrees(Angle angle) => AngleText.Degrees(angle, AngleDecimals);

    /// <summary>The number that a text of this file says.</summary>
    private static double Shown(string text) => double.Parse(text.TrimEnd('°'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);

    private static Length Shown(ComparedSize size, LengthUnit unit)
    {
        double number = Shown(Plain(size.Size.Nominal, unit));
        return unit == LengthUnit.Inch ? Length.FromInches(number) : Length.FromMillimetres(number);
    }

    private static string Of(ComparedValue? value, LengthUnit unit, bool tolerances) => value switch
    {
        null => None,
        ComparedSize size => Plain(size.Size.Nominal, unit) + (tolerances ? Tolerance(size.Size.Tolerance, unit) : string.Empty),
        ComparedAngle angle => Degrees(angle.Angle),
        ComparedTaper taper => TaperText.Format(taper.Taper),
        ComparedRoughness rough => "Ra " + (rough.Ra.Millimetres * 1000).ToString("0.##", CultureInfo.InvariantCulture),
        ComparedWord word => word.Word,
        ComparedFigure figure => Figure(figure),
        _ => throw new ArgumentOutOfRangeException(nameof(value)),
    };

    private static string Tolerance(StatedTolerance? tolerance, LengthUnit unit) => tolerance switch
    {
        ZoneTolerance zone => " " + zone.Code,
        DeviationTolerance d => " " + Signed(Plain(d.Upper, unit)) + "/" + Signed(Plain(d.Lower, unit)),
        _ => string.Empty,
    };

    /// <summary>A true minus sign, and a plus before all that is not zero.</summary>
    private static string Signed(string number)
    {
        bool zero = !number.Any(c => c is >= '1' and <= '9');
        return number.StartsWith('-') ? (zero ? number[1..] : "−" + number[1..]) : zero ? number : "+" + number;
    }
}
