using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;

namespace LeverDraw.Drafting.Annotations;

/// <summary>A placed annotation as ink and meaning, in the block's paper millimetres.</summary>
/// <param name="Meaning">Null for a mere letter.</param>
public sealed record AnnotationInk(ImmutableArray<PlotItem> Items, PlotDimension? Meaning)
{
    /// <summary>Set instead of the one meaning when several dimensions are placed as one body.</summary>
    public ImmutableArray<PlotDimension> Members { get; init; } = [];
}
