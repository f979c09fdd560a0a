using LeverDraw.Geometry;

namespace LeverDraw.Writers.Svg;

/// <summary>Path data, with the sheet's y up turned into SVG's y down.</summary>
internal readonly struct SvgPath(Utf8Page page, double sheetHeight)
{
    public void MoveTo(Point2D p) => Command((byte)'M', p);

    public void LineTo(Point2D p) => Command((byte)'L', p);

    public void Close() => page.Raw((byte)'Z');

    /// <summary>From where the pen is, which must be the edge's start.</summary>
    public void Along(Edge edge)
    {
        switch (edge)
        {
            case LineEdge line:
                LineTo(line.To);
                break;
            case ArcEdge arc:
                Arc(new ArcPieces(arc.Centre, arc.Radius, arc.StartAngle, arc.Sweep, arc.IsFullCircle));
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(edge));
        }
    }

    public void Loop(Contour contour)
    {
        MoveTo(contour.Edges[0].Start);
        foreach (Edge edge in contour.Edges)
            Along(edge);
        Close();
    }

    private void Arc(in ArcPieces pieces)
    {
        for (int i = 1; i <= pieces.Count; i++)
        {
            page.ArcTo((byte)'A', pieces);
            Pair(pieces.EndOf(i));
        }
    }

    private void Command(byte letter, Point2D p)
    {
        page.Raw(letter);
        Pair(p);
    }

    private void Pair(Point2D p)
    {
        page.Paper(p.X);
        page.Raw((byte)' ');
        page.Paper(sheetHeight - p.Y);
    }
}
