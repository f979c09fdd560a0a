using System.Collections.Immutable;

namespace LeverDraw.Geometry;

/// <summary>Joins loose directed edges end to start into closed contours.</summary>
internal static class PieceChains
{
    /// <summary>Ends this near belong together: some dozens of rounding steps, and cuts up to <see cref="Coincidence.Distance"/> off either edge.</summary>
    public const double Reach = 20 * Coincidence.Distance;

    /// <summary>Where several edges leave a point the one most to the left is taken, so areas on the left that touch in a point become separate contours.</summary>
    /// <exception cref="InvalidOperationException">An edge has no follower: the caller's pieces don't close.</exception>
    public static ImmutableArray<Contour> Close(List<Edge> pieces)
    {
        ImmutableArray<Contour>.Builder found = ImmutableArray.CreateBuilder<Contour>();
        bool[] used = new bool[pieces.Count];
        List<Edge> chain = [];
        for (int first = 0; first < pieces.Count; first++)
        {
            if (used[first])
                continue;
            chain.Clear();
            int at = first;
            do
            {
                used[at] = true;
                chain.Add(pieces[at]);
                if (pieces[at].End.DistanceTo(pieces[first].Start) <= Reach && !LeavesFurtherLeft(pieces, used, at, first))
                    break;
                at = Next(pieces, used, at);
                if (at < 0)
                    throw new InvalidOperationException(FormattableString.Invariant($"The pieces of an outline don't close at ({chain[^1].End.X}, {chain[^1].End.Y})."));
            }
            while (true);
            Healed(chain);
            if (chain.Count > 0)
                found.Add(Contour.Of(chain));
        }

        return found.DrainToImmutable();
    }

    /// <summary>Takes away short pieces that nothing follows or nothing leads to, again and again: the tails beyond a corner so shallow that the two sides can't be told apart by distance.</summary>
    /// <param name="longest">Longer ones stay, so that <see cref="Close"/> complains of them.</param>
    public static void DropDeadEnds(List<Edge> pieces, double longest)
    {
        while (pieces.RemoveAll(p => p.Length <= longest
            && (!pieces.Exists(q => q.Start.DistanceTo(p.End) <= Reach) || !pieces.Exists(q => q.End.DistanceTo(p.Start) <= Reach))) > 0)
        {
        }
    }

    private static int Next(List<Edge> pieces, bool[] used, int at)
    {
        int best = -1;
        for (int i = 0; i < pieces.Count; i++)
        {
            if (!used[i] && pieces[at].End.DistanceTo(pieces[i].Start) <= Reach && (best < 0 || MoreLeft(pieces[at], pieces[i], pieces[best])))
                best = i;
        }

        return best;
    }

    private static bool LeavesFurtherLeft(List<Edge> pieces, bool[] used, int at, int first)
    {
        int other = Next(pieces, used, at);
        return other >= 0 && other != at && MoreLeft(pieces[at], pieces[other], pieces[first]);
    }

    private static bool MoreLeft(Edge from, Edge a, Edge b)
    {
        Vector2D along = from.TangentAt(1);
        double turnA = JointTurn.Between(along, a.TangentAt(0)), turnB = JointTurn.Between(along, b.TangentAt(0));
        // Leaving in one direction, the one that bends more to the left.
        return Math.Abs(turnA - turnB) > Coincidence.Angle ? turnA > turnB : JointTurn.Curvature(a) > JointTurn.Curvature(b);
    }

    // Gaps a contour wouldn't accept are closed by moving a line's end, or between two arcs by a line of that tiny length.
    private static void Healed(List<Edge> chain)
    {
        chain.RemoveAll(e => e.Length <= Coincidence.Distance);
        for (int i = 0; i < chain.Count; i++)
        {
            int j = (i + 1) % chain.Count;
            if (chain[i].End.DistanceTo(chain[j].Start) <= Coincidence.Distance)
                continue;
            if (chain[i] is LineEdge line)
                chain[i] = new LineEdge(line.From, chain[j].Start);
            else if (chain[j] is LineEdge next)
                chain[j] = new LineEdge(chain[i].End, next.To);
            else
                chain.Insert(i + 1, new LineEdge(chain[i].End, chain[j].Start));
        }

        chain.RemoveAll(e => e.Length <= Coincidence.Distance);
    }
}
