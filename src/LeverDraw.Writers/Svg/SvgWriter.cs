using LeverDraw.Drafting.Plotting;

namespace LeverDraw.Writers.Svg;

/// <summary>SVG in paper millimetres: one group per line kind, one per dimension, one per piece of lettering; lettering as strokes, so no font is needed.</summary>
public sealed class SvgWriter : IDrawingWriter
{
    public string Format => "svg";

    public string Extension => "svg";

    public void Write(PlotSheet sheet, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(stream);
        using var page = new Utf8Page();
        new SvgContent(page, sheet).Write();
        stream.Write(page.Written);
    }
}
