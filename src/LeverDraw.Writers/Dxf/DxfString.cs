using System.Globalization;
using System.Text;

namespace LeverDraw.Writers.Dxf;

/// <summary>How characters beyond ASCII reach the file.</summary>
internal enum DxfEncoding
{
    /// <summary>AC1015, bytes below 128 only.</summary>
    Ascii,

    /// <summary>AC1024, UTF-8.</summary>
    Utf8,
}

/// <summary>Plain characters to the DXF form of a string: <c>%%c</c> for ⌀, <c>%%d</c> for °, <c>%%p</c> for ±, and no control characters.</summary>
internal static class DxfString
{
    /// <summary>One line, for TEXT.</summary>
    public static string Line(string text, DxfEncoding encoding) => Encode(text, encoding, paragraph: false);

    /// <summary>Text of a DIMENSION: its lines are parted by <c>\P</c>, and backslash and braces are escaped.</summary>
    public static string Paragraph(string text, DxfEncoding encoding) => Encode(text, encoding, paragraph: true);

    /// <summary>True when something outside ASCII is left after the %% forms, so that AC1015 could not show it everywhere.</summary>
    public static bool NeedsUtf8(string text) => text.Any(c => c > '~' && Form(c) is null);

    private static string? Form(char c) => c switch
    {
        '⌀' => "%%c",
        '°' => "%%d",
        '±' => "%%p",
        '×' => "x",
        '\u2212' => "-",
        '\u00A0' => " ",
        < ' ' or '\u007F' => " ",
        // A caret starts a control character unless a space follows.
        '^' => "^ ",
        _ => null,
    };

    private static string Encode(string text, DxfEncoding encoding, bool paragraph)
    {
        var result = new StringBuilder(text.Length + 8);
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            if (paragraph && c == '\n')
                result.Append(@"\P");
            else if (paragraph && c is ('\\' or '{' or '}'))
                result.Append('\\').Append(c);
            else if (c == '%' && (Joins(text, i - 1) || Joins(text, i + 1)))
                result.Append("%%037");
            else if (Form(c) is { } form)
                result.Append(form);
            else if (c <= '~' || encoding == DxfEncoding.Utf8)
                result.Append(c);
            else
                AppendEscape(result, text, i);
        }

        return result.ToString();
    }

    /// <summary>A per cent sign beside another, or beside a %% form, would be read as part of a code.</summary>
    private static bool Joins(string text, int at) =>
        at >= 0 && at < text.Length && text[at] is ('%' or '⌀' or '°' or '±');

    /// <summary>Four hexadecimal digits hold no more than the basic plane; a character beyond it becomes one question mark.</summary>
    private static void AppendEscape(StringBuilder to, string text, int at)
    {
        char c = text[at];
        if (!char.IsSurrogate(c))
            to.Append(CultureInfo.InvariantCulture, $@"\U+{(int)c:X4}");
        else if (!char.IsLowSurrogate(c))
            to.Append('?');
    }
}
