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
        items.AddRange(SheetFrame.Draw(sheet, [title, .. placed.Select(p => p.Block.Bounds.Moved(p.Shift))]));
        items.AddRange(TitleBlockInk.Draw(content.Title, scale.Text, sheet.Name, options.Projection, title));
        PlacedBlock[] ordered = [.. InOrder(placed)];
        // Each view settles once more before it is drawn: side by side on the processors there are.
        BlockInk[] inks = SideBySide.Make(ordered.Length, i => ordered[i].Block.Draw());
        for (int i = 0; i < ordered.Length; i++)
        {
            (PlacedBlock block, BlockInk ink) = (ordered[i], inks[i]);
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
    private IEnumerable<PlacedBlock> InOrder(List<PlacedBlock> placed)
    {
        ViewSource[] order = [.. content.FromLeft, content.Front, .. content.FromRight, .. content.Others];
        return placed.OrderBy(p => p.Block.View is { } view ? Array.IndexOf(order, view.Source) : order.Length);
    }
}
