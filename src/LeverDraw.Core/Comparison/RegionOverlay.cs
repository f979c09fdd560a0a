using System.Collections.Immutable;
using LeverDraw.Geometry;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;

namespace LeverDraw.Comparison;

/// <summary>What two silhouettes share and what only one of them has, by NetTopologySuite on flattened copies.</summary>
public static class RegionOverlay
{
    /// <summary>Largest distance between a chord and its arc, millimetres: a hundredth of any casting tolerance.</summary>
    public const double ChordError = 0.001;

    /// <summary>Points nearer to each other are one; far below the chords' error.</summary>
    private const double SamePoint = 1e-7;

    public static OverlayAreas Of(Silhouette a, Silhouette b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        NetTopologySuite.Geometries.Geometry flatA = Flat(a), flatB = Flat(b);
        return new OverlayAreas(
            Region(OverlayNGRobust.Overlay(flatA, flatB, SpatialFunction.Intersection)),
            Region(OverlayNGRobust.Overlay(flatA, flatB, SpatialFunction.Difference)),
            Region(OverlayNGRobust.Overlay(flatB, flatA, SpatialFunction.Difference)),
            a.FlatteningArea(ChordError) + b.FlatteningArea(ChordError));
    }

    private static Polygon Flat(Silhouette silhouette) => new(Ring(silhouette.Outer), [.. silhouette.Holes.Select(Ring)]);

    private static LinearRing Ring(Contour contour)
    {
        List<Coordinate> points = [.. Flattening.Of(contour, ChordError).Select(p => new Coordinate(p.X, p.Y))];
        points.Add(points[0].Copy());
        return new LinearRing([.. points]);
    }

    private static OverlayRegion Region(NetTopologySuite.Geometries.Geometry found)
    {
        ImmutableArray<RegionPiece>.Builder pieces = ImmutableArray.CreateBuilder<RegionPiece>();
        for (int i = 0; i < found.NumGeometries; i++)
        {
            // Where two outlines only touch there are points and lines as well, which have no area.
            if (found.GetGeometryN(i) is Polygon { IsEmpty: false } polygon && Loop(polygon.ExteriorRing, counterClockwise: true) is { } outer)
                pieces.Add(new RegionPiece(outer, [.. polygon.InteriorRings.Select(r => Loop(r, counterClockwise: false)).OfType<Contour>()], polygon.Area, polygon.Length));
        }

        return new OverlayRegion(found.Area, pieces.DrainToImmutable());
    }

    /// <summary>The ring as a contour, or null when nothing is left of it.</summary>
    private static Contour? Loop(LineString ring, bool counterClockwise)
    {
        List<Point2D> points = [];
        foreach (Coordinate c in ring.Coordinates)
        {
            Point2D p = new(c.X, c.Y);
            if (points.Count == 0 || points[^1].DistanceTo(p) > SamePoint)
                points.Add(p);
        }

        if (points.Count > 1 && points[0].DistanceTo(points[^1]) <= SamePoint)
            points.RemoveAt(points.Count - 1);
        if (points.Count < 3)
            return null;
        Contour loop = Contour.Of(points.Select((p, i) => new LineEdge(p, points[(i + 1) % points.Count])));
        return ContourMeasure.Area(loop) > 0 == counterClockwise ? loop : loop.Reversed();
    }
}
