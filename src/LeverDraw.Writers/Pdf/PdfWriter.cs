using LeverDraw.Drafting.Plotting;
using LeverDraw.Units;
using SkiaSharp;

namespace LeverDraw.Writers.Pdf;

/// <summary>The SVG's picture as one PDF page of the sheet's true size. Lettering is strokes; there is no text layer.</summary>
public sealed class PdfWriter : IDrawingWriter
{
    private const double PointsPerMillimetre = 72 / Length.MillimetresPerInch;

    public string Format => "pdf";

    public string Extension => "pdf";

    public void Write(PlotSheet sheet, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(stream);
        // No dates: they would come from a clock, and the same sheet must give the same bytes.
        var metadata = new SKDocumentPdfMetadata
        {
            Title = sheet.Title,
            Creator = "LeverDraw",
            Producer = "LeverDraw",
            Creation = null,
            Modified = null,
        };
        double width = sheet.Width * PointsPerMillimetre;
        double height = sheet.Height * PointsPerMillimetre;
        using var bytes = new MemoryStream();
        using (SvgPicture picture = SvgPicture.Of(sheet))
        using (SKDocument document = SKDocument.CreatePdf(bytes, metadata))
        {
            // Pages of the library are whole points and its y runs down from the top: one that is surely large enough, with the sheet in its lower left corner.
            double top = Math.Ceiling(height);
            using SKCanvas canvas = document.BeginPage((float)Math.Ceiling(width), (float)top);
            canvas.Translate(0, (float)(top - height));
            picture.Draw(canvas, PointsPerMillimetre);
            document.EndPage();
            document.Close();
        }

        PdfPageSize.Set(bytes.GetBuffer().AsSpan(0, (int)bytes.Length), width, height, stream);
    }
}
