using LeverDraw.Drafting.Plotting;
using LeverDraw.Units;
using SkiaSharp;

namespace LeverDraw.Writers.Png;

/// <summary>The SVG's picture on white, at true size: its resolution stands in the file's pHYs chunk.</summary>
public sealed class PngWriter(PngOptions options) : IDrawingWriter
{
    public PngWriter()
        : this(new PngOptions())
    {
    }

    public string Format => "png";

    public string Extension => "png";

    public void Write(PlotSheet sheet, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(stream);
        double pixelsPerMillimetre = options.DotsPerInch / Length.MillimetresPerInch;
        var info = new SKImageInfo(
            (int)Math.Round(sheet.Width * pixelsPerMillimetre, MidpointRounding.AwayFromZero),
            (int)Math.Round(sheet.Height * pixelsPerMillimetre, MidpointRounding.AwayFromZero),
            SKColorType.Rgba8888,
            SKAlphaType.Opaque);
        using SvgPicture picture = SvgPicture.Of(sheet);
        using SKSurface surface = SKSurface.Create(info);
        surface.Canvas.Clear(SKColors.White);
        picture.Draw(surface.Canvas, pixelsPerMillimetre);
        using SKImage image = surface.Snapshot();
        using SKData png = image.Encode(SKEncodedImageFormat.Png, 100);
        PngResolution.Insert(png.AsSpan(), options.DotsPerInch, stream);
    }
}
