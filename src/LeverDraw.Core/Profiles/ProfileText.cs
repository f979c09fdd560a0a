using System.Globalization;
using System.Text;
using LeverDraw.Diagnostics;

namespace LeverDraw.Profiles;

/// <summary>From bytes to text: strict UTF-8, a byte-order mark allowed, no control characters but tab and line ends.</summary>
internal static class ProfileText
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text, or null with a fault told.</summary>
    public static string? Decode(ReadOnlySpan<byte> bytes, string path, FileFaults faults)
    {
        if (bytes.Length > ProfileFile.LargestBytes)
        {
            faults.Add(DiagnosticCatalogue.FileTooLarge, null, null, path, bytes.Length, ProfileFile.LargestBytes);
            return null;
        }
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
        {
            faults.AddWithHint(DiagnosticCatalogue.NotUtf8, null, null, "The file is UTF-16; save it as UTF-8.", 0, Hex(bytes[0]));
            return null;
        }
        if (bytes is [0xEF, 0xBB, 0xBF, ..])
            bytes = bytes[3..];
        int bad = FirstBadByte(bytes);
        if (bad >= 0)
        {
            // What comes before is good text, so the place can be shown.
            faults.Source = new SourceMap(path, Strict.GetString(bytes[..bad]));
            faults.Add(DiagnosticCatalogue.NotUtf8, new TextSpan(faults.Source.Text.Length, 1), null, bad, Hex(bytes[bad]));
            return null;
        }
        string text = Strict.GetString(bytes);
        faults.Source = new SourceMap(path, text);
        int control = FirstControl(text);
        if (control < 0)
            return text;
        faults.Add(DiagnosticCatalogue.NotText, new TextSpan(control, 1), null, "U+" + ((int)text[control]).ToString("X4", CultureInfo.InvariantCulture));
        return null;
    }

    private static int FirstBadByte(ReadOnlySpan<byte> bytes)
    {
        for (int at = 0; at < bytes.Length;)
        {
            if (Rune.DecodeFromUtf8(bytes[at..], out _, out int used) != System.Buffers.OperationStatus.Done)
                return at;
            at += used;
        }
        return -1;
    }

    private static int FirstControl(string text)
    {
        for (int i = 0; i < text.Length; i++)
            if (text[i] is (< ' ' and not ('\t' or '\n' or '\r')) or '\u007F')
                return i;
        return -1;
    }

    private static string Hex(byte value) => "0x" + value.ToString("X2", CultureInfo.InvariantCulture);
}
