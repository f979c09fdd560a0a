namespace LeverDraw.Drafting.Dimensions;

/// <summary>How a size's own tolerance is lettered (the three forms of ISO 129-1, from memory).</summary>
public enum ToleranceForm
{
    /// <summary>As the profile states it: a zone by its code with the limits in brackets, <c>3.06 H8 (3.060 / 3.074)</c>; deviations one above the other, or ± when they are equal.</summary>
    Stated,

    /// <summary>Deviations one above the other, after the zone's code where there is one.</summary>
    Deviations,

    /// <summary>The two limits of size one above the other, no nominal size: for who only checks.</summary>
    Limits,
}
