namespace LeverDraw.Geometry;

public enum PointPlace
{
    Inside,
    Outside,

    /// <summary>Within <see cref="Coincidence.Distance"/> of an edge.</summary>
    OnEdge,
}

/// <summary>The point of a contour nearest to some other point.</summary>
public readonly record struct NearestOnContour(int Edge, double T, Point2D Point, double Distance);

/// <summary>Questions about points and a contour, answered on the exact arcs.</summary>
public static class ContourQueries
{
    /// <summary>Inside by the even-odd rule, whatever the direction of travel. For very many points of one contour ask a <see cref="ChordScanner"/>.</summary>
    public static PointPlace Contains(Contour contour, Point2D point)
    {
        if (!contour.Box.Inflated(Coincidence.Distance).Contains(point))
            return PointPlace.Outside;
        if (NearestPoint(contour, point).Distance <= Coincidence.Distance)
            return PointPlace.OnEdge;
        return ChordScanner.Horizontal(contour).Contains(point) ? PointPlace.Inside : PointPlace.Outside;
    }

    /// <summary>Of several equally near points the first along the contour.</summary>
    public static NearestOnContour NearestPoint(Contour contour, Point2D point)
    {
        NearestOnContour best = new(0, 0, contour.Edges[0].Start, double.PositiveInfinity);
        for (int i = 0; i < contour.Edges.Length; i++)
        {
            NearestOnEdge on = EdgeProjection.Nearest(contour.Edges[i], point);
            if (on.Distance < best.Distance)
                best = new NearestOnContour(i, on.T, on.Point, on.Distance);
        }

        return best;
    }
}
