namespace LeverDraw.Geometry;

/// <summary>One piece of an outline, with a direction: a <see cref="LineEdge"/> or an <see cref="ArcEdge"/> and nothing else. Millimetres and radians.</summary>
public abstract record Edge
{
    private protected Edge()
    {
    }

    public abstract Point2D Start { get; }

    public abstract Point2D End { get; }

    public abstract double Length { get; }

    /// <summary>The exact box, arcs' outermost points included.</summary>
    public abstract Box2D Box { get; }

    /// <summary>The point at <paramref name="t"/>, 0 at the start and 1 at the end, in proportion to length.</summary>
    public abstract Point2D PointAt(double t);

    /// <summary>The direction of travel at <paramref name="t"/>, of length one.</summary>
    public abstract Vector2D TangentAt(double t);

    public abstract Edge Reversed();

    public abstract Edge Transformed(Transform2D transform);

    /// <summary>The piece between two parameters, <paramref name="from"/> &lt; <paramref name="to"/>; values outside 0…1 extend it.</summary>
    public abstract Edge Trimmed(double from, double to);
}
