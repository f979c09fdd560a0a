using LeverDraw.Geometry;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>Coordinates along the tongue: s from the pivot toward the nose, t square to it toward the flank that faces the pads.</summary>
/// <param name="Along">Unit vector of s in (n, z).</param>
/// <param name="Across">Unit vector of t.</param>
public readonly record struct TongueFrame(Vector2D Along, Vector2D Across)
{
    internal static TongueFrame Of(double sweep)
    {
        (double sin, double cos) = Math.SinCos(sweep);
        return new TongueFrame(new Vector2D(sin, cos), new Vector2D(cos, -sin));
    }

    public Point2D At(double s, double t) => Point2D.Origin + (Along * s) + (Across * t);
}
