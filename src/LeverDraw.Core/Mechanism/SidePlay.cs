using LeverDraw.Units;

namespace LeverDraw.Mechanism;

/// <summary>How far the fork's tips swing sideways while the lever cocks on its pin: 2·h_a·c/w, all in all (own derivation; small angles).</summary>
public static class SidePlay
{
    /// <param name="clearance">Hole over pin, on diameter.</param>
    /// <param name="hole">Length of the hole.</param>
    public static Length Of(Length nutArm, Length clearance, Length hole) => nutArm * (2 * (clearance / hole));

    public static Length Of(Linkage linkage)
    {
        ArgumentNullException.ThrowIfNull(linkage);
        return Of(linkage.NutArm, Length.Max(Length.Zero, linkage.Typical.Pivot), linkage.Assembly.Lever.Hole.HalfLength * 2);
    }
}
