using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>A rigid piece of the sheet with a box of its own: an annotated view, the notes, a table. Blocks never overlap, so nothing in one can meet anything in another.</summary>
/// <param name="View">Set for a view.</param>
public sealed record PaperBlock(string Name, Box2D Bounds, ImmutableArray<PlotItem> Items, ImmutableArray<PlotDimension> Dimensions, ViewBlock? View = null)
{
    public static PaperBlock Of(ViewBlock block) => new(block.Source.Id, block.Bounds, block.Items, block.Dimensions, block);
}

/// <summary>A block and how far it is shifted.</summary>
public sealed record PlacedBlock(PaperBlock Block, Vector2D Shift);
