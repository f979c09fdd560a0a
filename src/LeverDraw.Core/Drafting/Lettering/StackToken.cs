namespace LeverDraw.Drafting.Lettering;

/// <summary>
/// Finds two deviations or two limits that are one token of a dimension's text, such as <c>0/−0.1</c>, <c>+.003/+.001</c> or <c>3.074/3.060</c>: the upper one, a slash without blanks, the lower one.
/// Deviations have a sign or are 0; limits have no sign and a decimal point each. So a fraction, a ratio or a date is none.
/// Before it stands nothing, a blank, a bracket, ⌀, □ or R; after it nothing, a blank or a bracket.
/// </summary>
/// <param name="Start">Index of the upper number's first character.</param>
/// <param name="Slash">Index of the slash.</param>
/// <param name="End">Index after the lower number.</param>
internal readonly record struct StackToken(int Start, int Slash, int End)
{
    /// <returns>False when no such pair begins at <paramref name="start"/>.</returns>
    public static bool TryRead(ReadOnlySpan<char> text, int start, out StackToken token)
    {
        token = default;
        if (!MayStand(text, start))
            return false;
        int slash = AfterNumber(text, start);
        if (slash == start || slash >= text.Length || text[slash] != '/')
            return false;
        int end = AfterNumber(text, slash + 1);
        if (end == slash + 1 || !(end == text.Length || text[end] is ' ' or ')' or ']'))
            return false;
        ReadOnlySpan<char> upper = text[start..slash];
        ReadOnlySpan<char> lower = text[(slash + 1)..end];
        bool limits = !IsSigned(upper) && !IsSigned(lower) && upper.Contains('.') && lower.Contains('.');
        bool deviations = (IsSigned(upper) || upper is "0") && (IsSigned(lower) || lower is "0") && (IsSigned(upper) || IsSigned(lower));
        if (!limits && !deviations)
            return false;
        token = new StackToken(start, slash, end);
        return true;
    }

    public static bool IsSign(char character) => character is '+' or '\u2212';

    private static bool IsSigned(ReadOnlySpan<char> number) => IsSign(number[0]);

    private static bool MayStand(ReadOnlySpan<char> text, int start) =>
        start == 0 || text[start - 1] is ' ' or '(' or '[' or '⌀' or '□' or 'R';

    /// <returns>The start itself when no number begins there.</returns>
    private static int AfterNumber(ReadOnlySpan<char> text, int start)
    {
        int at = start;
        if (at < text.Length && IsSign(text[at]))
            at++;
        int digits = 0;
        bool point = false;
        for (; at < text.Length && (char.IsAsciiDigit(text[at]) || (text[at] == '.' && !point)); at++)
        {
            if (text[at] == '.')
                point = true;
            else
                digits++;
        }

        return digits == 0 || text[at - 1] == '.' ? start : at;
    }
}
