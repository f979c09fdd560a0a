using LeverDraw.Drafting.Plotting;
using LeverDraw.Writers.Svg;
using SkiaSharp;
using Svg.Skia;

namespace LeverDraw.Writers;

/// <summary>What the SVG of a sheet looks like, read back from its very bytes; so PDF and PNG cannot show anything else.</summary>
internal sealed class SvgPicture : IDisposable
{
    private readonly SKSvg svg;
    private readonly double unitsPerMillimetre;

    private SvgPicture(SKSvg svg, double unitsPerMillimetre) => (this.svg, this.unitsPerMillimetre) = (svg, unitsPerMillimetre);

    public static SvgPicture Of(PlotSheet sheet)
    {
        using var bytes = new MemoryStream();
        new SvgWriter().Write(sheet, bytes);
        bytes.Position = 0;
        var svg = new SKSvg();
        SKPicture picture = svg.Load(bytes) ?? throw new InvalidOperationException("The SVG written cannot be read back.");
        return new SvgPicture(svg, picture.CullRect.Width / sheet.Width);
    }

    /// <summary>Draws with the sheet's upper left corner at the origin.</summary>
    public void Draw(SKCanvas canvas, double unitsPerPaperMillimetre)
    {
        float scale = (float)(unitsPerPaperMillimetre / unitsPerMillimetre);
        canvas.Scale(scale);
        canvas.DrawPicture(svg.Picture!);
    }

    public void Dispose() => svg.Dispose();
}
