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
    private readonly SKPoint corner;

    /// <summary>The library rounds the page to whole units, then fits the sheet into it centred, by the smaller scale ("xMidYMid meet" of SVG); this undoes it exactly.</summary>
    private SvgPicture(SKSvg svg, SKRect page, PlotSheet sheet)
    {
        this.svg = svg;
        unitsPerMillimetre = Math.Min(page.Width / sheet.Width, page.Height / sheet.Height);
        corner = new SKPoint(
            (float)((page.Width - (sheet.Width * unitsPerMillimetre)) / 2),
            (float)((page.Height - (sheet.Height * unitsPerMillimetre)) / 2));
    }

    public static SvgPicture Of(PlotSheet sheet)
    {
        using var bytes = new MemoryStream();
        new SvgWriter().Write(sheet, bytes);
        bytes.Position = 0;
        var svg = new SKSvg();
        SKPicture picture = svg.Load(bytes) ?? throw new InvalidOperationException("The SVG written cannot be read back.");
        return new SvgPicture(svg, picture.CullRect, sheet);
    }

    /// <summary>Draws with the sheet's upper left corner at the origin.</summary>
    public void Draw(SKCanvas canvas, double unitsPerPaperMillimetre)
    {
        canvas.Scale((float)(unitsPerPaperMillimetre / unitsPerMillimetre));
        canvas.Translate(-corner.X, -corner.Y);
        canvas.DrawPicture(svg.Picture!);
    }

    public void Dispose() => svg.Dispose();
}
