using LeverDraw.Geometry;

namespace LeverDraw.Writers.Svg;

/// <summary>Path data by steps from point to point, with y up turned into SVG's y down.</summary>
internal struct SvgSteps(Utf8Page page, Point2D start)
{
    private long x = PaperNumber.Steps(start.X);
    private long y = PaperNumber.Steps(-start.Y);

    /// <param name="edge">It starts where the last one ended.</param>
    public void Along(Edge edge)
    {
        switch (edge)
        {
            case LineEdge line:
                page.Raw((byte)'l');
                StepTo(line.To);
                break;
            case ArcEdge arc:
                var pieces = new ArcPieces(arc.Centre, arc.Radius, arc.StartAngle, arc.Sweep, arc.IsFullCircle);
                for (int i = 1; i <= pieces.Count; i++)
                {
                    page.ArcTo((byte)'a', pieces);
                    StepTo(pieces.EndOf(i));
                }

                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(edge));
        }
    }

    private void StepTo(Point2D p)
    {
        (long toX, long toY) = (PaperNumber.Steps(p.X), PaperNumber.Steps(-p.Y));
        page.PaperSteps(toX - x);
        page.Raw((byte)' ');
        page.PaperSteps(toY - y);
        (x, y) = (toX, toY);
    }
}
