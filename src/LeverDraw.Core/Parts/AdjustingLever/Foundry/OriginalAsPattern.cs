using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>What one size becomes when a finished original is moulded as it is.</summary>
/// <param name="Original">As the original measures.</param>
/// <param name="ComesOut">Of its casting: smaller by the contraction, larger by rapping.</param>
/// <param name="Short">By how much that misses the finished size before any machining; negative when it is larger.</param>
/// <param name="Pad">What has to be added to the original on each face (taken from it when negative), so that it is as large as a pattern; for a distance, in all.</param>
public sealed record CopiedSize(FoundrySize Size, Length Original, Length ComesOut, Length Short, Length Pad);

/// <summary>An original lever used as its own pattern. Everything scales about one point, its bores too: the hole is filled or bushed before moulding (common practice).</summary>
public static class OriginalAsPattern
{
    public static ImmutableArray<CopiedSize> Table(PatternLever pattern) => Table(pattern, size => size.Finished);

    /// <param name="measured">What the original, worn as it is, measures.</param>
    public static ImmutableArray<CopiedSize> Table(PatternLever pattern, Func<FoundrySize, Length> measured)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        ArgumentNullException.ThrowIfNull(measured);
        return [.. FoundrySizes.Of(pattern.Casting.Finished).Select(size =>
        {
            Length original = measured(size), comesOut = pattern.CastingFrom(size, original);
            Length missing = pattern.SizeOf(size, size.MeasureOn(pattern.Casting.Shape)) - original;
            Length pad = size.Kind switch
            {
                FoundrySizeKind.Outside => missing / 2,
                FoundrySizeKind.Inside => -missing / 2,
                _ => missing,
            };
            return new CopiedSize(size, original, comesOut, size.Finished - comesOut, pad);
        })];
    }
}
