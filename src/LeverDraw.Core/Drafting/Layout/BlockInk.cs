using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;

namespace LeverDraw.Drafting.Layout;

/// <summary>A block's ink and what its dimensions mean, in the block's own paper millimetres.</summary>
public sealed record BlockInk(ImmutableArray<PlotItem> Items, ImmutableArray<PlotDimension> Dimensions)
{
    public BlockInk With(PlotItem more) => this with { Items = Items.Add(more) };
}
