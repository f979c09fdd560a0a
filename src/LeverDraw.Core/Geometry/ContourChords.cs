using System.Collections.Immutable;

namespace LeverDraw.Geometry;

/// <summary>The stretches of a line inside a contour. For many lines of one direction make a <see cref="ChordScanner"/> once instead.</summary>
public static class ContourChords
{
    /// <summary>Sorted, disjoint; distances in millimetres from <paramref name="through"/> along <paramref name="direction"/> made unit.</summary>
    /// <exception cref="ArgumentException">The direction is the zero vector.</exception>
    public static ImmutableArray<Interval> At(Contour contour, Point2D through, Vector2D direction) =>
        direction.Length == 0
            ? throw new ArgumentException("A line needs a direction.", nameof(direction))
            : ChordScanner.Along(through, direction, contour).At(0);

    /// <summary>Along +x at height <paramref name="y"/>; the ends are values of x.</summary>
    public static ImmutableArray<Interval> HorizontalAt(Contour contour, double y) => ChordScanner.Horizontal(contour).At(y);
}
