using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Writers.Svg;

/// <summary>One element per piece of ink; the pen comes from the group around it unless the piece's own role asks for another.</summary>
internal sealed class SvgItems(Utf8Page page, double sheetHeight)
{
    private readonly SvgPath path = new(page, sheetHeight);
    private readonly SvgLettering lettering = new(page, sheetHeight);

    /// <param name="around">The role whose pen the surrounding group has.</param>
    public void Item(PlotItem item, LineRole around)
    {
        switch (item)
        {
            case PlotStroke stroke:
                Stroke(stroke, around);
                break;
            case PlotLoop loop when IsCircle(loop.Contour, out ArcEdge? circle):
                Circle(circle, loop.Role, around);
                break;
            case PlotLoop loop:
                OpenPath(loop.Role, around);
                path.Loop(loop.Contour);
                page.Raw("\"/>\n"u8);
                break;
            case PlotFill fill:
                Fill(fill);
                break;
            case PlotHatch hatch:
                Hatch(hatch, around);
                break;
            case PlotText text:
                Text(text);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(item));
        }
    }

    public void Text(PlotText text)
    {
        page.Raw("<g class=\"lettering\" aria-label=\""u8);
        page.Escaped(text.Text);
        page.Raw("\" role=\"img\""u8);
        page.PaperAttribute("stroke-width"u8, Pens.LetteringWidth(text.Height));
        page.Raw("><path d=\""u8);
        lettering.Write(text);
        page.Raw("\"/></g>\n"u8);
    }

    private static bool IsCircle(Contour contour, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out ArcEdge? circle)
    {
        circle = contour.Edges is [ArcEdge { IsFullCircle: true } only] ? only : null;
        return circle is not null;
    }

    private void Stroke(PlotStroke stroke, LineRole around)
    {
        if (stroke.Edge is ArcEdge { IsFullCircle: true } circle)
        {
            Circle(circle, stroke.Role, around);
            return;
        }

        OpenPath(stroke.Role, around);
        path.MoveTo(stroke.Edge.Start);
        path.Along(stroke.Edge);
        page.Raw("\"/>\n"u8);
    }

    private void Circle(ArcEdge circle, LineRole role, LineRole around)
    {
        page.Raw("<circle"u8);
        OwnPen(role, around);
        page.PaperAttribute("cx"u8, circle.Centre.X);
        page.PaperAttribute("cy"u8, sheetHeight - circle.Centre.Y);
        page.PaperAttribute("r"u8, circle.Radius);
        page.Raw("/>\n"u8);
    }

    private void Fill(PlotFill fill)
    {
        page.Raw("<path fill=\""u8);
        page.Raw(SvgClass.Colour(fill.Role));
        page.Raw("\" stroke=\"none\" d=\""u8);
        for (int i = 0; i < fill.Corners.Length; i++)
        {
            if (i == 0)
                path.MoveTo(fill.Corners[i]);
            else
                path.LineTo(fill.Corners[i]);
        }

        path.Close();
        page.Raw("\"/>\n"u8);
    }

    /// <summary>All lines of a region are one path; lining is always thin and unbroken, also in an overlay's colour.</summary>
    private void Hatch(PlotHatch hatch, LineRole around)
    {
        page.Raw("<path"u8);
        if (around != LineRole.Hatch)
        {
            page.PenAttributes(Pens.Of(LineRole.Hatch));
            page.Raw(" stroke-dasharray=\"none\""u8);
        }

        page.Raw(" d=\""u8);
        foreach (LineEdge line in hatch.Lines)
        {
            path.MoveTo(line.From);
            path.LineTo(line.To);
        }

        page.Raw("\"/>\n"u8);
    }

    private void OpenPath(LineRole role, LineRole around)
    {
        page.Raw("<path"u8);
        OwnPen(role, around);
        page.Raw(" d=\""u8);
    }

    private void OwnPen(LineRole role, LineRole around)
    {
        if (role != around)
            page.PenAttributes(Pens.Of(role));
    }
}
