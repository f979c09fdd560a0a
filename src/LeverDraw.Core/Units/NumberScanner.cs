using System.Globalization;

namespace LeverDraw.Units;

/// <summary>A cursor over a short text, for the readers of lengths, angles and tapers. Plain decimals only: no exponent, no grouping, no sign but a leading one.</summary>
internal struct NumberScanner(string text)
{
    /// <summary>Longer texts are refused, so that a number cannot be made of a megabyte of digits.</summary>
    public const int LongestText = 64;

    public int At { get; private set; }

    public readonly bool AtEnd => At >= text.Length;

    public readonly char Next => AtEnd ? '\0' : text[At];

    public readonly string Rest => text[At..];

    public void SkipSpaces()
    {
        while (!AtEnd && (Next is ' ' or '\u00A0' or '\u202F' or '\u2009'))
            At++;
    }

    public void Skip(int count) => At += count;

    public bool Take(char wanted)
    {
        if (Next != wanted || AtEnd)
            return false;
        At++;
        return true;
    }

    /// <summary>The fault every reader finds in the same way, or null: empty, too long, no number, comma, exponent.</summary>
    public static TextFault? CommonFault(string text)
    {
        if (string.IsNullOrWhiteSpace(text))
            return new TextFault("it is empty", 0);
        if (text.Length > LongestText)
            return new TextFault("it is too long", LongestText);
        int comma = text.IndexOf(',', StringComparison.Ordinal);
        if (comma >= 0)
            return new TextFault("it has a comma; write the decimal point as '.'", comma);
        string word = text.Trim().TrimStart('+', '-').ToLowerInvariant();
        if (word.StartsWith("nan", StringComparison.Ordinal) || word.StartsWith("inf", StringComparison.Ordinal) || word.StartsWith('∞'))
            return new TextFault("it is not a finite number", 0);
        for (int i = 1; i < text.Length; i++)
            if (text[i] is 'e' or 'E' && char.IsAsciiDigit(text[i - 1]))
                return new TextFault("it has an exponent; write the number out", i);
        return null;
    }

    /// <summary>Digits with at most one point; false when none stand here.</summary>
    /// <param name="isWhole">True when there is no point.</param>
    public bool TakeDecimal(out double number, out bool isWhole)
    {
        int start = At;
        int digits = 0;
        isWhole = true;
        while (char.IsAsciiDigit(Next) || (Next == '.' && isWhole))
        {
            if (Next == '.')
                isWhole = false;
            else
                digits++;
            At++;
        }
        number = 0;
        if (digits > 0)
        {
            number = double.Parse(text.AsSpan(start, At - start), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
            return true;
        }
        At = start;
        return false;
    }

    /// <summary>'-' and '+' before a number; the minus sign of typographers too.</summary>
    public int TakeSign()
    {
        int sign = Next is '-' or '\u2212' ? -1 : 1;
        if (Next is '-' or '\u2212' or '+')
            At++;
        return sign;
    }
}
