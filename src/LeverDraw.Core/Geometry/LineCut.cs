namespace LeverDraw.Geometry;

/// <summary>An unbounded directed line that cuts edges. Heights are distances to its left, millimetres.</summary>
internal readonly record struct LineCut(Point2D On, Vector2D Along)
{
    public double Height(Point2D p) => Along.Cross(p - On);

    /// <summary>Notes where the edge passes through the line; an end within <see cref="Coincidence.Distance"/> of it is no cut.</summary>
    public void AddCuts(Edge edge, List<double> cuts)
    {
        double from = Height(edge.Start), to = Height(edge.End);
        if (edge is not ArcEdge arc)
        {
            if (OffLine(from) && OffLine(to) && from < 0 != to < 0)
                cuts.Add(from / (from - to));
            return;
        }

        CarrierHits hits = LineArcIntersection.Carriers(new LineEdge(On, On + Along), arc);
        for (int i = 0; i < hits.Count; i++)
        {
            double t = EdgeProjection.ParameterOf(arc, hits[i]);
            bool startsHere = !OffLine(from) && !OffLine(Height(arc.PointAt(t / 2)));
            bool endsHere = !OffLine(to) && !OffLine(Height(arc.PointAt((1 + t) / 2)));
            if (t > 0 && t < 1 && !startsHere && !endsHere)
                cuts.Add(t);
        }
    }

    /// <summary>True when a piece that doesn't pass through the line lies to its left, not on it.</summary>
    public bool IsLeft(Edge piece) =>
        Math.Max(Math.Max(Height(piece.Start), Height(piece.End)), Height(piece.PointAt(0.5))) > Coincidence.Distance;

    private static bool OffLine(double height) => Math.Abs(height) > Coincidence.Distance;
}
