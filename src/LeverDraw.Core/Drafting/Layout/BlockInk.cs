using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>A block's ink and what its dimensions mean, in the block's own paper millimetres.</summary>
public sealed record BlockInk(ImmutableArray<PlotItem> Items, ImmutableArray<PlotDimension> Dimensions)
{
    /// <summary>The box it takes where that may be another than the block was estimated at.</summary>
    public Box2D? Taken { get; init; }

    public BlockInk Moved(Vector2D by) =>
        new([.. Items.Select(i => i.Moved(by))], [.. Dimensions.Select(d => d.Moved(by))]) { Taken = Taken?.Moved(by) };

    /// <param name="box">Of what is added.</param>
    public BlockInk With(IEnumerable<PlotItem> more, Box2D box) => this with { Items = Items.AddRange(more), Taken = Taken?.Union(box) };
}
