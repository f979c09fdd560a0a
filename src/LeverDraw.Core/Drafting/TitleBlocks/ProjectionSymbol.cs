using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.TitleBlocks;

/// <summary>The truncated cone in two views (ISO 5456-2, proportions of reference 10i from memory): circles left for third angle, right for first (reference 10j).</summary>
public static class ProjectionSymbol
{
    private const double SmallDiameter = 2.8;
    private const double LargeDiameter = 2 * SmallDiameter;
    private const double ConeLength = 2 * SmallDiameter;
    private const double Between = 3.4;

    public static IEnumerable<PlotItem> Draw(ProjectionMethod method, Point2D centre)
    {
        double half = (LargeDiameter + Between + ConeLength) / 2;
        bool circlesLeft = method == ProjectionMethod.ThirdAngle;
        var circles = new Point2D(centre.X + (circlesLeft ? -half + (LargeDiameter / 2) : half - (LargeDiameter / 2)), centre.Y);
        double coneFrom = circlesLeft ? centre.X + half - ConeLength : centre.X - half;
        double coneTo = coneFrom + ConeLength;
        foreach (double diameter in (double[])[SmallDiameter, LargeDiameter])
            yield return new PlotLoop(LineRole.TitleBlock, Contour.Circle(circles, diameter / 2));
        foreach (LineEdge axis in Cross(circles, (LargeDiameter / 2) + 0.8))
            yield return new PlotStroke(LineRole.Centre, axis);

        // The circles are the view on the small end: in both methods that is the left one.
        (double smallX, double largeX) = (coneFrom, coneTo);
        Point2D[] corners =
        [
            new(smallX, centre.Y - (SmallDiameter / 2)), new(largeX, centre.Y - (LargeDiameter / 2)),
            new(largeX, centre.Y + (LargeDiameter / 2)), new(smallX, centre.Y + (SmallDiameter / 2)),
        ];
        for (int i = 0; i < 4; i++)
            yield return new PlotStroke(LineRole.TitleBlock, new LineEdge(corners[i], corners[(i + 1) % 4]));
        yield return new PlotStroke(LineRole.Centre, new LineEdge(new Point2D(coneFrom - 0.8, centre.Y), new Point2D(coneTo + 0.8, centre.Y)));
    }

    private static IEnumerable<LineEdge> Cross(Point2D at, double reach)
    {
        yield return new LineEdge(new Point2D(at.X - reach, at.Y), new Point2D(at.X + reach, at.Y));
        yield return new LineEdge(new Point2D(at.X, at.Y - reach), new Point2D(at.X, at.Y + reach));
    }
}
