using LeverDraw.Drafting.Plotting;

namespace LeverDraw.Writers.Svg;

/// <summary>Attributes and escaping.</summary>
internal static class SvgSyntax
{
    public static void Attribute(this Utf8Page page, ReadOnlySpan<byte> name, string value)
    {
        OpenAttribute(page, name);
        page.Escaped(value);
        page.Raw((byte)'"');
    }

    public static void PaperAttribute(this Utf8Page page, ReadOnlySpan<byte> name, double millimetres)
    {
        OpenAttribute(page, name);
        page.Paper(millimetres);
        page.Raw((byte)'"');
    }

    public static void FullAttribute(this Utf8Page page, ReadOnlySpan<byte> name, double value)
    {
        OpenAttribute(page, name);
        page.Full(value);
        page.Raw((byte)'"');
    }

    /// <summary>Width, dashes and line ends of a pen. A dashed line ends square: a round end would eat a third of each gap.</summary>
    public static void PenAttributes(this Utf8Page page, Pen pen)
    {
        page.PaperAttribute("stroke-width"u8, pen.Width);
        if (pen.Dashes.Length == 0)
            return;
        page.Raw(" stroke-linecap=\"butt\" stroke-dasharray=\""u8);
        for (int i = 0; i < pen.Dashes.Length; i++)
        {
            if (i > 0)
                page.Raw((byte)' ');
            page.Paper(pen.Dashes[i]);
        }

        page.Raw((byte)'"');
    }

    /// <summary>An arc's command, all but the point where it ends.</summary>
    public static void ArcTo(this Utf8Page page, byte letter, in ArcPieces arc)
    {
        page.Raw(letter);
        page.Paper(arc.Radius);
        page.Raw((byte)' ');
        page.Paper(arc.Radius);
        page.Raw(arc.Flags);
    }

    /// <summary>Text for element content or an attribute. Control characters, which XML cannot hold, become U+FFFD; a line feed survives as a reference.</summary>
    public static void Escaped(this Utf8Page page, ReadOnlySpan<char> text)
    {
        int done = 0;
        for (int i = 0; i < text.Length; i++)
        {
            ReadOnlySpan<byte> instead = text[i] switch
            {
                '&' => "&amp;"u8,
                '<' => "&lt;"u8,
                '>' => "&gt;"u8,
                '"' => "&quot;"u8,
                '\n' => "&#10;"u8,
                '\t' => "&#9;"u8,
                < ' ' or '\uFFFE' or '\uFFFF' => "\uFFFD"u8,
                _ => default,
            };
            if (instead.IsEmpty)
                continue;
            page.Text(text[done..i]);
            page.Raw(instead);
            done = i + 1;
        }

        page.Text(text[done..]);
    }

    private static void OpenAttribute(Utf8Page page, ReadOnlySpan<byte> name)
    {
        page.Raw((byte)' ');
        page.Raw(name);
        page.Raw("=\""u8);
    }
}
