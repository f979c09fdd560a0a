using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>A rigid piece of the sheet with a box of its own: an annotated view, the notes, a table. Blocks never overlap, so nothing in one can meet anything in another.</summary>
/// <param name="Draw">Its ink, asked for once its place on the sheet is settled.</param>
/// <param name="View">Set for a view.</param>
public sealed record PaperBlock(string Name, Box2D Bounds, Func<BlockInk> Draw, ViewBlock? View = null)
{
    public PaperBlock(string name, Box2D bounds, ImmutableArray<PlotItem> items, ImmutableArray<PlotDimension> dimensions)
        : this(name, bounds, () => new BlockInk(items, dimensions))
    {
    }

    /// <summary>Goes on from the block before it, such as the second half of a table: it stands beside or below that one, not before it.</summary>
    public bool Continues { get; init; }

    /// <summary>Drawn anew at each call.</summary>
    public ImmutableArray<PlotItem> Items => Draw().Items;

    public static PaperBlock Of(ViewBlock block) => new(block.Source.Id, block.Bounds, block.Draw, block) { Continues = block.Source.Continues };
}

/// <summary>A block and how far it is shifted.</summary>
public readonly record struct PlacedBlock(PaperBlock Block, Vector2D Shift);
