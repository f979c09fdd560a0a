namespace LeverDraw.Geometry;

/// <summary>The kernel's numeric thresholds: one for length, one for angle. Never applied to squares.</summary>
/// <remarks>Parts here are 1 to 100 mm, so a double carries about 1e-14 mm; a nanometre leaves room for some dozens of operations and is far below any tolerance.</remarks>
public static class Coincidence
{
    /// <summary>Two points nearer than this are the same point, millimetres.</summary>
    public const double Distance = 1e-9;

    /// <summary>Two directions nearer than this are the same direction, radians.</summary>
    public const double Angle = 1e-9;

    public static bool Same(double a, double b) => Math.Abs(a - b) <= Distance;

    public static bool Same(Point2D a, Point2D b) => Same(a.X, b.X) && Same(a.Y, b.Y);
}
