using LeverDraw.Geometry;

namespace LeverDraw.Parts.Outlines;

/// <summary>The part of an outline that stays inside it however it is moved within a box: the outline met with itself moved to and fro. Lines and arcs stay exact.</summary>
internal static class Narrowed
{
    /// <param name="x">Half the move along x, millimetres, not negative; likewise <paramref name="y"/>.</param>
    /// <exception cref="InvalidOperationException">Nothing is left.</exception>
    public static Contour By(Contour contour, double x, double y)
    {
        Contour narrowed = x > Coincidence.Distance ? Met(Moved(contour, x, 0), Moved(contour, -x, 0)) : contour;
        return y > Coincidence.Distance ? Met(Moved(narrowed, 0, y), Moved(narrowed, 0, -y)) : narrowed;
    }

    private static Contour Moved(Contour contour, double x, double y) => contour.Transformed(Transform2D.Move(x, y));

    private static Contour Met(Contour a, Contour b)
    {
        List<Edge> pieces = [.. Inside(a, b, true), .. Inside(b, a, false)];
        PieceChains.DropDeadEnds(pieces, PieceChains.Reach);
        return PieceChains.Close(pieces).MaxBy(ContourMeasure.Area) ?? throw new InvalidOperationException("Nothing is left of an outline narrowed this far.");
    }

    // A stretch that both share is taken from the first.
    private static IEnumerable<Edge> Inside(Contour contour, Contour other, bool withShared)
    {
        List<Edge> pieces = [];
        List<double> cuts = [];
        foreach (Edge edge in contour.Edges)
        {
            cuts.Clear();
            foreach (Edge across in other.Edges)
                EdgeCuts.AddFirst(EdgeIntersection.Between(edge, across), cuts);
            EdgeCuts.Split(edge, cuts, Coincidence.Distance, pieces);
        }

        return pieces.Where(p => ContourQueries.Contains(other, p.PointAt(0.5)) is var place && (place == PointPlace.Inside || (withShared && place == PointPlace.OnEdge)));
    }
}
