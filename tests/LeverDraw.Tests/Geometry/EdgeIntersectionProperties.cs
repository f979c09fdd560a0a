using CsCheck;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Geometry;

public class EdgeIntersectionProperties
{
    private static readonly Gen<Point2D> Points = Gen.Select(Gen.Double[-10, 10], Gen.Double[-10, 10], (x, y) => new Point2D(x, y));

    private static readonly Gen<Edge> Edges = Gen.OneOf(
        Gen.Select(Points, Points, (a, b) => (Edge)new LineEdge(a, b)),
        Gen.Select(Points, Gen.Double[0.5, 12], Gen.Double[-3, 3], Gen.Double[-6.2, 6.2], (c, r, a, s) => (Edge)new ArcEdge(c, r, a, s == 0 ? 1 : s)),
        // On a grid, where touching, tangent and overlapping edges are common.
        Gen.Select(Grid(), Grid(), (a, b) => (Edge)new LineEdge(a, a == b ? a + new Vector2D(1, 0) : b)),
        Gen.Select(Grid(), Gen.Int[1, 3], Gen.Int[0, 3], Gen.Int[1, 4], Gen.Bool, (c, r, a, s, way) => (Edge)new ArcEdge(c, r, a * Math.PI / 2, (way ? s : -s) * Math.PI / 2)));

    [Fact]
    public void Between_Swapped_GivesTheSamePoints() => Gen.Select(Edges, Edges).Sample(
        (a, b) =>
        {
            IntersectionResult there = EdgeIntersection.Between(a, b), back = EdgeIntersection.Between(b, a);
            Assert.Equal(there.GetType(), back.GetType());
            Assert.Equal(there.Meetings.Length, back.Meetings.Length);
            Assert.All(there.Meetings, m => Assert.Contains(back.Meetings, n => n.Point.DistanceTo(m.Point) < 1e-8 && n.Crosses == m.Crosses));
            if (there is Overlap x && back is Overlap y)
                Assert.Equal(x.Pieces.Sum(p => p.TaTo - p.TaFrom) * a.Length, y.Pieces.Sum(p => p.TaTo - p.TaFrom) * b.Length, 1e-7);
        },
        iter: 20000);

    [Fact]
    public void Between_Meetings_LieOnBothAtTheirParameters() => Gen.Select(Edges, Edges).Sample(
        (a, b) => Assert.All(EdgeIntersection.Between(a, b).Meetings, m =>
        {
            Assert.InRange(m.Ta, 0, 1);
            Assert.InRange(m.Tb, 0, 1);
            Assert.True(a.PointAt(m.Ta).DistanceTo(m.Point) < 2.1e-9);
            Assert.True(b.PointAt(m.Tb).DistanceTo(m.Point) < 2.1e-9);
        }),
        iter: 20000);

    [Fact]
    public void Between_SharedPieces_RunTogether() => Gen.Select(Edges, Edges).Sample(
        (a, b) =>
        {
            if (EdgeIntersection.Between(a, b) is not Overlap overlap)
                return;
            Assert.All(overlap.Pieces, p =>
            {
                for (double s = 0.1; s < 1; s += 0.2)
                    Assert.True(a.PointAt(p.TaFrom + (s * (p.TaTo - p.TaFrom))).DistanceTo(b.PointAt(p.TbFrom + (s * (p.TbTo - p.TbFrom)))) < 5e-9);
            });
        },
        iter: 20000);

    private static Gen<Point2D> Grid() => Gen.Select(Gen.Int[-3, 3], Gen.Int[-3, 3], (x, y) => new Point2D(x, y));
}
