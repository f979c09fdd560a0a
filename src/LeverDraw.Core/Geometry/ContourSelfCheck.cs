using System.Collections.Immutable;

namespace LeverDraw.Geometry;

/// <summary>Two edges of one contour that meet where they shouldn't.</summary>
/// <param name="EdgeA">The lower edge number.</param>
/// <param name="Where">Every place the two meet, a sound joint between neighbours left out.</param>
public sealed record SelfMeeting(int EdgeA, int EdgeB, IntersectionResult Where);

/// <summary>Tells whether an outline crosses or touches itself.</summary>
public static class ContourSelfCheck
{
    /// <summary>Crossings, touches and overlaps of edges, other than neighbours at their joint. Empty for a sound outline.</summary>
    public static ImmutableArray<SelfMeeting> Find(Contour contour)
    {
        ImmutableArray<SelfMeeting>.Builder found = ImmutableArray.CreateBuilder<SelfMeeting>();
        ImmutableArray<Edge> edges = contour.Edges;
        Box2D[] boxes = [.. edges.Select(e => e.Box.Inflated(Coincidence.Distance))];
        for (int i = 0; i < edges.Length; i++)
        {
            for (int j = i + 1; j < edges.Length; j++)
            {
                if (!boxes[i].Overlaps(boxes[j]))
                    continue;
                IntersectionResult where = EdgeIntersection.Between(edges[i], edges[j]);
                bool follows = j == i + 1, precedes = (j + 1) % edges.Length == i;
                if (where is not Overlap && (follows || precedes))
                {
                    where = IntersectionResult.Of([.. where.Meetings.Where(m =>
                        !(follows && IsJoint(m, edges[i], 1, edges[j], 0)) && !(precedes && IsJoint(m, edges[i], 0, edges[j], 1)))]);
                }

                if (where is not NoIntersection)
                    found.Add(new SelfMeeting(i, j, where));
            }
        }

        return found.DrainToImmutable();
    }

    // A contour's joints may gape by ten times the threshold, so a shallow crossing beside one is still the joint.
    private static bool IsJoint(Meeting meeting, Edge a, double endA, Edge b, double endB)
    {
        const double Reach = 20 * Coincidence.Distance;
        return Math.Abs(meeting.Ta - endA) * a.Length <= Reach && Math.Abs(meeting.Tb - endB) * b.Length <= Reach;
    }
}
