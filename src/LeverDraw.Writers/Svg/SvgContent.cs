using LeverDraw.Drafting.Plotting;

namespace LeverDraw.Writers.Svg;

/// <summary>The order of an SVG sheet: the line kinds, then the dimensions, then lettering that belongs to none.</summary>
internal sealed class SvgContent(Utf8Page page, PlotSheet sheet)
{
    private static readonly LineRole[] Roles = Enum.GetValues<LineRole>();

    private readonly SvgItems items = new(page, sheet.Height);

    public void Write()
    {
        var order = SvgOrder.Of(sheet);
        Open();
        for (int i = 0; i < Roles.Length; i++)
            Role(Roles[i], order.OfRole(i));
        for (int i = 0; i < sheet.Dimensions.Length; i++)
            Dimension(sheet.Dimensions[i], order.OfDimension(i));
        foreach (int item in order.Texts)
            items.Text((PlotText)sheet.Items[item]);
        page.Raw("</svg>\n"u8);
    }

    private void Open()
    {
        page.Raw("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\""u8);
        page.Paper(sheet.Width);
        page.Raw("mm\" height=\""u8);
        page.Paper(sheet.Height);
        page.Raw("mm\" viewBox=\"0 0 "u8);
        page.Paper(sheet.Width);
        page.Raw((byte)' ');
        page.Paper(sheet.Height);
        page.Raw("\" fill=\"none\" stroke=\"#000\" stroke-linecap=\"round\" stroke-linejoin=\"round\">\n<title>"u8);
        page.Escaped(sheet.Title);
        page.Raw("</title>\n"u8);
    }

    private void Role(LineRole role, ReadOnlySpan<int> members)
    {
        if (members.IsEmpty)
            return;
        OpenGroup(role);
        page.Raw(">\n"u8);
        foreach (int member in members)
            items.Item(sheet.Items[member], role);
        page.Raw("</g>\n"u8);
    }

    private void Dimension(PlotDimension dimension, ReadOnlySpan<int> members)
    {
        OpenGroup(LineRole.Dimension);
        page.Attribute("data-name"u8, dimension.Name);
        page.FullAttribute("data-value"u8, dimension.Value);
        page.Raw(" data-kind=\""u8);
        page.Raw(Kind(dimension.Kind));
        page.Raw((byte)'"');
        if (dimension.Kind == PlotDimensionKind.Angle)
            page.Raw(" data-unit=\"rad\""u8);
        page.Attribute("data-text"u8, dimension.Text);
        page.Raw(">\n"u8);
        foreach (int member in members)
            items.Item(sheet.Items[member], LineRole.Dimension);
        page.Raw("</g>\n"u8);
    }

    private void OpenGroup(LineRole role)
    {
        page.Raw("<g class=\""u8);
        page.Raw(SvgClass.Of(role));
        page.Raw((byte)'"');
        if (role == LineRole.OverlayB)
        {
            page.Raw(" stroke=\""u8);
            page.Raw(SvgClass.Colour(role));
            page.Raw((byte)'"');
        }

        page.PenAttributes(Pens.Of(role));
    }

    private static ReadOnlySpan<byte> Kind(PlotDimensionKind kind) => kind switch
    {
        PlotDimensionKind.Linear => "linear"u8,
        PlotDimensionKind.Diameter => "diameter"u8,
        PlotDimensionKind.Radius => "radius"u8,
        PlotDimensionKind.Angle => "angle"u8,
        PlotDimensionKind.Chain => "chain"u8,
        PlotDimensionKind.Baseline => "baseline"u8,
        PlotDimensionKind.Ordinate => "ordinate"u8,
        PlotDimensionKind.ArcLength => "arc-length"u8,
        PlotDimensionKind.Note => "note"u8,
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };
}
