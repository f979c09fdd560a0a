using LeverDraw.Drafting.Plotting;

namespace LeverDraw.Writers.Dxf;

/// <summary>Strict ASCII DXF with model space at true size in the sheet's unit; see docs/adr/0003-dxf-model-space.md.</summary>
public sealed class DxfWriter(DxfOptions options) : IDrawingWriter
{
    public DxfWriter()
        : this(new DxfOptions())
    {
    }

    public string Format => "dxf";

    public string Extension => "dxf";

    /// <exception cref="ArgumentException">A main view is not at the main scale, or a dimension has no ink.</exception>
    public void Write(PlotSheet sheet, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(stream);
        DxfEncoding encoding = EncodingFor(sheet);
        using var bodyBytes = new Utf8Page();
        var body = new DxfPage(bodyBytes, encoding);
        var content = new DxfContentWriter(body, sheet, options.Content);
        content.Write();

        // The header comes first but names the last handle, so it is written last.
        using var headerBytes = new Utf8Page();
        new DxfHeader(new DxfPage(headerBytes, encoding)).Write(sheet, content.Space, content.Extents, content.Limits, content.Styles.Default, body.NextFree);
        stream.Write(headerBytes.Written);
        stream.Write(bodyBytes.Written);
    }

    private DxfEncoding EncodingFor(PlotSheet sheet) => options.Version switch
    {
        DxfVersion.R2000 => DxfEncoding.Ascii,
        DxfVersion.R2010 => DxfEncoding.Utf8,
        _ => options.Content == DxfContent.Full && Strings(sheet).Any(DxfString.NeedsUtf8) ? DxfEncoding.Utf8 : DxfEncoding.Ascii,
    };

    private static IEnumerable<string> Strings(PlotSheet sheet) =>
        sheet.Items.OfType<PlotText>().Select(t => DxfSigns.WithoutSigns(t.Text)).Concat(sheet.Dimensions.Select(d => d.Text));
}
