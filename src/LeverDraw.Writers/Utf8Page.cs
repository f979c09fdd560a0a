using System.Buffers;
using System.Text;

namespace LeverDraw.Writers;

/// <summary>A growing page of bytes from the shared pool; text formats are put together in it and copied out once.</summary>
internal sealed class Utf8Page : IDisposable
{
    private byte[] buffer = ArrayPool<byte>.Shared.Rent(1 << 16);

    public int Length { get; private set; }

    public ReadOnlySpan<byte> Written => buffer.AsSpan(0, Length);

    public void Raw(ReadOnlySpan<byte> ascii)
    {
        ascii.CopyTo(Room(ascii.Length));
        Length += ascii.Length;
    }

    public void Raw(byte ascii)
    {
        Room(1)[0] = ascii;
        Length++;
    }

    /// <summary>Once more what stands on the page already.</summary>
    public void Again(int from, int length)
    {
        Span<byte> room = Room(length);
        buffer.AsSpan(from, length).CopyTo(room);
        Length += length;
    }

    /// <summary>A string as UTF-8, without any escaping; a half surrogate becomes the replacement character.</summary>
    public void Text(ReadOnlySpan<char> text)
    {
        Span<byte> room = Room(Encoding.UTF8.GetMaxByteCount(text.Length));
        Length += Encoding.UTF8.GetBytes(text, room);
    }

    /// <summary>Paper millimetres; see <see cref="PaperNumber.Paper"/>.</summary>
    public void Paper(double millimetres) => Length += PaperNumber.Paper(millimetres, Room(PaperNumber.MaxBytes));

    /// <summary>A whole number of the least steps of paper millimetres; see <see cref="PaperNumber.Steps"/>.</summary>
    public void PaperSteps(long steps) => Length += PaperNumber.PaperSteps(steps, Room(PaperNumber.MaxBytes));

    public void Full(double value) => Length += PaperNumber.Full(value, Room(PaperNumber.MaxBytes));

    public void Exact(double value) => Length += PaperNumber.Exact(value, Room(PaperNumber.MaxBytes));

    public void Integer(long value) => Length += PaperNumber.Integer(value, Room(PaperNumber.MaxBytes));

    public void Hex(long value) => Length += PaperNumber.Hex(value, Room(PaperNumber.MaxBytes));

    public void Dispose()
    {
        ArrayPool<byte>.Shared.Return(buffer);
        buffer = [];
        Length = 0;
    }

    private Span<byte> Room(int bytes)
    {
        if (buffer.Length - Length < bytes)
        {
            byte[] larger = ArrayPool<byte>.Shared.Rent(Math.Max(buffer.Length * 2, Length + bytes));
            Written.CopyTo(larger);
            ArrayPool<byte>.Shared.Return(buffer);
            buffer = larger;
        }

        return buffer.AsSpan(Length);
    }
}
