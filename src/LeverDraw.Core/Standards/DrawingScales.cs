using System.Collections.Immutable;

namespace LeverDraw.Standards;

/// <summary>The preferred scales, largest first.</summary>
public static class DrawingScales
{
    public static StandardSource Source { get; } = new(
        "Drawing scales", "ISO 5455", "1979", "", Certainty.FromMemory, "the 1-2-5 series from 50:1 to 1:10000");

    public static ImmutableArray<DrawingScale> Enlargements { get; } = [new(50, 1), new(20, 1), new(10, 1), new(5, 1), new(2, 1)];

    public static ImmutableArray<DrawingScale> Reductions { get; } =
    [
        new(1, 2), new(1, 5), new(1, 10), new(1, 20), new(1, 50), new(1, 100),
        new(1, 200), new(1, 500), new(1, 1000), new(1, 2000), new(1, 5000), new(1, 10000),
    ];

    public static ImmutableArray<DrawingScale> All { get; } = [.. Enlargements, DrawingScale.Full, .. Reductions];

    /// <summary>The largest preferred scale whose factor is at most <paramref name="factor"/> (paper over true).</summary>
    /// <remarks>A factor short of a scale by less than 1e-9 of it counts as that scale: a fit computed from sizes is not exact.</remarks>
    public static Answer<DrawingScale> LargestNotAbove(double factor)
    {
        foreach (DrawingScale scale in All)
        {
            if (scale.Factor <= factor * (1 + 1e-9))
                return Answer<DrawingScale>.Given(scale);
        }
        return Answer<DrawingScale>.Refused("the scales run from 50:1 down to 1:10000");
    }

    /// <summary>The next smaller scale; refused at the end of the series or for a scale not in it.</summary>
    public static Answer<DrawingScale> Below(DrawingScale scale)
    {
        int at = All.IndexOf(scale);
        return at >= 0 && at + 1 < All.Length
            ? Answer<DrawingScale>.Given(All[at + 1])
            : Answer<DrawingScale>.Refused("the scales run from 50:1 down to 1:10000");
    }

    /// <param name="text">Such as <c>2:1</c>; blanks around the colon are allowed.</param>
    public static Answer<DrawingScale> Named(string text)
    {
        string bare = text.Replace(" ", "", StringComparison.Ordinal);
        foreach (DrawingScale scale in All)
        {
            if (string.Equals(scale.Text, bare, StringComparison.Ordinal))
                return Answer<DrawingScale>.Given(scale);
        }
        return Answer<DrawingScale>.Refused("the scales are " + string.Join(" ", All.Select(s => s.Text)) + ", not \"" + text + "\"");
    }
}
