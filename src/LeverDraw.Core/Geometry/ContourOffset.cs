using System.Collections.Immutable;

namespace LeverDraw.Geometry;

/// <summary>Parallel outlines, with arcs about the corners on the outside.</summary>
/// <remarks>
/// Every edge's parallel and an arc about every corner that opens are cut where they meet each other; a piece stays when its middle is no nearer than the distance to the given outline.
/// That is exact, and also right where the outline splits, closes a gap or vanishes.
/// Limits: the given outline must not cross or touch itself (<see cref="ContourSelfCheck"/>); details below some twenty times <see cref="Coincidence.Distance"/> may be closed up;
/// where parallels exactly coincide (a slot offset by half its width) nothing is left of the coinciding stretch. The work grows with the square of the number of edges.
/// </remarks>
public static class ContourOffset
{
    /// <summary>Smaller moves, a thousandth of a micrometre, give back the outline itself: they drown in the thresholds.</summary>
    public const double Least = 1000 * Coincidence.Distance;

    /// <summary>Moved by <paramref name="distance"/> millimetres to the right of travel: outward when positive and the contour runs counter-clockwise; a clockwise one (a hole) shrinks.</summary>
    /// <exception cref="InvalidOperationException">The pieces left don't close: the outline crosses itself, or the kernel failed; never a wrong outline instead.</exception>
    /// <returns>No contour when nothing is left; a clockwise one beside others is a hole that the offset closed off.</returns>
    public static ImmutableArray<Contour> By(Contour contour, double distance)
    {
        if (Math.Abs(distance) <= Least)
            return [contour];
        List<Edge> pieces = Cut(Parallels(contour, distance));
        double nearest = Math.Abs(distance) - (10 * Coincidence.Distance);
        pieces.RemoveAll(p => p.Length <= PieceChains.Reach || NearerThan(contour, p.PointAt(0.5), nearest));
        DropDoubles(pieces);
        PieceChains.DropDeadEnds(pieces, (0.1 * Math.Abs(distance)) + PieceChains.Reach);
        return PieceChains.Close(pieces);
    }

    private static List<Edge> Parallels(Contour contour, double distance)
    {
        List<Edge> found = [];
        for (int i = 0; i < contour.Edges.Length; i++)
        {
            Edge edge = contour.Edges[i], next = contour.Edges[(i + 1) % contour.Edges.Length];
            if (EdgeOffset.Left(edge, -distance) is Parallel parallel)
                found.Add(parallel.Edge);
            double turn = JointTurn.Between(edge, next);
            if (turn * distance > Coincidence.Distance)
            {
                Vector2D into = edge.TangentAt(1);
                Vector2D toArc = distance > 0 ? -into.Left : into.Left;
                found.Add(new ArcEdge(next.Start, Math.Abs(distance), toArc.Angle, turn));
            }
        }

        return found;
    }

    private static List<Edge> Cut(List<Edge> raw)
    {
        List<double>[] cuts = new List<double>[raw.Count];
        for (int i = 0; i < cuts.Length; i++)
            cuts[i] = [];
        for (int i = 0; i < raw.Count; i++)
        {
            for (int j = i + 1; j < raw.Count; j++)
            {
                IntersectionResult result = EdgeIntersection.Between(raw[i], raw[j]);
                EdgeCuts.AddFirst(result, cuts[i]);
                EdgeCuts.AddSecond(result, cuts[j]);
            }
        }

        List<Edge> pieces = [];
        for (int i = 0; i < raw.Count; i++)
            EdgeCuts.Split(raw[i], cuts[i], Coincidence.Distance, pieces);
        return pieces;
    }

    private static bool NearerThan(Contour contour, Point2D p, double distance)
    {
        foreach (Edge edge in contour.Edges)
        {
            if (EdgeProjection.Nearest(edge, p).Distance < distance)
                return true;
        }

        return false;
    }

    // Twice the same way: one is enough. Once each way: a strip of no width, which goes.
    private static void DropDoubles(List<Edge> pieces)
    {
        for (int i = pieces.Count - 1; i > 0; i--)
        {
            for (int j = 0; j < i; j++)
            {
                bool sameWay = Near(pieces[i].Start, pieces[j].Start) && Near(pieces[i].End, pieces[j].End);
                bool otherWay = Near(pieces[i].Start, pieces[j].End) && Near(pieces[i].End, pieces[j].Start);
                if (!(sameWay || otherWay) || !Near(pieces[i].PointAt(0.5), pieces[j].PointAt(0.5)))
                    continue;
                // A full circle starts and ends in one point: its direction decides.
                if (sameWay && otherWay)
                    sameWay = pieces[i].TangentAt(0.5).Dot(pieces[j].TangentAt(0.5)) > 0;
                pieces.RemoveAt(i);
                if (!sameWay)
                {
                    pieces.RemoveAt(j);
                    i--;
                }

                break;
            }
        }
    }

    private static bool Near(Point2D a, Point2D b) => a.DistanceTo(b) <= PieceChains.Reach;
}
