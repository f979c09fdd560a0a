using System.Globalization;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Writers.Dxf;

/// <summary>Section lining as HATCH with edge paths and a pattern of our own, which no reader replaces by its own file.</summary>
internal sealed class DxfHatches(DxfPage page, DxfSpace space)
{
    public void Write(PlotHatch hatch, DxfTarget target)
    {
        double degrees = DxfShapes.Degrees(hatch.Angle);
        double spacing = hatch.Spacing * space.FromPaper;
        page.Entity("HATCH"u8, target);
        page.Word(100, "AcDbHatch"u8);
        page.Point(10, Point2D.Origin);
        page.Point(210, 0, 0, 1);
        page.Name(2, string.Create(CultureInfo.InvariantCulture, $"USER{Math.Round(degrees):0}"));
        page.Integer(70, 0);
        page.Integer(71, 0);
        page.Integer(91, hatch.Region.Length);
        foreach (Contour loop in hatch.Region)
            Path(loop.Transformed(space.PaperTransform));
        page.Integer(75, 0);
        page.Integer(76, 0);
        page.Real(52, degrees);
        page.Real(41, spacing);
        page.Integer(77, 0);
        page.Integer(78, 1);
        page.Real(53, degrees);
        // The pattern starts on one of our own lines, so that both pictures agree.
        Point2D start = hatch.Lines.IsEmpty ? Point2D.Origin : space.Place(hatch.Lines[0].From);
        page.Real(43, start.X);
        page.Real(44, start.Y);
        Vector2D step = Vector2D.FromAngle(hatch.Angle).Left * spacing;
        page.Real(45, step.X);
        page.Real(46, step.Y);
        page.Integer(79, 0);
        page.Integer(98, 0);
    }

    private void Path(Contour loop)
    {
        page.Integer(92, 1);
        page.Integer(93, loop.Edges.Length);
        foreach (Edge edge in loop.Edges)
        {
            if (edge is ArcEdge arc)
                Arc(arc);
            else
                Line(edge);
        }

        page.Integer(97, 0);
    }

    private void Line(Edge line)
    {
        page.Integer(72, 1);
        page.Pair(10, line.Start);
        page.Pair(11, line.End);
    }

    /// <summary>A clockwise arc is stored mirrored in the x axis: 360° less each true angle, so the end is again the larger.</summary>
    private void Arc(ArcEdge arc)
    {
        bool counterClockwise = arc.Sweep > 0;
        double start = arc.IsFullCircle ? 0 : DxfShapes.Degrees(counterClockwise ? arc.StartAngle : -arc.StartAngle);
        double turned = arc.IsFullCircle ? 360 : Math.Abs(arc.Sweep) * (180 / Math.PI);
        page.Integer(72, 2);
        page.Pair(10, arc.Centre);
        page.Real(40, arc.Radius);
        page.Real(50, start);
        page.Real(51, start + turned);
        page.Integer(73, counterClockwise ? 1 : 0);
    }
}
