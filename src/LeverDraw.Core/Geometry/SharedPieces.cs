using System.Collections.Immutable;

namespace LeverDraw.Geometry;

/// <summary>The stretches along which two edges run within <see cref="Coincidence.Distance"/> of each other.</summary>
internal static class SharedPieces
{
    /// <summary>A shared stretch is bounded by ends of either edge, so it is enough to look between the ends found touching.</summary>
    public static ImmutableArray<SharedPiece> Find(Edge a, Edge b, List<Meeting> endTouches)
    {
        List<double> cuts = [];
        foreach (Meeting meeting in endTouches)
        {
            cuts.Add(meeting.Ta);
            // The seam of a full circle is its start and its end.
            if (a is ArcEdge { IsFullCircle: true } && Math.Min(meeting.Ta, 1 - meeting.Ta) * a.Length <= Coincidence.Distance)
            {
                cuts.Add(0);
                cuts.Add(1);
            }
        }

        cuts.Sort();
        ImmutableArray<SharedPiece>.Builder found = ImmutableArray.CreateBuilder<SharedPiece>();
        double from = double.NaN;
        double to = double.NaN;
        for (int i = 1; i < cuts.Count; i++)
        {
            if ((cuts[i] - cuts[i - 1]) * a.Length <= 2 * Coincidence.Distance || !RunsAlong(a, b, cuts[i - 1], cuts[i]))
                continue;
            if (!double.IsNaN(from) && cuts[i - 1] - to <= 0)
            {
                to = cuts[i];
                continue;
            }

            if (!double.IsNaN(from))
                found.Add(Piece(a, b, from, to));
            (from, to) = (cuts[i - 1], cuts[i]);
        }

        if (!double.IsNaN(from))
            found.Add(Piece(a, b, from, to));
        return found.DrainToImmutable();
    }

    public static bool Holds(SharedPiece piece, Meeting meeting, Edge a)
    {
        double slack = 2 * Coincidence.Distance / a.Length;
        bool closed = a is ArcEdge { IsFullCircle: true };
        return (meeting.Ta >= piece.TaFrom - slack && meeting.Ta <= piece.TaTo + slack)
            || (closed && piece.TaFrom <= slack && meeting.Ta >= 1 - slack)
            || (closed && piece.TaTo >= 1 - slack && meeting.Ta <= slack);
    }

    private static bool RunsAlong(Edge a, Edge b, double from, double to)
    {
        for (int quarter = 1; quarter <= 3; quarter++)
        {
            if (!EdgeProjection.IsOn(b, a.PointAt(from + ((to - from) * quarter / 4))))
                return false;
        }

        return true;
    }

    // Counted from the middle, where no seam of b can confuse start and end.
    private static SharedPiece Piece(Edge a, Edge b, double from, double to)
    {
        double middle = (from + to) / 2;
        double other = EdgeProjection.Nearest(b, a.PointAt(middle)).T;
        double half = (to - from) / 2 * a.Length / b.Length;
        if (a.TangentAt(middle).Dot(b.TangentAt(other)) < 0)
            half = -half;
        return new SharedPiece(from, to, other - half, other + half);
    }
}
