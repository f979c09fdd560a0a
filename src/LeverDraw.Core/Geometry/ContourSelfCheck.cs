namespace LeverDraw.Geometry;

/// <summary>Tells whether an outline crosses or touches itself.</summary>
public static class ContourSelfCheck
{
}
