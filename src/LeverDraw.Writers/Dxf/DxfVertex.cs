using System.Collections.Immutable;
using LeverDraw.Geometry;

namespace LeverDraw.Writers.Dxf;

/// <summary>A polyline's vertex and the bulge of the piece that follows it: tan(sweep/4), positive counter-clockwise.</summary>
internal readonly record struct DxfVertex(Point2D Point, double Bulge)
{
    /// <summary>Below this a piece is straight for every reader.</summary>
    public const double SmallestBulge = 1e-9;

    /// <summary>A closed outline's vertices, begun so that the closing piece is straight if any piece is: some readers lose the last bulge.</summary>
    public static ImmutableArray<DxfVertex> Of(Contour contour)
    {
        int straight = contour.Edges.IndexOf(contour.Edges.FirstOrDefault(e => e is LineEdge)!);
        Contour begun = straight < 0 ? contour : contour.StartingAt((straight + 1) % contour.Edges.Length);
        var vertices = ImmutableArray.CreateBuilder<DxfVertex>();
        foreach (Edge edge in begun.Edges)
        {
            if (edge is ArcEdge arc)
                AddArc(vertices, arc);
            else
                vertices.Add(new DxfVertex(edge.Start, 0));
        }

        return vertices.ToImmutable();
    }

    /// <summary>An arc of more than half a turn is cut in equal pieces: readers get bulges above 1 wrong.</summary>
    private static void AddArc(ImmutableArray<DxfVertex>.Builder to, ArcEdge arc)
    {
        int pieces = Math.Max(1, (int)Math.Ceiling((Math.Abs(arc.Sweep) / Math.PI) - Coincidence.Angle));
        double bulge = Math.Tan(arc.Sweep / pieces / 4);
        for (int i = 0; i < pieces; i++)
            to.Add(new DxfVertex(arc.PointAt((double)i / pieces), bulge));
    }
}
