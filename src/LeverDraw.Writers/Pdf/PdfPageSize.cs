using System.Buffers.Text;
using System.Globalization;
using System.Text;

namespace LeverDraw.Writers.Pdf;

/// <summary>Puts the exact page size into a PDF whose maker knows whole points only, and corrects the table of object offsets behind it.</summary>
/// <remarks>A4 is 595.2756 points high; rounded to 595 a print scaled "to the page" would be wrong by half a part in a thousand.</remarks>
internal static class PdfPageSize
{
    private static ReadOnlySpan<byte> BoxKey => "/MediaBox ["u8;

    /// <exception cref="InvalidOperationException">The file is not built as expected: one page, one plain cross-reference table.</exception>
    public static void Set(ReadOnlySpan<byte> pdf, double widthPoints, double heightPoints, Stream to)
    {
        int from = pdf.IndexOf(BoxKey);
        int length = from < 0 ? -1 : pdf[from..].IndexOf((byte)']') + 1;
        int startWord = pdf.LastIndexOf("startxref"u8);
        if (length <= 0 || startWord < 0 || pdf[(from + length)..].IndexOf(BoxKey) >= 0)
            throw new InvalidOperationException("The PDF has no single page box.");
        int tableAt = Number(pdf, startWord + "startxref"u8.Length);
        byte[] box = Box(widthPoints, heightPoints);
        int shift = box.Length - length;

        to.Write(pdf[..from]);
        to.Write(box);
        to.Write(pdf[(from + length)..tableAt]);
        byte[] table = pdf[tableAt..startWord].ToArray();
        Shift(table, from, shift);
        to.Write(table);
        to.Write(Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"startxref\n{tableAt + shift}\n%%EOF\n")));
    }

    private static byte[] Box(double width, double height)
    {
        using var page = new Utf8Page();
        page.Raw(BoxKey);
        page.Raw("0 0 "u8);
        page.Paper(width);
        page.Raw((byte)' ');
        page.Paper(height);
        page.Raw((byte)']');
        return page.Written.ToArray();
    }

    /// <summary>Entries are twenty bytes: ten digits of offset, five of generation, and <c>n</c> for an object in use.</summary>
    private static void Shift(Span<byte> table, int behind, int shift)
    {
        if (!table.StartsWith("xref\n0 "u8))
            throw new InvalidOperationException("The PDF has no plain cross-reference table.");
        int count = Number(table, "xref\n0 "u8.Length);
        int first = "xref\n"u8.Length + table["xref\n"u8.Length..].IndexOf((byte)'\n') + 1;
        for (int i = 0; i < count; i++)
        {
            Span<byte> entry = table.Slice(first + (20 * i), 20);
            int offset = Number(entry, 0);
            if (entry[17] == 'n' && offset > behind)
                (offset + shift).TryFormat(entry, out _, "D10", CultureInfo.InvariantCulture);
        }
    }

    private static int Number(ReadOnlySpan<byte> bytes, int at)
    {
        ReadOnlySpan<byte> text = bytes[at..].TrimStart(" \r\n"u8);
        return Utf8Parser.TryParse(text, out int value, out _) ? value : throw new InvalidOperationException("A number was expected in the PDF.");
    }
}
