namespace LeverDraw.Drafting.Lettering;

/// <summary>
/// Finds a fraction that stands as a token of its own, such as the one in <c>1 3/16</c> or <c>⌀9/16"</c>: one to three digits, a slash, one to three digits, no part beginning with 0.
/// Before it: nothing, a blank, an opening bracket, a sign, or R after no letter but S. After it: nothing, a blank, a closing bracket, an inch or foot mark, a comma, semicolon or full stop not followed by a digit, or ×.
/// So a date, a ratio of decimals or 3/8-16 stay as they are typed.
/// </summary>
/// <param name="Start">Index of the numerator's first digit.</param>
/// <param name="Slash">Index of the slash.</param>
/// <param name="End">Index after the denominator.</param>
internal readonly record struct FractionToken(int Start, int Slash, int End)
{
    private const int MostDigits = 3;

    /// <returns>False when no such fraction begins at <paramref name="start"/>.</returns>
    public static bool TryRead(ReadOnlySpan<char> text, int start, out FractionToken token)
    {
        token = default;
        int slash = AfterDigits(text, start);
        if (slash == start || slash >= text.Length || text[slash] is not ('/' or '\u2044'))
            return false;
        int end = AfterDigits(text, slash + 1);
        if (!IsNumber(text[start..slash]) || !IsNumber(text[(slash + 1)..end]) || !MayStand(text, start) || !MayFollow(text[end..]))
            return false;
        token = new FractionToken(start, slash, end);
        return true;
    }

    /// <summary>The parts of a one-character fraction; empty when it is none.</summary>
    public static (string Numerator, string Denominator) PartsOf(char character) => character switch
    {
        '¼' => ("1", "4"),
        '½' => ("1", "2"),
        '¾' => ("3", "4"),
        '⅓' => ("1", "3"),
        '⅔' => ("2", "3"),
        '⅛' => ("1", "8"),
        '⅜' => ("3", "8"),
        '⅝' => ("5", "8"),
        '⅞' => ("7", "8"),
        _ => (string.Empty, string.Empty),
    };

    private static int AfterDigits(ReadOnlySpan<char> text, int at)
    {
        while (at < text.Length && char.IsAsciiDigit(text[at]))
            at++;
        return at;
    }

    private static bool IsNumber(ReadOnlySpan<char> digits) =>
        digits.Length is > 0 and <= MostDigits && digits[0] != '0';

    private static bool MayStand(ReadOnlySpan<char> text, int start)
    {
        if (start == 0)
            return true;
        char before = text[start - 1];
        if (before is 'R')
            return start == 1 || !char.IsLetter(text[start - 2]) || (text[start - 2] is 'S' && (start == 2 || !char.IsLetter(text[start - 3])));
        return char.IsWhiteSpace(before)
            || before is '(' or '[' or '{' or '\u2300' or 'Ø' or '□' or '±' or '+' or '-' or '\u2212' or '=' or '<' or '>' or '≤' or '≥' or '≈' or '×';
    }

    private static bool MayFollow(ReadOnlySpan<char> rest)
    {
        if (rest.IsEmpty || char.IsWhiteSpace(rest[0]))
            return true;
        if (rest[0] is '.' or ',' or ';')
            return rest.Length == 1 || !char.IsAsciiDigit(rest[1]);
        return rest[0] is ')' or ']' or '}' or '"' or '\'' or '\u2032' or '\u2033' or '×';
    }
}
