using System.Globalization;

namespace LeverDraw.Units;

/// <summary>Reads and writes angles as text; the only place that does.</summary>
public static class AngleText
{
    /// <summary>Reads <c>40</c>, <c>40 deg</c>, <c>7.5°</c>, <c>1° 11' 37"</c>. Minutes and seconds are below 60; only the last part may have decimals.</summary>
    public static TextResult<Angle> Parse(string text)
    {
        if (NumberScanner.CommonFault(text) is { } fault)
            return TextResult<Angle>.Bad(fault.Reason, fault.Index);
        NumberScanner scan = new(text);
        scan.SkipSpaces();
        int sign = scan.TakeSign();
        scan.SkipSpaces();
        double degrees = 0;
        int parts = 0;
        bool lastWhole = true;
        bool stated = false;
        while (!scan.AtEnd)
        {
            int numberAt = scan.At;
            if (!scan.TakeDecimal(out double number, out bool whole))
                return Bad("a number is expected here", numberAt);
            if (!lastWhole)
                return Bad("only the last part of an angle may have decimals", numberAt);
            scan.SkipSpaces();
            int markAt = scan.At;
            int rank = TakeMark(ref scan);
            if (rank < 0 && scan.AtEnd && parts == 0)
                return TextResult<Angle>.Good(Angle.FromDegrees(sign * number), false);
            if (rank < 0)
                return Bad(MarkFault(scan), markAt);
            if (rank < parts)
                return Bad("degrees, minutes and seconds must follow in this order", numberAt);
            if (rank > 0 && number >= 60)
                return Bad("minutes and seconds are below 60", numberAt);
            degrees += number / Math.Pow(60, rank);
            parts = rank + 1;
            lastWhole = whole;
            stated = true;
            scan.SkipSpaces();
        }
        return parts == 0 ? Bad("a number is expected here", scan.At) : TextResult<Angle>.Good(Angle.FromDegrees(sign * degrees), stated);
    }

    /// <summary>Degrees with at most <paramref name="decimals"/> (0 to 9) decimals and the sign: <c>7.5°</c>.</summary>
    public static string Degrees(Angle angle, int decimals)
    {
        string pattern = "0." + new string('#', decimals);
        string text = Math.Round(angle.Degrees, decimals, MidpointRounding.AwayFromZero).ToString(pattern, CultureInfo.InvariantCulture);
        return (text == "-0" ? "0" : text) + "°";
    }

    /// <summary>Degrees, minutes and whole seconds: <c>1° 11' 37"</c>; parts that are zero at the end are left out.</summary>
    public static string DegreesMinutesSeconds(Angle angle)
    {
        long all = (long)Math.Round(Math.Abs(angle.Degrees) * 3600, MidpointRounding.AwayFromZero);
        (long degrees, long rest) = Math.DivRem(all, 3600);
        (long minutes, long seconds) = Math.DivRem(rest, 60);
        string sign = angle.Radians < 0 && all != 0 ? "-" : "";
        string text = string.Create(CultureInfo.InvariantCulture, $"{sign}{degrees}°");
        if (minutes != 0 || seconds != 0)
            text += string.Create(CultureInfo.InvariantCulture, $" {minutes}'");
        return seconds == 0 ? text : text + string.Create(CultureInfo.InvariantCulture, $" {seconds}\"");
    }

    private static TextResult<Angle> Bad(string reason, int index) => TextResult<Angle>.Bad(reason, index);

    private static int TakeMark(ref NumberScanner scan)
    {
        string rest = scan.Rest;
        (int rank, int length) = rest switch
        {
            _ when rest.StartsWith("degrees", StringComparison.OrdinalIgnoreCase) => (0, 7),
            _ when rest.StartsWith("deg", StringComparison.OrdinalIgnoreCase) && !(rest.Length > 3 && char.IsAsciiLetter(rest[3])) => (0, 3),
            ['°', ..] => (0, 1),
            ['\'', '\'', ..] or ['′', '′', ..] or ['’', '’', ..] => (2, 2),
            ['\'' or '′' or '’', ..] => (1, 1),
            ['"' or '″' or '”', ..] => (2, 1),
            _ => (-1, 0),
        };
        scan.Skip(length);
        return rank;
    }

    private static string MarkFault(NumberScanner scan) => scan.Rest switch
    {
        "" => "the sign ° ' or \" is missing after the last number",
        var r when r.StartsWith("mm", StringComparison.OrdinalIgnoreCase) || r.StartsWith("in", StringComparison.OrdinalIgnoreCase) => "it is a length",
        var r when r.StartsWith("rad", StringComparison.OrdinalIgnoreCase) => "angles are in degrees",
        _ => "degrees (deg or °) are expected here",
    };
}
