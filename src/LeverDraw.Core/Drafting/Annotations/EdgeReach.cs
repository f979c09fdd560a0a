using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>How far along the left of a dimension's direction its two measured points lie, at one edge of the part; paper millimetres.</summary>
internal readonly record struct EdgeReach(double P, double Q)
{
    public double Least => Math.Min(P, Q);

    public double Most => Math.Max(P, Q);

    /// <param name="u">The dimension's direction, length one.</param>
    public static EdgeReach Of(Point2D p, Point2D q, Vector2D u) => new(u.Left.Dot(p - Point2D.Origin), u.Left.Dot(q - Point2D.Origin));

    /// <summary>At the part's other edge; null where only one is known.</summary>
    public static EdgeReach? AtOtherEdge(LinearDimension dimension, PlacingContext context, Vector2D u)
    {
        if (dimension.AtOtherEdge is not { } other)
            return null;
        (Point2D a, Point2D b) = (context.ToBlock.Apply(other.First), context.ToBlock.Apply(other.Second));
        return u.Dot(b - a) < 0 ? Of(b, a, u) : Of(a, b, u);
    }

    /// <summary>Length of both extension lines to a dimension line.</summary>
    public double To(double level) => Math.Abs(level - P) + Math.Abs(level - Q);
}
