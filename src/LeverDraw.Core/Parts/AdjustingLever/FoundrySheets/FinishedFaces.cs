using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;

namespace LeverDraw.Parts.AdjustingLever.FoundrySheets;

/// <summary>Where the finished faces lie inside a casting or pattern: those pieces of the finished outline that stand off from the other. The rest is one line with it and is not drawn twice.</summary>
internal static class FinishedFaces
{
    /// <summary>Nearer than this the two are one face, millimetres.</summary>
    private const double Same = 0.02;

    private const int Places = 24;

    public static IEnumerable<ViewEdge> Of(IEnumerable<Edge> finished, Contour around)
    {
        foreach (Edge edge in finished)
        {
            foreach (Edge piece in Pieces(edge, around))
                yield return new ViewEdge(LineRole.Phantom, piece);
        }
    }

    private static IEnumerable<Edge> Pieces(Edge edge, Contour around)
    {
        bool Off(double t) => ContourQueries.NearestPoint(around, edge.PointAt(t)).Distance > Same;
        double? from = Off(0) ? 0 : null;
        for (int i = 1; i <= Places; i++)
        {
            double t = (double)i / Places;
            bool off = Off(t);
            if (off && from is null)
                from = Border((i - 1.0) / Places, t, Off);
            if (!off && from is { } start)
            {
                yield return edge.Trimmed(start, Border(t, (i - 1.0) / Places, Off));
                from = null;
            }
        }

        if (from is { } open && open < 1)
            yield return open == 0 ? edge : edge.Trimmed(open, 1);
    }

    /// <summary>Between a place on the other outline and one off it.</summary>
    private static double Border(double on, double off, Func<double, bool> isOff)
    {
        for (int i = 0; i < 30; i++)
        {
            double middle = (on + off) / 2;
            (on, off) = isOff(middle) ? (on, middle) : (middle, off);
        }

        return off;
    }
}
