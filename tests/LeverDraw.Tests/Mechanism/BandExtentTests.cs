using LeverDraw.Geometry;
using LeverDraw.Mechanism;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Tests.Support;
using NetTopologySuite.Geometries;

namespace LeverDraw.Tests.Mechanism;

/// <summary>The farthest point of an outline in a band, against polygons clipped by NetTopologySuite.</summary>
public sealed class BandExtentTests
{
    public static TheoryData<string> Names => ["early", "late", "rare"];

    [Theory]
    [MemberData(nameof(Names))]
    public void Of_AnyDirectionAndBand_IsTheClippedPolygons(string name)
    {
        Contour outline = LeverPart.Build(DemoLevers.Named(name)).Value!.SideProfile;
        Edge[] edges = [.. outline.Edges];
        Polygon polygon = FlatCopy.Of(outline, 1e-5);
        for (int i = 0; i < 24; i++)
        {
            double angle = i * Math.PI / 12.3;
            Vector2D along = Vector2D.FromAngle(angle), level = along.Left;
            foreach (double from in (double[])[-15, -4, 0.5, 7])
            {
                Polygon band = new(new LinearRing([.. new[] { (-99.0, from), (99.0, from), (99.0, from + 2.5), (-99.0, from + 2.5), (-99.0, from) }
                    .Select(c => (along * c.Item1) + (level * c.Item2)).Select(v => new Coordinate(v.X, v.Y))]));
                Coordinate[] within = polygon.Intersection(band).Coordinates;
                BandExtent? found = BandExtent.Of(edges, along, from, from + 2.5);
                Assert.Equal(within.Length > 0, found is not null);
                if (found is { } extent)
                    Assert.Equal(within.Max(c => (c.X * along.X) + (c.Y * along.Y)), extent.Reach, 2e-4);
            }
        }
    }

    // By hand: a unit square, seen along x: its right side; seen along the diagonal in a band that misses the corner: where the band's edge cuts the side.
    [Fact]
    public void Of_Square_IsByHand()
    {
        Edge[] square = [new LineEdge(new(0, 0), new(1, 0)), new LineEdge(new(1, 0), new(1, 1)), new LineEdge(new(1, 1), new(0, 1)), new LineEdge(new(0, 1), new(0, 0))];
        Assert.Equal(1, BandExtent.Of(square, new Vector2D(1, 0), 0.2, 0.8)!.Value.Reach, 12);
        Vector2D diagonal = Vector2D.FromAngle(Math.PI / 4);
        // In the band from 0.3 to 0.5 left of the diagonal the farthest is on the top side where −x + 1 = 0.3·√2: x + 1 = 2 − 0.3·√2.
        BandExtent cut = BandExtent.Of(square, diagonal, 0.3, 0.5)!.Value;
        Assert.Equal((2 - (0.3 * Math.Sqrt(2))) / Math.Sqrt(2), cut.Reach, 12);
        Assert.Equal(1, cut.Normal.Y, 12);
        Assert.Null(BandExtent.Of(square, new Vector2D(1, 0), 2, 3));
    }
}
