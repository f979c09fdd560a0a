using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>One line group: what a sheet uses together.</summary>
/// <param name="Wide">Visible edges (01.2), cutting-plane ends (04.2); gives the group its name.</param>
/// <param name="Narrow">Dimension, extension, hidden, centre and phantom lines (01.1, 02.1, 04.1, 05.1).</param>
/// <param name="Text">Lettering and graphical symbols.</param>
public readonly record struct LineGroup(Length Wide, Length Narrow, Length Text);

/// <summary>The line widths and line groups.</summary>
public static class LineWidths
{
    public static StandardSource Source { get; } = new(
        "Line widths and line groups", "ISO 128-2", "2020", "", Certainty.Mixed,
        "the series of widths: one source and its step of the square root of 2; the grouping from memory");

    /// <summary>The series, narrowest first; each is about √2 times the one before.</summary>
    public static ImmutableArray<Length> Series { get; } =
        [.. new[] { 0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1, 1.4, 2 }.Select(Length.FromMillimetres)];

    /// <summary>The groups, narrowest first; 0.5 and 0.7 are preferred.</summary>
    public static ImmutableArray<LineGroup> Groups { get; } =
    [
        Group(0.25, 0.13, 0.18),
        Group(0.35, 0.18, 0.25),
        Group(0.5, 0.25, 0.35),
        Group(0.7, 0.35, 0.5),
        Group(1, 0.5, 0.7),
        Group(1.4, 0.7, 1),
        Group(2, 1, 1.4),
    ];

    /// <summary>Group 0.5, the preferred group for A4 to A2.</summary>
    public static LineGroup Medium => Groups[2];

    /// <summary>Group 0.7, the preferred group for A1 and A0.</summary>
    public static LineGroup Broad => Groups[3];

    private static LineGroup Group(double wide, double narrow, double text) =>
        new(Length.FromMillimetres(wide), Length.FromMillimetres(narrow), Length.FromMillimetres(text));
}
