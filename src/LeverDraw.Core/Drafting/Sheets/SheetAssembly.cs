using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Standards;

namespace LeverDraw.Drafting.Sheets;

/// <summary>Draws the placed blocks, the frame and the title block as one sheet.</summary>
internal sealed class SheetAssembly(SheetContent content, SheetOptions options, SheetFormat sheet, DrawingScale scale, DraftingStyle style)
{
    public PlotSheet Of(List<PlacedBlock> placed, Box2D title)
    {
        var items = ImmutableArray.CreateBuilder<PlotItem>(512);
        var dimensions = ImmutableArray.CreateBuilder<PlotDimension>();
        var views = ImmutableArray.CreateBuilder<PlotView>();
        BlockInk[] inks = Inks(placed, title);
        items.AddRange(SheetFrame.Draw(sheet, [title, .. placed.Select((p, i) => (inks[i].Taken ?? p.Block.Bounds).Moved(p.Shift))]));
        items.AddRange(TitleBlockInk.Draw(content.Title, scale.Text, sheet.Name, options.Projection, title));
        foreach (int i in InOrder(placed))
        {
            (PlacedBlock block, BlockInk ink) = (placed[i], inks[i]);
            items.AddRange(ink.Items.Select(i => i.Moved(block.Shift)));
            dimensions.AddRange(ink.Dimensions.Select(d => d.Moved(block.Shift)));
            if (block.Block.View is not { } view)
                continue;
            Transform2D toPaper = view.Source.Orientation with { Scale = view.Scale, Translation = block.Shift };
            views.Add(new PlotView(view.Source.Id, view.Source.Title ?? view.Source.Id, toPaper, view.Scale == scale.Factor, view.Source.Outlines));
        }

        return new PlotSheet(
            sheet.Width.Millimetres,
            sheet.Height.Millimetres,
            content.Title.DrawingNumber + " " + content.Title.Title,
            content.State,
            options.FirstUnit,
            scale.Factor,
            style.LetteringHeight,
            style.ArrowLength,
            items.ToImmutable(),
            views.ToImmutable(),
            dimensions.ToImmutable());
    }

    /// <summary>The content's own order, wherever the blocks stand: a file's order does not hang on the arrangement.</summary>
    private IEnumerable<int> InOrder(List<PlacedBlock> placed)
    {
        ViewSource[] order = [.. content.FromLeft, content.Front, .. content.FromRight, .. content.Others];
        return Enumerable.Range(0, placed.Count).OrderBy(i => placed[i].Block.View is { } view ? Array.IndexOf(order, view.Source) : order.Length);
    }

    /// <summary>Each block's ink, where a view's annotations may use the white that is left round it: the first in the content's order first.</summary>
    private BlockInk[] Inks(List<PlacedBlock> placed, Box2D title)
    {
        Box2D inside = SheetFrame.Field(sheet).Inflated(-Cell.Gap);
        Box2D[] boxes = [.. placed.Select(p => p.Block.Bounds.Moved(p.Shift)), title];
        var inks = new BlockInk[placed.Count];
        foreach (int i in InOrder(placed))
        {
            (PaperBlock block, Vector2D shift) = placed[i];
            inks[i] = block.View is { } view ? view.DrawWithin(SpareRoom.Of(i, boxes, inside).Moved(-shift)) : block.Draw();
            if (inks[i].Taken is { } taken)
                boxes[i] = taken.Moved(shift);
        }

        return inks;
    }
}
