using LeverDraw.Drafting.Plotting;

namespace LeverDraw.Writers.Dxf;

public sealed class DxfWriter(DxfOptions options) : IDrawingWriter
{
    public DxfWriter()
        : this(new DxfOptions())
    {
    }

    public string Format => "dxf";

    public string Extension => "dxf";

    public void Write(PlotSheet sheet, Stream stream) => throw new NotImplementedException(options.ToString());
}
