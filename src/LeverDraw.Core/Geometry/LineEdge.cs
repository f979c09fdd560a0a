namespace LeverDraw.Geometry;

/// <summary>A straight piece.</summary>
public sealed record LineEdge(Point2D From, Point2D To) : Edge
{
    public override Point2D Start => From;

    public override Point2D End => To;

    public override double Length => From.DistanceTo(To);

    public override Box2D Box => Box2D.Empty.Including(From).Including(To);

    public override Point2D PointAt(double t) => Point2D.Lerp(From, To, t);

    public override Vector2D TangentAt(double t) => (To - From).Unit();

    public override LineEdge Reversed() => new(To, From);

    public override LineEdge Transformed(Transform2D transform) => new(transform.Apply(From), transform.Apply(To));

    public override LineEdge Trimmed(double from, double to) => new(PointAt(from), PointAt(to));
}
