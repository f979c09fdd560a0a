using System.Globalization;
using LeverDraw.Diagnostics;
using LeverDraw.Units;

namespace LeverDraw.Profiles;

/// <summary>A field in words, for messages, tables and the schema.</summary>
internal static class FieldWords
{
    public static string Type(FieldSpec field) => field switch
    {
        SizeField => "a size",
        AngleField => "an angle",
        RoughnessField => "a roughness",
        NumberField => "a number",
        TaperField => "a taper",
        ChoiceField => "a word",
        TextField { IsDate: true } => "a date",
        TextField => "text",
        _ => "a flag",
    };

    public static string Sample(FieldSpec field) => field switch
    {
        SizeField => "3.6 or \"9/16 in\"",
        AngleField => "40 or \"1° 11' 37\\\"\"",
        RoughnessField => "1.6",
        NumberField => "18 or 0.75",
        TaperField => "\"1:48\"",
        ChoiceField choice => "\"" + choice.Choices[0] + "\"",
        TextField { IsDate: true } => "2024-05-31",
        TextField => "\"text in quotes\"",
        _ => "true or false",
    };

    /// <summary>What may be given: <c>a size from 1 mm to 12 mm</c>, <c>straight, tapered or curved</c>.</summary>
    public static string Allowed(FieldSpec field, LengthUnit unit) => field switch
    {
        SizeField size => $"a size from {RangeEnd(size.MinMillimetres, unit, up: true)} to {RangeEnd(size.MaxMillimetres, unit, up: false)}",
        AngleField angle => $"an angle from {Degrees(angle.MinDegrees)} to {Degrees(angle.MaxDegrees)}",
        RoughnessField rough => string.Create(CultureInfo.InvariantCulture, $"a roughness Ra from 0 to {rough.MaxMicrometres} µm"),
        NumberField number => string.Create(CultureInfo.InvariantCulture, $"a number from {number.Min} to {number.Max}"),
        TaperField => "a taper like 1:48, or parallel",
        ChoiceField choice => WordList.Or([.. choice.Choices]),
        TextField { IsDate: true } => "a date, year-month-day",
        TextField text => string.Create(CultureInfo.InvariantCulture, $"text of at most {text.MaxLength} characters"),
        _ => "true or false",
    };

    public static string? Default(FieldSpec field, LengthUnit unit) => field switch
    {
        SizeField { Default: { } mm } => LengthText.WithUnit(Length.FromMillimetres(mm), unit, Decimals(unit)),
        AngleField { Default: { } degrees } => Degrees(degrees),
        RoughnessField rough => rough.Default.ToString(CultureInfo.InvariantCulture) + " µm",
        TaperField { Default: { } taper } => TaperText.Format(taper),
        ChoiceField { Default: { } word } => word,
        TextField { Default: { Length: > 0 } text } => text,
        FlagField flag => flag.Default ? "true" : "false",
        _ => null,
    };

    public static string? Condition(FieldSpec field) =>
        field.OnlyWhen is { } only ? "only when " + only.Choice.Name + " is " + WordList.Or([.. only.Values]) : null;

    public static string Degrees(double degrees) => AngleText.Degrees(Angle.FromDegrees(degrees), 6);

    /// <summary>Fine enough to tell a value just outside a range from the range's end.</summary>
    public static int Decimals(LengthUnit unit) => unit == LengthUnit.Inch ? 6 : 5;

    /// <summary>A range's end in the file's unit; in inches rounded inwards, so that the shown value is itself allowed.</summary>
    public static string RangeEnd(double millimetres, LengthUnit unit, bool up)
    {
        if (unit == LengthUnit.Millimetre)
            return LengthText.WithUnit(Length.FromMillimetres(millimetres), unit, Decimals(unit));
        const double Steps = 1e4;
        double inches = Length.FromMillimetres(millimetres).Inches * Steps;
        double inwards = Math.Abs(inches - Math.Round(inches)) < 1e-6 ? Math.Round(inches) : up ? Math.Ceiling(inches) : Math.Floor(inches);
        return LengthText.WithUnit(Length.FromInches(inwards / Steps), unit, 4);
    }
}
