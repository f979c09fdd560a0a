using System.Globalization;

namespace LeverDraw.Units;

/// <summary>Reads and writes lengths as text; the only place that does. Culture never matters.</summary>
public static partial class LengthText
{
    private const string VulgarSigns = "½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚";

    /// <summary>Reads <c>3.6</c>, <c>3.6 mm</c>, <c>0.141 in</c>, <c>9/16 in</c>, <c>1 3/16 in</c>, <c>1-3/16"</c>, <c>1½ in</c>; the inch mark may be straight or curly.</summary>
    /// <param name="unit">The unit of a text that names none. Fractions are taken in inches only when that is the unit.</param>
    public static TextResult<Length> Parse(string text, LengthUnit unit)
    {
        if (NumberScanner.CommonFault(text) is { } fault)
            return TextResult<Length>.Bad(fault.Reason, fault.Index);
        NumberScanner scan = new(text);
        scan.SkipSpaces();
        int sign = scan.TakeSign();
        scan.SkipSpaces();
        if (ReadAmount(ref scan, out double amount, out bool fraction) is { } bad)
            return TextResult<Length>.Bad(bad.Reason, bad.Index);

        scan.SkipSpaces();
        int unitAt = scan.At;
        bool stated = !scan.AtEnd;
        if (stated && ReadUnit(ref scan, ref unit) is { } wrong)
            return TextResult<Length>.Bad(wrong.Reason, wrong.Index);
        if (fraction && unit == LengthUnit.Millimetre)
            return TextResult<Length>.Bad("a fraction is in inches; add 'in'", stated ? unitAt : text.Length);
        // 64 digits of inches are still far from the end of a double, so the product is finite.
        return TextResult<Length>.Good(
            unit == LengthUnit.Inch ? Length.FromInches(sign * amount) : Length.FromMillimetres(sign * amount), stated);
    }

    private static TextFault? ReadAmount(ref NumberScanner scan, out double amount, out bool fraction)
    {
        fraction = false;
        amount = 0;
        bool number = scan.TakeDecimal(out double first, out bool whole);
        if (number && scan.Next == '/')
            return ReadFraction(ref scan, first, whole, out amount, out fraction);
        if (number && !whole && scan.Next == '.')
            return new TextFault("it has two decimal points", scan.At);
        amount = first;

        NumberScanner ahead = scan;
        ahead.SkipSpaces();
        bool joined = ahead.Take('-');
        ahead.SkipSpaces();
        if (VulgarSigns.Contains(ahead.Next, StringComparison.Ordinal) && !ahead.AtEnd)
        {
            if (number && !whole)
                return new TextFault("a decimal and a fraction do not go together", ahead.At);
            amount = first + Vulgar(ahead.Next);
            ahead.Skip(1);
            scan = ahead;
            fraction = true;
            return null;
        }
        if (!number)
            return new TextFault("a number is expected here", scan.At);
        int second = ahead.At;
        if (ahead.TakeDecimal(out double top, out bool topWhole))
        {
            if (ahead.Next != '/')
                return new TextFault("there are two numbers", second);
            if (!whole)
                return new TextFault("a decimal and a fraction do not go together", second);
            TextFault? fault = ReadFraction(ref ahead, top, topWhole, out double part, out fraction);
            if (fault is null && part >= 1)
                fault = new TextFault("the fraction of a mixed number must be less than one", second);
            amount = first + part;
            scan = ahead;
            return fault;
        }
        return joined ? new TextFault("a fraction is expected after '-'", second) : null;
    }

    private static TextFault? ReadFraction(ref NumberScanner scan, double top, bool topWhole, out double amount, out bool fraction)
    {
        fraction = true;
        amount = 0;
        int slash = scan.At;
        scan.Take('/');
        int bottomAt = scan.At;
        if (!scan.TakeDecimal(out double bottom, out bool bottomWhole))
            return new TextFault("the fraction's lower number is missing", bottomAt);
        if (!topWhole || !bottomWhole)
            return new TextFault("a fraction is made of whole numbers", slash);
        if (bottom == 0)
            return new TextFault("the fraction's lower number is zero", bottomAt);
        if (scan.Next == '/')
            return new TextFault("there are two fraction bars", scan.At);
        amount = top / bottom;
        return null;
    }

    private static TextFault? ReadUnit(ref NumberScanner scan, ref LengthUnit unit)
    {
        int start = scan.At;
        LengthUnit? found = OneUnit(ref scan);
        if (found is null)
            return new TextFault(UnitFault(scan.Rest), start);
        scan.SkipSpaces();
        if (!scan.AtEnd)
        {
            int second = scan.At;
            return new TextFault(OneUnit(ref scan) is null ? "something stands after the unit" : "there are two units", second);
        }
        unit = found.Value;
        return null;
    }

    private static LengthUnit? OneUnit(ref NumberScanner scan)
    {
        string rest = scan.Rest;
        int letters = 0;
        while (letters < rest.Length && char.IsAsciiLetter(rest[letters]))
            letters++;
        if (letters == 0)
        {
            int mark = rest.StartsWith("''", StringComparison.Ordinal) || rest.StartsWith("’’", StringComparison.Ordinal) || rest.StartsWith("′′", StringComparison.Ordinal) ? 2
                : rest.Length > 0 && rest[0] is '"' or '”' or '“' or '″' ? 1 : 0;
            scan.Skip(mark);
            return mark > 0 ? LengthUnit.Inch : null;
        }
        LengthUnit? unit = rest[..letters].ToLowerInvariant() switch
        {
            "mm" => LengthUnit.Millimetre,
            "in" or "inch" or "inches" => LengthUnit.Inch,
            _ => null,
        };
        if (unit is not null)
            scan.Skip(letters + (unit == LengthUnit.Inch && rest.Length > letters && rest[letters] == '.' ? 1 : 0));
        return unit;
    }

    private static string UnitFault(string rest) => rest[0] switch
    {
        '\'' or '’' or '′' or '‘' => "feet are not used here; write inches",
        '°' => "it is an angle",
        '.' => "it has two decimal points",
        _ when rest.StartsWith("ft", StringComparison.OrdinalIgnoreCase) || rest.StartsWith("feet", StringComparison.OrdinalIgnoreCase) => "feet are not used here; write inches",
        _ when rest.StartsWith("deg", StringComparison.OrdinalIgnoreCase) => "it is an angle",
        _ when rest.StartsWith("cm", StringComparison.OrdinalIgnoreCase) || rest.StartsWith("m", StringComparison.OrdinalIgnoreCase) => "the unit must be mm or in",
        _ when char.IsLetter(rest[0]) => "the unit must be mm or in",
        _ => "a unit (mm or in) is expected here",
    };

    private static double Vulgar(char sign) => sign switch
    {
        '½' => 1 / 2.0,
        '¼' => 1 / 4.0,
        '¾' => 3 / 4.0,
        '⅛' => 1 / 8.0,
        '⅜' => 3 / 8.0,
        '⅝' => 5 / 8.0,
        '⅞' => 7 / 8.0,
        '⅓' => 1 / 3.0,
        '⅔' => 2 / 3.0,
        '⅕' => 1 / 5.0,
        '⅖' => 2 / 5.0,
        '⅗' => 3 / 5.0,
        '⅘' => 4 / 5.0,
        '⅙' => 1 / 6.0,
        _ => 5 / 6.0,
    };
}
