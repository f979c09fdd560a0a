using LeverDraw.Drafting.Plotting;
using LeverDraw.Writers.Png;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Metadata;
using SixLabors.ImageSharp.PixelFormats;

namespace LeverDraw.Tests.Writers;

public class PngWriterTests
{
    /// <summary>A black bar 50.8 mm by 2.54 mm, that is 2 in by 0.1 in, its lower left corner 1 in from the left and from the bottom of an A4 sheet.</summary>
    private static readonly PlotSheet Bar = SampleSheets.Everything() with
    {
        Items = [new PlotFill(LineRole.Frame, [new(25.4, 25.4), new(76.2, 25.4), new(76.2, 27.94), new(25.4, 27.94)])],
        Views = [],
        Dimensions = [],
    };

    [Theory]
    [InlineData(200, 2339, 1654, 7874)]
    [InlineData(300, 3508, 2480, 11811)]
    public void Write_Resolution_GivesPixelsAndStandsInTheFile(int dpi, int width, int height, int perMetre)
    {
        using Image<Rgba32> image = Read(Bar, dpi);
        // 297 mm and 210 mm at 25.4 mm to the inch, to the nearest pixel; dots per metre are dpi / 0.0254.
        Assert.Equal((width, height), (image.Width, image.Height));
        Assert.Equal(PixelResolutionUnit.PixelsPerMeter, image.Metadata.ResolutionUnits);
        Assert.Equal((perMetre, perMetre), ((int)image.Metadata.HorizontalResolution, (int)image.Metadata.VerticalResolution));
    }

    [Fact]
    public void Write_KnownBar_IsTrueToScale()
    {
        using Image<Rgba32> image = Read(Bar, 200);
        // At 200 dots per inch the bar is 400 pixels long and starts at pixel 200; its rows end 200 pixels above the bottom (1653.54).
        int row = (int)(1653.54 - 210);
        double covered = Enumerable.Range(0, image.Width).Sum(x => 1 - (image[x, row].R / 255.0));
        Assert.Equal(400, covered, 0.02);
        // Its ends lie on pixel borders, so they are sharp to a hundredth of a pixel.
        Assert.InRange(image[199, row].R, 252, 255);
        Assert.InRange(image[200, row].R, 0, 3);
        Assert.InRange(image[599, row].R, 0, 3);
        Assert.InRange(image[600, row].R, 252, 255);
        double high = Enumerable.Range(0, image.Height).Sum(y => 1 - (image[400, y].R / 255.0));
        Assert.Equal(20, high, 0.02);
    }

    [Fact]
    public void Write_Paper_IsWhiteAndOpaque()
    {
        using Image<Rgba32> image = Read(Bar, 100);
        Assert.Equal(new Rgba32(255, 255, 255, 255), image[0, 0]);
        Assert.Equal(new Rgba32(255, 255, 255, 255), image[image.Width - 1, image.Height - 1]);
    }

    internal static Image<Rgba32> Read(PlotSheet sheet, int dpi) => Image.Load<Rgba32>(Bytes.Of(new PngWriter(new PngOptions(dpi)), sheet));
}
