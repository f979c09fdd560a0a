using System.Collections.Immutable;

namespace LeverDraw.Standards;

/// <summary>How much a metal shrinks on cooling in the mould, length per length (0.0104 is 10.4 mm/m). A spread, not a constant.</summary>
/// <param name="Lowest">Lowest published value.</param>
/// <param name="Highest">Highest published value.</param>
/// <param name="Usual">The value to start from; the foundry's own replaces it.</param>
/// <param name="Sources">How many distinct sources were read.</param>
public sealed record Contraction(string Metal, double Lowest, double Highest, double Usual, int Sources, Certainty Certainty);

/// <summary>Linear contraction of casting metals, in brief; the single readings are in <see cref="ContractionReadings"/>.</summary>
public static class Contractions
{
    public static StandardSource Source { get; } = new(
        "Contraction of casting metals", "Textbooks and foundry pages", "", "", Certainty.Mixed,
        "solid for iron, brass, bronze, aluminium and steel; each row has its own grade; a figure does not foretell a casting: shape, section and mould matter");

    /// <summary>Metal; lowest, highest, usual; number of sources. The usual values are the old ones in fractions of an inch per foot where there is one.</summary>
    public static ImmutableArray<Contraction> All { get; } =
    [
        new("grey iron", 7.00 / 1000, 10.50 / 1000, PerFoot(1.0 / 8), 13, Certainty.Solid),
        new("ductile iron", 8.00 / 1000, 12.00 / 1000, 8.0 / 1000, 2, Certainty.Mixed),
        new("malleable iron", 15.00 / 1000, 16.00 / 1000, 15.5 / 1000, 2, Certainty.Mixed),
        new("carbon steel", 15.62 / 1000, 25.00 / 1000, PerFoot(1.0 / 4), 9, Certainty.Solid),
        new("brass", 13.00 / 1000, 18.23 / 1000, PerFoot(3.0 / 16), 9, Certainty.Solid),
        new("tin bronze / gunmetal", 10.50 / 1000, 21.00 / 1000, PerFoot(3.0 / 16), 6, Certainty.Solid),
        new("aluminium bronze", 18.23 / 1000, 21.00 / 1000, PerFoot(7.0 / 32), 2, Certainty.Mixed),
        new("manganese bronze", 18.23 / 1000, 18.23 / 1000, PerFoot(7.0 / 32), 1, Certainty.Thin),
        new("aluminium", 12.50 / 1000, 22.14 / 1000, PerFoot(5.0 / 32), 10, Certainty.Solid),
        new("zinc", 15.00 / 1000, 26.04 / 1000, PerFoot(5.0 / 16), 4, Certainty.Mixed),
        new("magnesium", 10.42 / 1000, 21.00 / 1000, 14.4 / 1000, 3, Certainty.Mixed),
        new("copper", 10.00 / 1000, 16.00 / 1000, PerFoot(3.0 / 16), 4, Certainty.Mixed),
    ];

    public static Answer<Contraction> Of(string metal) =>
        Answer<Contraction>.First(
            All,
            row => string.Equals(row.Metal, metal, StringComparison.OrdinalIgnoreCase),
            () => "contraction is held for " + string.Join(", ", All.Select(row => row.Metal)) + ", not \"" + metal + "\"");

    /// <summary>Pattern over casting for a contraction measured on the casting: 1 + c.</summary>
    public static double PatternFactor(double contraction) => 1 + contraction;

    /// <summary>Master over casting when a metal pattern is cast from it: (1 + c pattern metal)(1 + c casting metal). Books add the two; the difference is small.</summary>
    public static double MasterFactor(double patternMetal, double castingMetal) => (1 + patternMetal) * (1 + castingMetal);

    private static double PerFoot(double inches) => inches / 12;
}
