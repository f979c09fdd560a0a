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
        PlacedBlock[] ordered = [.. InOrder(placed)];
        BlockInk[] inks = Inks(ordered, title);
        items.AddRange(SheetFrame.Draw(sheet, [title, .. ordered.Select((p, i) => inks[i].Taken ?? p.Block.Bounds.Moved(p.Shift))]));
        items.AddRange(TitleBlockInk.Draw(content.Title, scale.Text, sheet.Name, options.Projection, title));
        for (int i = 0; i < ordered.Length; i++)
        {
            (PlacedBlock block, BlockInk ink) = (ordered[i], inks[i]);
            items.AddRange(ink.Items);
            dimensions.AddRange(ink.Dimensions);
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

    /// <summary>The content's own order, views first, wherever the blocks stand: a file's order does not hang on the arrangement.</summary>
    private IEnumerable<PlacedBlock> InOrder(List<PlacedBlock> placed)
    {
        ViewSource[] order = [.. content.FromLeft, content.Front, .. content.FromRight, .. content.Others];
        return placed.OrderBy(p => p.Block.View is { } view ? Array.IndexOf(order, view.Source) : order.Length);
    }

    /// <summary>Each block's ink on the sheet, where a view's annotations may use the white that is left round it; side by side on the processors there are.</summary>
    private BlockInk[] Inks(PlacedBlock[] ordered, Box2D title)
    {
        Box2D inside = SheetFrame.Field(sheet).Inflated(-Cell.Gap);
        Box2D[] boxes = [.. ordered.Select(p => p.Block.Bounds.Moved(p.Shift)), title];
        int views = ordered.Count(p => p.Block.View is not null);
        return SideBySide.Make(ordered.Length, i => ordered[i].Block.View is { } view ? SideBySide.WorkOn(view.Source) : 0, i => (ordered[i].Block.View is { } view
            ? view.DrawWithin(SpareRoom.Of(i, boxes, views, inside).Moved(-ordered[i].Shift))
            : ordered[i].Block.Draw()).Moved(ordered[i].Shift));
    }
}
