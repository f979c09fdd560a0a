using System.Collections.Immutable;

namespace LeverDraw.Standards;

/// <summary>A material. A value no source gave is not a number (<see cref="double.NaN"/>).</summary>
/// <param name="DensityMin">g/cm³, as is <paramref name="DensityMax"/>.</param>
/// <param name="ModulusMin">Young's modulus, GPa, as is <paramref name="ModulusMax"/>.</param>
/// <param name="TensileStrength">Least tensile strength, MPa.</param>
/// <param name="YieldStrength">Least yield or proof strength, MPa.</param>
/// <param name="Elongation">Least elongation at fracture, per cent.</param>
public sealed record Material(
    string Name,
    double DensityMin,
    double DensityMax,
    double ModulusMin,
    double ModulusMax,
    double TensileStrength,
    double YieldStrength,
    double Elongation,
    Certainty Certainty)
{
    public bool HasDensity => !double.IsNaN(DensityMin);

    /// <summary>The middle of the density range, g/cm³; not a number when none is given.</summary>
    public double Density => (DensityMin + DensityMax) / 2;
}

/// <summary>Cast irons, steels and copper alloys, and what they weigh.</summary>
public static class Materials
{
    public static StandardSource Source { get; } = new(
        "Materials: density and strength", "ASTM A48, EN 1561, EN 1563, ASTM B584, EN 1982", "", "", Certainty.Mixed,
        "density ranges: two or three sources; strengths: mostly one data page each; moduli mostly from memory; each row has its own grade");

    /// <summary>Density from, to; modulus from, to; tensile, yield strength; elongation.</summary>
    public static ImmutableArray<Material> All { get; } =
    [
        new("grey iron, generic", 6.6, 7.4, _none, _none, _none, _none, _none, Certainty.Thin),
        new("ASTM A48 class 20", 7.2, 7.2, 66, 97, 138, _none, _none, Certainty.Thin),
        new("ASTM A48 class 25", _none, _none, _none, _none, 172, _none, _none, Certainty.Mixed),
        new("ASTM A48 class 30", _none, _none, _none, _none, 207, _none, _none, Certainty.Mixed),
        new("EN-GJL-150", _none, _none, _none, _none, 150, _none, _none, Certainty.Thin),
        new("EN-GJL-200", _none, _none, 88, 113, 200, _none, _none, Certainty.Mixed),
        new("EN-GJL-250", _none, _none, 103, 118, 250, _none, _none, Certainty.Mixed),
        new("EN-GJS-400-15", 7.1, 7.1, 169, 169, 400, 250, 15, Certainty.Mixed),
        new("EN-GJS-400-18-LT", _none, _none, _none, _none, 400, 240, 18, Certainty.Thin),
        new("malleable iron", 7.2, 7.4, _none, _none, _none, _none, _none, Certainty.Thin),
        new("cast steel", 7.8, 7.8, 200, 210, _none, _none, _none, Certainty.Mixed),
        new("steel, rolled", 7.85, 7.85, 200, 210, _none, _none, _none, Certainty.Mixed),
        new("brass, casting", 8.4, 8.7, _none, _none, _none, _none, _none, Certainty.Solid),
        new("CuZn33Pb2 (CC750S) sand", _none, _none, _none, _none, 180, 70, 12, Certainty.Thin),
        new("CuZn39Pb1Al (CC754S) sand", 8.2, 8.5, _none, _none, 220, 80, 15, Certainty.FromMemory),
        new("CuSn5Zn5Pb5 (CC491K) sand", 8.7, 8.8, _none, _none, 200, 90, 13, Certainty.FromMemory),
        new("C83600 leaded red brass, sand", 8.83, 8.83, 93.1, 93.1, 207, 97, 20, Certainty.Solid),
        new("C86400 leaded yellow brass (high strength)", _none, _none, _none, _none, 414, 138, 15, Certainty.Thin),
        new("C87500 silicon bronze/brass", _none, _none, _none, _none, 414, 165, 16, Certainty.Thin),
        new("C90300 tin bronze", _none, _none, _none, _none, 276, 124, 20, Certainty.Thin),
        new("C90500 tin bronze", _none, _none, _none, _none, 276, 124, 20, Certainty.Thin),
        new("C92200 leaded tin bronze", _none, _none, _none, _none, 234, 110, 24, Certainty.Thin),
        new("C93200 bearing bronze", _none, _none, _none, _none, 207, 97, 15, Certainty.Thin),
        new("C95400 aluminium bronze, continuous cast", 7.45, 7.45, 107, 107, 586, 221, 12, Certainty.Solid),
        new("C95400 aluminium bronze, sand", 7.45, 7.45, 107, 107, 517, 207, 12, Certainty.FromMemory),
        new("aluminium bronze (3-10 % Al)", 7.7, 8.7, _none, _none, _none, _none, _none, Certainty.Solid),
        new("bronze, 8-14 % Sn", 7.4, 8.9, _none, _none, _none, _none, _none, Certainty.Solid),
        new("phosphor bronze", 8.78, 8.92, _none, _none, _none, _none, _none, Certainty.Solid),
        new("copper", 8.93, 8.94, _none, _none, _none, _none, _none, Certainty.Solid),
        new("aluminium", 2.7, 2.75, 69, 70, _none, _none, _none, Certainty.Mixed),
        new("zinc", 7.135, 7.135, _none, _none, _none, _none, _none, Certainty.Thin),
    ];

    private const double _none = double.NaN;

    public static Answer<Material> Named(string name) =>
        Answer<Material>.First(
            All,
            material => string.Equals(material.Name, name, StringComparison.OrdinalIgnoreCase),
            () => "no material \"" + name + "\" is held");
}
