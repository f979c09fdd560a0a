using System.Collections.Immutable;

namespace LeverDraw.Geometry;

/// <summary>Where two edges meet, every case named.</summary>
/// <remarks>An end within <see cref="Coincidence.Distance"/> of the other edge is a touch there, and swallows a carrier meeting the edges don't part from in between:
/// so a nearly tangent joint reads as one touch at the joint, not as a joint and a crossing beside it.</remarks>
public static class EdgeIntersection
{
    public static IntersectionResult Between(Edge a, Edge b)
    {
        if (!a.Box.Inflated(Coincidence.Distance).Overlaps(b.Box.Inflated(Coincidence.Distance)))
            return NoIntersection.Instance;

        List<Meeting> meetings = EndTouches(a, b);
        ImmutableArray<SharedPiece> shared = meetings.Count == 0 ? [] : SharedPieces.Find(a, b, meetings);
        if (!shared.IsEmpty)
        {
            meetings.RemoveAll(m => shared.Any(piece => SharedPieces.Holds(piece, m, a)));
            return new Overlap(shared, [.. meetings]);
        }

        // An edge shrunk to a point has no direction to speak of.
        if (Math.Min(a.Length, b.Length) <= Coincidence.Distance)
            return IntersectionResult.Of([.. meetings]);
        CarrierHits hits = a is LineEdge p && b is LineEdge q ? LineLineIntersection.Bounded(p, q) : CarrierIntersection.Hits(a, b);
        int ends = meetings.Count;
        for (int i = 0; i < hits.Count; i++)
        {
            double ta = EdgeProjection.ParameterOf(a, hits[i]), tb = EdgeProjection.ParameterOf(b, hits[i]);
            if (ta < 0 || ta > 1 || tb < 0 || tb > 1 || IsOneOf(meetings, ends, hits[i], ta, a, b))
                continue;
            meetings.Add(new Meeting(hits[i], ta, tb, !hits.Tangent));
        }

        meetings.Sort((m, n) => m.Ta.CompareTo(n.Ta));
        return IntersectionResult.Of([.. meetings]);
    }

    private static List<Meeting> EndTouches(Edge a, Edge b)
    {
        List<Meeting> found = [];
        for (int end = 0; end <= 1; end++)
        {
            Point2D p = end == 0 ? a.Start : a.End;
            NearestOnEdge on = EdgeProjection.Nearest(b, p);
            if (on.Distance <= Coincidence.Distance)
                AddUnlessSame(found, new Meeting(p, end, on.T, false), a, b);
        }

        for (int end = 0; end <= 1; end++)
        {
            Point2D p = end == 0 ? b.Start : b.End;
            NearestOnEdge on = EdgeProjection.Nearest(a, p);
            if (on.Distance <= Coincidence.Distance)
                AddUnlessSame(found, new Meeting(p, on.T, end, false), a, b);
        }

        found.Sort((m, n) => m.Ta.CompareTo(n.Ta));
        return found;
    }

    // Ends that meet ends are found twice; the seam of a full circle is one point with two parameters.
    private static void AddUnlessSame(List<Meeting> found, Meeting next, Edge a, Edge b)
    {
        double reach = 2 * Coincidence.Distance;
        foreach (Meeting had in found)
        {
            if (had.Point.DistanceTo(next.Point) <= reach
                && (Math.Abs(had.Ta - next.Ta) * a.Length <= reach || Closed(a))
                && (Math.Abs(had.Tb - next.Tb) * b.Length <= reach || Closed(b)))
            {
                return;
            }
        }

        found.Add(next);
    }

    private static bool Closed(Edge edge) => edge is ArcEdge { IsFullCircle: true };

    private static bool IsOneOf(List<Meeting> meetings, int ends, Point2D point, double ta, Edge a, Edge b)
    {
        for (int i = 0; i < ends; i++)
        {
            double other = meetings[i].Ta;
            if (Closed(a) && Math.Abs(other - ta) > 0.5)
                other += other < ta ? 1 : -1;
            if (meetings[i].Point.DistanceTo(point) <= 2 * Coincidence.Distance || EdgeProjection.IsOn(b, a.PointAt((ta + other) / 2)))
                return true;
        }

        return false;
    }
}
