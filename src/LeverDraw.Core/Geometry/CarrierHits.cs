namespace LeverDraw.Geometry;

/// <summary>What two carriers have in common: nothing, all, one tangent point, or one or two crossings.</summary>
internal readonly record struct CarrierHits(int Count, bool Tangent, bool Same, Point2D First, Point2D Second)
{
    public static CarrierHits None => default;

    public static CarrierHits Everything => new(0, false, true, default, default);

    public static CarrierHits TangentAt(Point2D p) => new(1, true, false, p, p);

    public static CarrierHits CrossAt(Point2D p) => new(1, false, false, p, p);

    public static CarrierHits CrossAt(Point2D p, Point2D q) => new(2, false, false, p, q);

    public Point2D this[int index] => index == 0 ? First : Second;
}
