using LeverDraw.Geometry;
using NetTopologySuite.Geometries;

namespace LeverDraw.Tests.Support;

/// <summary>Finely flattened copies for NetTopologySuite, an independent kernel for polygons.</summary>
public static class FlatCopy
{
    public static Polygon Of(Contour contour, double maxError)
    {
        List<Coordinate> ring = [.. Flattening.Of(contour, maxError).Select(p => new Coordinate(p.X, p.Y))];
        ring.Add(ring[0].Copy());
        return new Polygon(new LinearRing([.. ring]));
    }

    public static LineString Of(Edge edge, double maxError) =>
        new([.. Flattening.Of(edge, maxError).Select(p => new Coordinate(p.X, p.Y))]);
}
