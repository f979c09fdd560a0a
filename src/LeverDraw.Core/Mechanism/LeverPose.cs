using LeverDraw.Geometry;

namespace LeverDraw.Mechanism;

/// <summary>How the lever stands: turned (radians, counter-clockwise, from arms square to the stud), its hole's middle aside from the pin's.</summary>
internal readonly record struct LeverPose(double Turn, Vector2D Offset)
{
    public Vector2D ToPlane(Vector2D v)
    {
        (double sin, double cos) = Math.SinCos(Turn);
        return new Vector2D((v.X * cos) - (v.Y * sin), (v.X * sin) + (v.Y * cos));
    }

    public Point2D ToPlane(Point2D p) => Point2D.Origin + ToPlane(p - Point2D.Origin) + Offset;

    /// <summary>A direction of the plane as the lever sees it.</summary>
    public Vector2D ToLever(Vector2D v)
    {
        (double sin, double cos) = Math.SinCos(Turn);
        return new Vector2D((v.X * cos) + (v.Y * sin), (v.Y * cos) - (v.X * sin));
    }
}
