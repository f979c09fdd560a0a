using System.Buffers.Binary;

namespace LeverDraw.Writers.Png;

/// <summary>Puts the pHYs chunk (pixels per metre) behind the image header, where the format wants it: before the first data chunk.</summary>
internal static class PngResolution
{
    /// <summary>Signature 8, then the header chunk: length 4, type 4, data 13, check 4.</summary>
    private const int EndOfHeader = 33;
    private const double MetresPerInch = 0.0254;

    public static void Insert(ReadOnlySpan<byte> png, int dotsPerInch, Stream to)
    {
        Span<byte> chunk = stackalloc byte[21];
        BinaryPrimitives.WriteInt32BigEndian(chunk, 9);
        "pHYs"u8.CopyTo(chunk[4..]);
        int perMetre = (int)Math.Round(dotsPerInch / MetresPerInch);
        BinaryPrimitives.WriteInt32BigEndian(chunk[8..], perMetre);
        BinaryPrimitives.WriteInt32BigEndian(chunk[12..], perMetre);
        chunk[16] = 1;
        BinaryPrimitives.WriteUInt32BigEndian(chunk[17..], Crc32(chunk[4..17]));
        to.Write(png[..EndOfHeader]);
        to.Write(chunk);
        to.Write(png[EndOfHeader..]);
    }

    /// <summary>The check sum of the PNG specification (ISO/IEC 15948, annex D): polynomial EDB88320, reflected.</summary>
    private static uint Crc32(ReadOnlySpan<byte> bytes)
    {
        uint crc = uint.MaxValue;
        foreach (byte b in bytes)
        {
            crc ^= b;
            for (int bit = 0; bit < 8; bit++)
                crc = (crc & 1) == 1 ? (crc >> 1) ^ 0xEDB88320 : crc >> 1;
        }

        return ~crc;
    }
}
