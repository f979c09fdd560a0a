using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>Rules of thumb for the shape of castings.</summary>
public static class CastingDesignRules
{
    public static StandardSource Source { get; } = new(
        "Shape of castings", "Design guides", "", "", Certainty.Mixed,
        "fillet rules and least fillet: one guide each; outside and inside radii: one iron foundry; small-hole limit and core prints from memory");

    /// <summary>Inside fillet between walls: half the sum of the two thicknesses, so the thickness when equal (one aluminium guide).</summary>
    public static Length Fillet(Length wall, Length otherWall) => (wall + otherWall) / 2;

    /// <summary>No inside fillet below this (one weak guide).</summary>
    public static Length LeastFillet { get; } = Length.FromMillimetres(3);

    /// <summary>Outside radius of iron castings under 200 mm, printed sand (one foundry).</summary>
    public static Length SmallIronOutsideRadius { get; } = Length.FromMillimetres(3);

    /// <summary>Inside radius of iron castings under 200 mm: preferred; 5 mm if need be (one foundry).</summary>
    public static Length SmallIronInsideRadius { get; } = Length.FromMillimetres(8);

    public static Length SmallIronInsideRadiusFallback { get; } = Length.FromMillimetres(5);

    /// <summary>Holes below this are cast solid and drilled (from memory, 1/4 in; one iron foundry says 30 mm).</summary>
    public static Length LeastCastHole { get; } = Length.FromMillimetres(6);

    /// <summary>Adjacent walls differ by at most this part of the thinner one (one weak guide: 20 to 30 %).</summary>
    public const double MostSectionStep = 0.3;

    /// <summary>Otherwise the change is a slope of 1 in this (one weak guide).</summary>
    public const double SectionSlope = 4;

    /// <summary>Length of a horizontal core print over core diameter, from (memory).</summary>
    public const double CorePrintLengthLeast = 1.0;

    /// <summary>To (memory).</summary>
    public const double CorePrintLengthMost = 1.5;
}
