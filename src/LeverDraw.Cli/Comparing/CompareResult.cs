using System.Collections.Immutable;
using LeverDraw.Comparison;

namespace LeverDraw.Cli.Comparing;

/// <summary>What was compared and what came of it.</summary>
/// <param name="Two">The overlay, when two are compared.</param>
internal sealed record CompareResult(CompareInput Input, ImmutableArray<ComparedRow> Sizes, ImmutableArray<ComparedRow> Figures, LeverComparison? Two)
{
    public static CompareResult Of(CompareInput input, Alignment alignment) => input.Variants is [{ } a, { } b] && LeverComparison.Of(a, b, alignment) is { } two
        ? new(input, two.Sizes, two.Figures, two)
        : new(input, VariantTable.Differences(input.Variants), VariantTable.Figures(input.Variants), null);
}
