using System.Collections.Immutable;
using LeverDraw.Writers.Dxf;
using LeverDraw.Writers.Pdf;
using LeverDraw.Writers.Png;
using LeverDraw.Writers.Svg;

namespace LeverDraw.Writers;

/// <summary>All formats there are. A new one is a folder, and a line here.</summary>
public static class DrawingWriters
{
    public static ImmutableArray<IDrawingWriter> All { get; } =
    [
        new SvgWriter(),
        new DxfWriter(),
        new PdfWriter(),
        new PngWriter(),
    ];

    /// <summary>The writer of that name, or null.</summary>
    public static IDrawingWriter? Find(string format) =>
        All.FirstOrDefault(w => string.Equals(w.Format, format, StringComparison.OrdinalIgnoreCase));
}
