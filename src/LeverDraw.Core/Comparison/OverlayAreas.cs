using System.Collections.Immutable;
using LeverDraw.Geometry;

namespace LeverDraw.Comparison;

/// <summary>One connected piece of a region, flattened. The outer loop runs counter-clockwise, holes clockwise.</summary>
/// <param name="Area">mm², holes taken off.</param>
/// <param name="Perimeter">mm, all loops.</param>
public sealed record RegionPiece(Contour Outer, ImmutableArray<Contour> Holes, double Area, double Perimeter)
{
    /// <summary>About how wide a long thin piece is, millimetres.</summary>
    public double MeanWidth => 2 * Area / Perimeter;

    public ImmutableArray<Contour> Loops => [Outer, .. Holes];
}

/// <summary>A region by its pieces.</summary>
/// <param name="Area">mm², within the <see cref="OverlayAreas.Error"/>.</param>
public sealed record OverlayRegion(double Area, ImmutableArray<RegionPiece> Pieces);

/// <summary>Two silhouettes laid over each other.</summary>
/// <param name="Error">No area here differs from the exact one by more, mm²: it is all that lies between the two silhouettes and their flattened copies.</param>
public sealed record OverlayAreas(OverlayRegion Both, OverlayRegion OnlyA, OverlayRegion OnlyB, double Error);
