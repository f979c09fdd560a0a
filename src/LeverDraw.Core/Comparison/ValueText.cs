using System.Globalization;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Comparison;

/// <summary>The words of a comparison's values and differences, the same on the sheet, on the terminal and in the files.</summary>
public static class ValueText
{
    /// <summary>Stands for a size that a variant has not got.</summary>
    public const string None = "–";

    private const int MillimetreDecimals = 3, InchDecimals = 4;

    /// <summary>All variants' values in one unit; tolerances only where they differ.</summary>
    public static string[] Of(ComparedRow row, LengthUnit unit) => [.. row.Values.Select(v => Of(v, unit, row.ShowsTolerances))];

    /// <summary>With its sign: <c>−0.6</c>, <c>+2°</c>; empty where there is no difference to speak of as a number.</summary>
    public static string Delta(ComparedRow row, LengthUnit unit) => row switch
    {
        { Delta: { } length } => Signed(Plain(length, unit)),
        { AngleDelta: { } angle } => Signed(AngleText.Degrees(angle, 2)),
        { FigureDelta: { } figure } => Signed(Figure(figure)),
        _ => string.Empty,
    };

    /// <summary>A length without its unit's name.</summary>
    public static string Plain(Length length, LengthUnit unit) => unit == LengthUnit.Inch
        ? LengthText.InchDecimal(length, InchDecimals, leadingZero: false)
        : LengthText.Millimetres(length, MillimetreDecimals);

    public static string Figure(ComparedFigure figure) => figure.Value.ToString("F" + figure.Decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static string Of(ComparedValue? value, LengthUnit unit, bool tolerances) => value switch
    {
        null => None,
        ComparedSize size => Plain(size.Size.Nominal, unit) + (tolerances ? Tolerance(size.Size.Tolerance, unit) : string.Empty),
        ComparedAngle angle => AngleText.Degrees(angle.Angle, 2),
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
