using System.Collections.Immutable;
using System.Globalization;

namespace LeverDraw.Standards;

/// <summary>A basic line type.</summary>
/// <param name="Number">1 for type 01, continuous, and so on.</param>
/// <param name="Elements">Dash, gap, dash, gap … in multiples of the line width; empty when continuous. Dots are 0.5 long.</param>
public sealed record LinePattern(int Number, string Name, ImmutableArray<double> Elements);

/// <summary>The basic line types.</summary>
public static class LinePatterns
{
    public static StandardSource Source { get; } = new(
        "Line types and dash lengths", "ISO 128-2", "2020", "", Certainty.Mixed,
        "one independent line set and memory; types 06 and 13 to 15 not held");

    public static ImmutableArray<LinePattern> All { get; } =
    [
        new(1, "continuous", []),
        new(2, "dashed", [12, 3]),
        new(3, "dashed spaced", [12, 18]),
        new(4, "long-dashed dotted", [24, 3, 0.5, 3]),
        new(5, "long-dashed double-dotted", [24, 3, 0.5, 3, 0.5, 3]),
        new(7, "dotted", [0.5, 3]),
        new(8, "long-dashed short-dashed", [24, 3, 6, 3]),
        new(9, "long-dashed double-short-dashed", [24, 3, 6, 3, 6, 3]),
        new(10, "dashed dotted", [12, 3, 0.5, 3]),
        new(11, "double-dashed dotted", [12, 3, 12, 3, 0.5, 3]),
        new(12, "dashed double-dotted", [12, 3, 0.5, 3, 0.5, 3]),
    ];

    public static Answer<LinePattern> Numbered(int number)
    {
        foreach (LinePattern pattern in All)
        {
            if (pattern.Number == number)
                return Answer<LinePattern>.Given(pattern);
        }
        return Answer<LinePattern>.Refused(string.Create(
            CultureInfo.InvariantCulture, $"the line types held are 1 to 5 and 7 to 12, there is no {number}"));
    }
}
