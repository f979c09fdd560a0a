using System.Globalization;
using System.Text;
using LeverDraw.Comparison.Sheets;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Pipeline;
using LeverDraw.Tests.Comparison;
using LeverDraw.Tests.Support;
using LeverDraw.Writers.Pdf;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace LeverDraw.Tests.Writers;

public class PdfWriterTests
{
    private static readonly PlotSheet Sheet = SampleSheets.Everything();

    [Fact]
    public void Write_Metadata_HoldsNoClock()
    {
        string text = Encoding.Latin1.GetString(Bytes.Of(new PdfWriter(), Sheet));
        Assert.DoesNotContain("CreationDate", text, StringComparison.Ordinal);
        Assert.DoesNotContain("ModDate", text, StringComparison.Ordinal);
        Assert.Contains("LeverDraw", text, StringComparison.Ordinal);
    }

    [OutsideReaderFact(OutsideReader.Poppler)]
    public void Write_Page_IsTheSheetToAHundredthOfAPoint()
    {
        // 297 mm and 210 mm times 72/25.4; poppler prints two decimals.
        string info = OutsideReader.WithFile(Bytes.Of(new PdfWriter(), Sheet), ".pdf", file => OutsideReader.Run("pdfinfo", "-box", file));
        Assert.Equal("0.00 0.00 841.89 595.28", Field(info, "MediaBox"));
        Assert.Equal("1", Field(info, "Pages"));
        Assert.Equal(Sheet.Title, Field(info, "Title"));
    }

    [OutsideReaderFact(OutsideReader.Poppler)]
    public void Write_RenderedByPoppler_HasTheInkOfThePng() => HasTheSameInk(Sheet, 100);

    [OutsideReaderFact(OutsideReader.Poppler)]
    public void Write_FoundrysSheetsRenderedByPoppler_HaveTheInkOfThePng()
    {
        foreach (string name in SheetMaker.Foundry)
            HasTheSameInk(SheetMaker.Draw(name, SheetMaker.Options("A4")), 200);
    }

    /// <summary>Colour, two dashed line kinds and two hatchings, which no other sheet has together.</summary>
    [OutsideReaderFact(OutsideReader.Poppler)]
    public void Write_OverlayRenderedByPoppler_HasTheInkOfThePng() =>
        HasTheSameInk(DrawingRoad.Sheet(OverlaySheet.Of(OverlayPairs.Compare("middle", "rare")), SheetMaker.Options("A4")).Value!, 100);

    private static void HasTheSameInk(PlotSheet sheet, int dpi)
    {
        using Image<Rgba32> ours = PngWriterTests.Read(sheet, dpi);
        using Image<Rgba32> theirs = OutsideReader.WithFile(Bytes.Of(new PdfWriter(), sheet), ".pdf", file =>
        {
            string prefix = Path.ChangeExtension(file, null);
            OutsideReader.Run("pdftoppm", "-r", dpi.ToString(CultureInfo.InvariantCulture), "-png", "-singlefile", file, prefix);
            return Image.Load<Rgba32>(prefix + ".png");
        });
        // Poppler rounds a page up to whole pixels, we to the nearest.
        Assert.InRange(theirs.Width - ours.Width, 0, 1);
        Assert.InRange(theirs.Height - ours.Height, 0, 1);

        // Budget: the total within 10 %, since the two thicken hairlines differently; and at most one dark pixel of one in a thousand farther than one pixel from ink of the other.
        Assert.InRange(Ink(theirs) / Ink(ours), 0.9, 1.1);
        Assert.InRange(Strays(ours, theirs), 0, 0.001);
        Assert.InRange(Strays(theirs, ours), 0, 0.001);
    }

    private static double Ink(Image<Rgba32> image) => Pixels(image).Sum(p => Darkness(image, p.X, p.Y));

    /// <summary>The share of one picture's dark pixels that have no ink of the other near them.</summary>
    private static double Strays(Image<Rgba32> of, Image<Rgba32> against)
    {
        (int X, int Y)[] dark = [.. Pixels(of).Where(p => Darkness(of, p.X, p.Y) > 0.5)];
        return (double)dark.Count(p => !HasInkNear(against, p.X, p.Y)) / dark.Length;
    }

    private static bool HasInkNear(Image<Rgba32> image, int x, int y)
    {
        for (int dx = -1; dx <= 1; dx++)
        {
            for (int dy = -1; dy <= 1; dy++)
            {
                if (x + dx >= 0 && x + dx < image.Width && y + dy >= 0 && y + dy < image.Height && Darkness(image, x + dx, y + dy) > 0.2)
                    return true;
            }
        }

        return false;
    }

    private static double Darkness(Image<Rgba32> image, int x, int y)
    {
        Rgba32 p = image[x, y];
        return 1 - ((p.R + p.G + p.B) / 765.0);
    }

    private static IEnumerable<(int X, int Y)> Pixels(Image<Rgba32> image) =>
        from y in Enumerable.Range(0, image.Height) from x in Enumerable.Range(0, image.Width) select (x, y);

    private static string Field(string info, string name)
    {
        string line = info.Split('\n').First(l => l.StartsWith(name + ":", StringComparison.Ordinal));
        return string.Join(' ', line[(name.Length + 1)..].Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToString(CultureInfo.InvariantCulture);
    }
}
