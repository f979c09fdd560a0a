namespace LeverDraw.Geometry;

/// <summary>Cutting an edge into pieces at parameters.</summary>
internal static class EdgeCuts
{
    /// <summary>Adds the pieces between the cuts, which are sorted here; cuts nearer than <paramref name="shortest"/> to the last one or to an end are left out.</summary>
    public static void Split(Edge edge, List<double> cuts, double shortest, List<Edge> into)
    {
        cuts.Sort();
        double length = edge.Length;
        double from = 0;
        foreach (double t in cuts)
        {
            if ((t - from) * length <= shortest || (1 - t) * length <= shortest)
                continue;
            into.Add(edge.Trimmed(from, t));
            from = t;
        }

        into.Add(from == 0 ? edge : edge.Trimmed(from, 1));
    }

    /// <summary>Notes where <paramref name="result"/> cuts the first edge.</summary>
    public static void AddFirst(IntersectionResult result, List<double> cuts)
    {
        foreach (Meeting meeting in result.Meetings)
            cuts.Add(meeting.Ta);
        if (result is not Overlap overlap)
            return;
        foreach (SharedPiece piece in overlap.Pieces)
        {
            cuts.Add(piece.TaFrom);
            cuts.Add(piece.TaTo);
        }
    }

    /// <summary>Notes where <paramref name="result"/> cuts the second edge.</summary>
    public static void AddSecond(IntersectionResult result, List<double> cuts)
    {
        foreach (Meeting meeting in result.Meetings)
            cuts.Add(meeting.Tb);
        if (result is not Overlap overlap)
            return;
        foreach (SharedPiece piece in overlap.Pieces)
        {
            cuts.Add(piece.TbFrom);
            cuts.Add(piece.TbTo);
        }
    }
}
