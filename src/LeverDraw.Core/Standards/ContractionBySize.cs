using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>Contraction that falls with the size of the pattern.</summary>
public static class ContractionBySize
{
    public static StandardSource Source { get; } = new(
        "Contraction by pattern size", "A reprinted lecture table", "", "", Certainty.FromMemory, "all from memory");

    /// <summary>Metal; pattern size over, up to, feet; inches per foot.</summary>
    private static readonly ImmutableArray<Row> _rows =
    [
        new("grey iron", 0, 2, 0.125),
        new("grey iron", 2, 4, 0.105),
        new("grey iron", 4, double.PositiveInfinity, 0.083),
        new("cast steel", 0, 2, 0.251),
        new("cast steel", 2, 6, 0.191),
        new("cast steel", 6, double.PositiveInfinity, 0.155),
        new("aluminium", 0, 4, 0.155),
        new("aluminium", 4, 6, 0.143),
        new("aluminium", 6, double.PositiveInfinity, 0.125),
        new("magnesium", 0, 4, 0.173),
        new("magnesium", 4, double.PositiveInfinity, 0.155),
    ];

    /// <summary>Length per length.</summary>
    public static Answer<double> Of(string metal, Length patternSize)
    {
        ImmutableArray<Row> rows = [.. _rows.Where(row => string.Equals(row.Metal, metal, StringComparison.OrdinalIgnoreCase))];
        return rows.IsEmpty
            ? Answer<double>.Refused("contraction by size is held for grey iron, cast steel, aluminium and magnesium, not \"" + metal + "\"")
            : SizeSteps.Find(rows, patternSize, "contractions by size").Map(row => row.InchesPerFoot / 12);
    }

    private sealed record Row(string Metal, double OverFeet, double UpToFeet, double InchesPerFoot) : ISizeStep
    {
        public double OverMm => SizeSteps.ToBorder(Length.FromInches(12 * OverFeet));

        public double UpToMm => double.IsInfinity(UpToFeet) ? UpToFeet : SizeSteps.ToBorder(Length.FromInches(12 * UpToFeet));
    }
}
