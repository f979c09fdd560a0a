using LeverDraw.Drafting.Plotting;
using LeverDraw.Writers;

namespace LeverDraw.Tests.Writers;

internal static class Bytes
{
    public static byte[] Of(IDrawingWriter writer, PlotSheet sheet)
    {
        using var stream = new MemoryStream();
        writer.Write(sheet, stream);
        return stream.ToArray();
    }
}
