using LeverDraw.Geometry;

namespace LeverDraw.Mechanism;

/// <summary>The plane's directions and levels as the lever meets them, in (n, z) millimetres about the pin's axis; n along the stud.</summary>
/// <param name="Angle">Stud to bed, radians.</param>
/// <param name="StudDistance">Pin's axis to stud's axis.</param>
/// <param name="FlangeReach">How far from the level of the stud's axis the flanges reach beside the fork's inner sides; null when not known.</param>
/// <param name="IronTop">Height over the pin's axis, square to the bed, at which the cap iron begins.</param>
/// <param name="SlotBottom">Where the slot's faces begin, over the broken edge; <paramref name="SlotTop"/> where they end.</param>
internal sealed record SlotFrame(double Angle, double StudDistance, double? FlangeReach, double IronTop, double SlotBottom, double SlotTop)
{
    public static Vector2D Stud => new(1, 0);

    /// <summary>Along the bed, toward the iron's edge: the way the iron goes to cut deeper.</summary>
    public Vector2D Bed { get; } = new(Math.Cos(Angle), -Math.Sin(Angle));

    /// <summary>Square to the bed, from pin to iron.</summary>
    public Vector2D Up { get; } = new(Math.Sin(Angle), Math.Cos(Angle));
}
