using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Comparison;

/// <summary>What stands against the light in a view: an outline less its holes, exact lines and arcs.</summary>
public sealed record Silhouette(Contour Outer, ImmutableArray<Contour> Holes)
{
    /// <summary>mm², exact.</summary>
    public double Area => Math.Abs(ContourMeasure.Area(Outer)) - Holes.Sum(h => Math.Abs(ContourMeasure.Area(h)));

    /// <param name="outlines">A view's; the first is the outer one, the others are holes in it.</param>
    public static Silhouette Of(ImmutableArray<PlotOutline> outlines) => new(outlines[0].Contour, [.. outlines.Skip(1).Select(o => o.Contour)]);

    public Silhouette Moved(Vector2D by)
    {
        Transform2D move = Transform2D.Move(by.X, by.Y);
        return new Silhouette(Outer.Transformed(move), [.. Holes.Select(h => h.Transformed(move))]);
    }

    /// <summary>Area between this and its flattened copy, mm²: all that lies in one of them only.</summary>
    /// <param name="maxError">Of the chords, millimetres.</param>
    public double FlatteningArea(double maxError) => SegmentsOf(Outer, maxError) + Holes.Sum(h => SegmentsOf(h, maxError));

    /// <summary>The circle segments that the chords cut off: r²(w − sin w)/2 each.</summary>
    private static double SegmentsOf(Contour contour, double maxError)
    {
        double sum = 0;
        foreach (ArcEdge arc in contour.Edges.OfType<ArcEdge>())
        {
            int chords = Flattening.Of(arc, maxError).Length - 1;
            double w = Math.Abs(arc.Sweep) / chords;
            sum += chords * arc.Radius * arc.Radius * (w - Math.Sin(w)) / 2;
        }

        return sum;
    }
}
