using CsCheck;
using LeverDraw.Geometry;
using LeverDraw.Tests.Support;
using NetTopologySuite.Operation.Buffer;
using Nts = NetTopologySuite.Geometries;

namespace LeverDraw.Tests.Geometry;

/// <summary>The kernel against an unrelated one for polygons, on copies flattened to <see cref="Error"/>.</summary>
public class NetTopologySuiteTests
{
    /// <summary>Chord error of the flattened copies, millimetres.</summary>
    private const double Error = 1e-4;

    // Chords cut off at most error × length of area.
    [Fact]
    public void Area_And_Centroid_Agree() => ContourGen.Any.Sample(
        c =>
        {
            Nts.Polygon flat = FlatCopy.Of(c, Error);
            Assert.Equal(flat.Area, ContourMeasure.Area(c), Error * ContourMeasure.Length(c));
            Point2D centre = ContourMeasure.Centroid(c);
            Assert.True(centre.DistanceTo(new Point2D(flat.Centroid.X, flat.Centroid.Y)) < 10 * Error);
        },
        iter: 200);

    [Fact]
    public void Contains_Agrees_AwayFromTheEdge() => Gen.Select(ContourGen.Any, Gen.Double[-0.1, 1.1], Gen.Double[-0.1, 1.1]).Sample(
        (c, x, y) =>
        {
            Point2D p = new(c.Box.MinX + (x * c.Box.Width), c.Box.MinY + (y * c.Box.Height));
            if (ContourQueries.NearestPoint(c, p).Distance > 2 * Error)
                Assert.Equal(FlatCopy.Of(c, Error).Contains(new Nts.Point(p.X, p.Y)), ContourQueries.Contains(c, p) == PointPlace.Inside);
        },
        iter: 1000);

    [Fact]
    public void NearestPoint_Agrees() => Gen.Select(ContourGen.Any, Gen.Double[-60, 60], Gen.Double[-60, 60]).Sample(
        (c, x, y) => Assert.Equal(
            FlatCopy.Of(c, Error).ExteriorRing.Distance(new Nts.Point(x, y)),
            ContourQueries.NearestPoint(c, new Point2D(x, y)).Distance,
            2 * Error),
        iter: 500);

    // A chord of sagitta e on radius R spans an angle w with Rw²/8 = e. At such a shallow corner their buffer drops one of the two parallels' ends, so that the next parallel,
    // of length L, starts d·w aside: a sliver of dw²L/4 = 2deL/R is lost there. For chords that is within 2e along the arc; where arcs meet lines L is the line's length, at both ends. A true corner as shallow as 1/20 loses as much.
    // True corners get chords of w = π/400. They would also smooth their input by a hundredth of the distance, so that is turned down.
    [Fact]
    public void Offset_Agrees_WithBuffer() => Gen.Select(ContourGen.Any, Gen.Double[-8, 8]).Sample(
        (c, d) =>
        {
            if (Math.Abs(d) < 0.01 || ContourOffset.By(c, d * 1.001).Length != ContourOffset.By(c, d * 0.999).Length)
                return; // Nothing to move, or just at the distance where the outline splits or vanishes.
            const double Fine = 1e-6;
            Nts.Geometry buffer = FlatCopy.Of(c, Fine).Buffer(d, new BufferParameters(200) { SimplifyFactor = 1e-6 });
            System.Collections.Immutable.ImmutableArray<Contour> ours = ContourOffset.By(c, d);
            double longest = c.Edges.Max(e => e.Length);
            double bound = 1e-3 + (Math.PI * d * d * 2e-5);
            for (int i = 0; i < c.Edges.Length; i++)
            {
                double sine = c.Edges[i].TangentAt(1).Cross(c.Edges[(i + 1) % c.Edges.Length].TangentAt(0));
                if (Math.Abs(sine) < 0.06)
                    bound += Math.Abs(d) * sine * sine * longest / 2;
            }

            foreach (ArcEdge arc in c.Edges.OfType<ArcEdge>())
                bound += 3 * Fine * Math.Abs(arc.Sweep) * (arc.Radius + Math.Abs(d)) + (4 * Math.Abs(d) * Fine * longest / arc.Radius);
            Assert.Equal(buffer.Area, ours.Sum(ContourMeasure.Area), bound);
            Assert.Equal(buffer.IsEmpty ? 0 : buffer.NumGeometries, ours.Count(o => ContourMeasure.Area(o) > 0));
        },
        iter: 100);

    [Fact]
    public void Chords_Agree_WithIntersection() => Gen.Select(ContourGen.Any, Gen.Double[0.02, 0.98]).Sample(
        (c, h) =>
        {
            double y = c.Box.MinY + (h * c.Box.Height);
            Nts.LineString line = new([new(c.Box.MinX - 1, y), new(c.Box.MaxX + 1, y)]);
            double theirs = FlatCopy.Of(c, 1e-6).Intersection(line).Length;
            // A line nearly tangent to an arc of radius R turns an error e of height into √(2Re): 20 mm and 1e-6 give 6e-3, at each of two ends, for a few arcs.
            Assert.Equal(theirs, ContourChords.HorizontalAt(c, y).Sum(i => i.Length), 0.03);
        },
        iter: 300);

    [Fact]
    public void ClipByLine_Agrees_WithHalfPlane() => Gen.Select(ContourGen.Any, Gen.Double[0.1, 0.9], Gen.Double[0.1, 0.9], Gen.Double[-4, 4]).Sample(
        (c, x, y, angle) =>
        {
            Point2D on = new(c.Box.MinX + (x * c.Box.Width), c.Box.MinY + (y * c.Box.Height));
            Vector2D u = Vector2D.FromAngle(angle) * 200;
            Point2D[] corners = [on - u, on + u, on + u + u.Left, on - u + u.Left, on - u];
            Nts.Polygon half = new(new Nts.LinearRing([.. corners.Select(p => new Nts.Coordinate(p.X, p.Y))]));
            System.Collections.Immutable.ImmutableArray<Contour> ours = ContourClip.ByLine(c, on, u);
            Assert.Equal(FlatCopy.Of(c, Error).Intersection(half).Area, ours.Sum(ContourMeasure.Area), Error * ContourMeasure.Length(c));
            Assert.All(ours, part => Assert.Empty(ContourSelfCheck.Find(part)));
        },
        iter: 500);

    [Fact]
    public void Intersections_Agree_InNumber() => Gen.Select(ContourGen.Any, ContourGen.Any).Sample(
        (a, b) =>
        {
            foreach (Edge p in a.Edges)
            {
                foreach (Edge q in b.Edges)
                {
                    IntersectionResult ours = EdgeIntersection.Between(p, q);
                    // Edges that run along each other share no single points to be counted.
                    bool clear = ours is not Overlap && ours.Meetings.All(m => m.Crosses
                        && Math.Abs(p.TangentAt(m.Ta).Cross(q.TangentAt(m.Tb))) > 0.1
                        && Math.Min(m.Ta, 1 - m.Ta) * p.Length > 0.01 && Math.Min(m.Tb, 1 - m.Tb) * q.Length > 0.01)
                        // An end that just misses the other edge may reach its chords.
                        && new[] { p.Start, p.End }.All(end => EdgeProjection.Nearest(q, end).Distance > 10 * Error)
                        && new[] { q.Start, q.End }.All(end => EdgeProjection.Nearest(p, end).Distance > 10 * Error);
                    if (clear && ours is not NoIntersection)
                        Assert.Equal(ours.Meetings.Length, FlatCopy.Of(p, Error).Intersection(FlatCopy.Of(q, Error)).NumPoints);
                    else if (ours is NoIntersection)
                        Assert.True(NearlyMiss(p, q) || !FlatCopy.Of(p, Error).Intersects(FlatCopy.Of(q, Error)));
                }
            }
        },
        iter: 100);

    private static bool NearlyMiss(Edge p, Edge q) =>
        Flattening.Of(p, Error).Any(x => EdgeProjection.Nearest(q, x).Distance < 0.3);
}
