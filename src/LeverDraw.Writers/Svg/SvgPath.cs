using LeverDraw.Geometry;

namespace LeverDraw.Writers.Svg;

/// <summary>Path data, with the sheet's y up turned into SVG's y down.</summary>
internal readonly struct SvgPath(Utf8Page page, double sheetHeight)
{
    /// <summary>An arc's centre is found by the reader from its rounded ends, ever less surely towards half a turn (there 0.0001 mm shifts it by 0.03 mm). In pieces up to 150° it stays within 0.0002 mm.</summary>
    private const double LargestSweep = 150 * Math.PI / 180;

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
                Arc(arc.Centre, arc.Radius, arc.StartAngle, arc.Sweep, arc.IsFullCircle);
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

    /// <summary>The same for an edge that is first put in its place.</summary>
    public void Along(Edge edge, in Transform2D place)
    {
        switch (edge)
        {
            case LineEdge line:
                LineTo(place.Apply(line.To));
                break;
            case ArcEdge arc:
                Arc(place.Apply(arc.Centre), arc.Radius * place.Scale, place.ApplyToDirection(arc.StartAngle), place.Mirrored ? -arc.Sweep : arc.Sweep, arc.IsFullCircle);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(edge));
        }
    }

    private void Arc(Point2D centre, double radius, double start, double sweep, bool isFullCircle)
    {
        int pieces = Math.Max(1, (int)Math.Ceiling((Math.Abs(sweep) / LargestSweep) - Coincidence.Angle));
        for (int i = 1; i <= pieces; i++)
        {
            page.Raw((byte)'A');
            page.Paper(radius);
            page.Raw((byte)' ');
            page.Paper(radius);
            // Never the large arc; counter-clockwise on paper is the negative direction when y points down.
            page.Raw(sweep > 0 ? " 0 0 0 "u8 : " 0 0 1 "u8);
            double turned = i < pieces ? start + (sweep * ((double)i / pieces)) : isFullCircle ? start : start + sweep;
            Pair(centre + (Vector2D.FromAngle(turned) * radius));
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
