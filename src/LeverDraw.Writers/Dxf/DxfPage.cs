using LeverDraw.Geometry;

namespace LeverDraw.Writers.Dxf;

/// <summary>The syntax: groups of two lines, code and value, each ended by CR LF; and the count of handles.</summary>
internal sealed class DxfPage(Utf8Page page, DxfEncoding encoding)
{
    public DxfEncoding Encoding => encoding;

    /// <summary>One more than the largest handle given out.</summary>
    public long NextFree { get; private set; } = DxfHandle.FirstFree;

    public long NewHandle() => NextFree++;

    public void Word(int code, ReadOnlySpan<byte> ascii)
    {
        Code(code);
        page.Raw(ascii);
        End();
    }

    /// <summary>A name of our own making: plain ASCII.</summary>
    public void Name(int code, string name)
    {
        Code(code);
        page.Text(name);
        End();
    }

    /// <summary>A string already in its DXF form; see <see cref="DxfString"/>.</summary>
    public void Encoded(int code, string text) => Name(code, text);

    public void Integer(int code, long value)
    {
        Code(code);
        page.Integer(value);
        End();
    }

    public void Real(int code, double value)
    {
        Code(code);
        page.Exact(value);
        End();
    }

    public void Handle(int code, long handle)
    {
        Code(code);
        page.Hex(handle);
        End();
    }

    /// <summary>x and y, as two groups.</summary>
    public void Pair(int code, Point2D p)
    {
        Real(code, p.X);
        Real(code + 10, p.Y);
    }

    /// <summary>x, y and z = 0, as three groups.</summary>
    public void Point(int code, Point2D p)
    {
        Pair(code, p);
        Real(code + 20, 0);
    }

    public void Point(int code, double x, double y, double z)
    {
        Real(code, x);
        Real(code + 10, y);
        Real(code + 20, z);
    }

    public void Empty(int code)
    {
        Code(code);
        End();
    }

    /// <summary>Type, handle and owner, which begin every record; returns the handle.</summary>
    public long Record(ReadOnlySpan<byte> type, long owner, long handle = DxfHandle.None, int handleCode = 5)
    {
        long own = handle == DxfHandle.None ? NewHandle() : handle;
        Word(0, type);
        Handle(handleCode, own);
        Handle(330, owner);
        return own;
    }

    /// <summary>The common part of an entity: colour, linetype and width are always the layer's.</summary>
    public void Entity(ReadOnlySpan<byte> type, DxfTarget target)
    {
        Record(type, target.Owner);
        Word(100, "AcDbEntity"u8);
        Name(8, target.Layer);
    }

    private void Code(int code)
    {
        if (code < 100)
            page.Raw((byte)' ');
        if (code < 10)
            page.Raw((byte)' ');
        page.Integer(code);
        End();
    }

    private void End() => page.Raw("\r\n"u8);
}

/// <summary>Where an entity goes: the block record that owns it, and its layer.</summary>
internal readonly record struct DxfTarget(long Owner, string Layer);
