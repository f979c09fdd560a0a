using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Writers.Dxf;

/// <summary>Plain entities, from geometry in file units.</summary>
internal sealed class DxfShapes(DxfPage page)
{
    private const double DegreesPerRadian = 180 / Math.PI;

    /// <summary>An angle as degrees from 0 up to a whole turn.</summary>
    public static double Degrees(double radians)
    {
        double degrees = PaperNumber.RoundedExact(Math.IEEERemainder(radians * DegreesPerRadian, 360));
        return degrees < 0 ? degrees + 360 : degrees;
    }

    public void Edge(Edge edge, DxfTarget target)
    {
        switch (edge)
        {
            case LineEdge line:
                Line(line, target);
                break;
            case ArcEdge { IsFullCircle: true } circle:
                Circle(circle, target);
                break;
            case ArcEdge arc:
                Arc(arc, target);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(edge));
        }
    }

    /// <summary>A closed polyline whose arcs are bulges, or a CIRCLE. Its vertices are shared, so there is no joint that could gape.</summary>
    public void Loop(Contour contour, DxfTarget target)
    {
        if (contour.Edges is [ArcEdge { IsFullCircle: true } circle])
        {
            Circle(circle, target);
            return;
        }

        ImmutableArray<DxfVertex> vertices = DxfVertex.Of(contour);
        page.Entity("LWPOLYLINE"u8, target);
        page.Word(100, "AcDbPolyline"u8);
        page.Integer(90, vertices.Length);
        page.Integer(70, 1);
        page.Real(43, 0);
        foreach (DxfVertex vertex in vertices)
        {
            page.Pair(10, vertex.Point);
            if (Math.Abs(vertex.Bulge) >= DxfVertex.SmallestBulge)
                page.Real(42, vertex.Bulge);
        }
    }

    public void Point(Point2D at, DxfTarget target)
    {
        page.Entity("POINT"u8, target);
        page.Word(100, "AcDbPoint"u8);
        page.Point(10, at);
    }

    /// <summary>A filled convex polygon, in triangles, or whole when it has four corners.</summary>
    public void Fill(ReadOnlySpan<Point2D> corners, DxfTarget target)
    {
        if (corners.Length == 4)
        {
            Solid(corners[0], corners[1], corners[3], corners[2], target);
            return;
        }

        for (int i = 2; i < corners.Length; i++)
            Solid(corners[0], corners[i - 1], corners[i], corners[i], target);
    }

    /// <summary>Lettering by its middle: that depends least on the reader's own font.</summary>
    public void Text(PlotText text, DxfSpace space, DxfTarget target)
    {
        Vector2D along = Vector2D.FromAngle(text.Angle);
        Point2D middle = space.Place(text.Anchor + (along * (text.Width / 2)) + (along.Left * (text.Height / 2)));
        page.Entity("TEXT"u8, target);
        page.Word(100, "AcDbText"u8);
        page.Point(10, middle);
        page.Real(40, text.Height * space.FromPaper);
        page.Encoded(1, DxfString.Line(text.Text, page.Encoding));
        double degrees = Degrees(text.Angle);
        if (degrees != 0)
            page.Real(50, degrees);
        // A reader sets deviations side by side: narrower letters keep the line as long as it is drawn.
        if (text.LevelWidth is { } level)
            page.Real(41, text.Width / level);
        page.Name(7, DxfTables.LetteringStyle);
        page.Integer(72, 1);
        page.Point(11, middle);
        page.Word(100, "AcDbText"u8);
        page.Integer(73, 2);
    }

    private void Line(LineEdge line, DxfTarget target)
    {
        page.Entity("LINE"u8, target);
        page.Word(100, "AcDbLine"u8);
        page.Point(10, line.From);
        page.Point(11, line.To);
    }

    private void Circle(ArcEdge circle, DxfTarget target)
    {
        page.Entity("CIRCLE"u8, target);
        page.Word(100, "AcDbCircle"u8);
        page.Point(10, circle.Centre);
        page.Real(40, circle.Radius);
    }

    /// <summary>An ARC always runs counter-clockwise, so a clockwise one is written from its end.</summary>
    private void Arc(ArcEdge arc, DxfTarget target)
    {
        page.Entity("ARC"u8, target);
        page.Word(100, "AcDbCircle"u8);
        page.Point(10, arc.Centre);
        page.Real(40, arc.Radius);
        page.Word(100, "AcDbArc"u8);
        page.Real(50, Degrees(arc.Sweep > 0 ? arc.StartAngle : arc.EndAngle));
        page.Real(51, Degrees(arc.Sweep > 0 ? arc.EndAngle : arc.StartAngle));
    }

    private void Solid(Point2D a, Point2D b, Point2D c, Point2D d, DxfTarget target)
    {
        page.Entity("SOLID"u8, target);
        page.Word(100, "AcDbTrace"u8);
        page.Point(10, a);
        page.Point(11, b);
        page.Point(12, c);
        page.Point(13, d);
    }
}
