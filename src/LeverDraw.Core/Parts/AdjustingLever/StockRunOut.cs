using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>Where the stock on a tongue's flank ends: toward the head the flank is not filed, so the stock runs out in a straight slope that touches the fillet at the head.</summary>
/// <param name="OnFillet">Where the slope touches the fillet.</param>
/// <param name="OnFlank">Where the slope reaches the full stock.</param>
internal readonly record struct StockRunOut(Point2D OnFillet, Point2D OnFlank)
{
    /// <summary>The filed length of a flank is the tongue's thickness, or this share of the flank if that is less (own rule: the nose works in a slot about as deep as the tongue is thick).</summary>
    private const double MostOfFlank = 0.6;

    /// <param name="flank">As finished, between fillet and nose, travelling with the metal on its left.</param>
    /// <param name="towardNose">True when it travels to the nose.</param>
    /// <param name="fillet">At the head.</param>
    public static StockRunOut Of(Edge flank, bool towardNose, Blend fillet, double thickness, double stock)
    {
        double filed = Math.Min(thickness, MostOfFlank * flank.Length) / flank.Length;
        double t = towardNose ? 1 - filed : filed;
        Point2D full = flank.PointAt(t) - (flank.TangentAt(t).Left * stock);
        return new StockRunOut(Touch(full, fillet, towardNose), full);
    }

    // The fillet lies to the right of whoever walks along the outline.
    private static Point2D Touch(Point2D from, Blend fillet, bool leaving)
    {
        Vector2D away = from - fillet.Centre;
        double half = Math.Acos(Math.Min(1, fillet.Radius / away.Length));
        return fillet.Centre + (Vector2D.FromAngle(away.Angle + (leaving ? half : -half)) * fillet.Radius);
    }
}
