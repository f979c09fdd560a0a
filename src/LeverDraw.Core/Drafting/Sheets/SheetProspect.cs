using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Standards;

namespace LeverDraw.Drafting.Sheets;

/// <summary>Whether a sheet's content may go on one paper at one main scale in one style, by what is known of the views' sizes before they are placed.</summary>
/// <param name="projected">The row of main views.</param>
internal sealed class SheetProspect(SheetContent content, PaperRoom room, DrawingScale scale, DraftingStyle style, ImmutableArray<ViewSource> projected, BlockStore store)
{
    /// <summary>Of the room that a view's annotations are estimated to take, what is counted on where others have turned out larger.</summary>
    public const double Wary = 0.6;

    /// <summary>Of the paper, what guessed sizes take at the most where they are likely to go in (own, by trying).</summary>
    private const double Likely = 0.80;

    /// <summary>Bare views plus one tier all round do not go in: cheap to know before anything is placed.</summary>
    public bool CannotFit()
    {
        double ring = style.FirstTier + 4;
        double width = 0;
        double height = 0;
        foreach (ViewSource view in projected)
        {
            Box2D box = store.Sizes.Bare(view);
            width += (box.Width * scale.Factor) + ring;
            height = Math.Max(height, (box.Height * scale.Factor) + ring);
        }

        Box2D field = room.Field;
        return width > field.Width || height > field.Height || (height > field.Height - room.Title.Height && width > room.Title.MinX - field.MinX + 1 && room.Title.Width >= field.Width);
    }

    /// <summary>What is known of the views' sizes leaves hope.</summary>
    /// <param name="others">The scales of the other views.</param>
    /// <param name="lettering">Height of the notes' lettering.</param>
    /// <param name="share">Of the room that annotations are estimated to take.</param>
    public bool CouldHold(DrawingScale[] others, SheetThrift thrift, double lettering, double share = 1) =>
        room.CouldHold(Blocks(others, thrift, lettering, (view, factor, price) => store.Sizes.Estimate(view, factor, style, price, share)), lettering);

    /// <summary>Everything is likely to go in, by a guess at views of which nothing is known: all areas, each with half the least gap round it.</summary>
    /// <param name="others">The scales of the other views.</param>
    /// <param name="lettering">Height of the notes' lettering.</param>
    public bool IsLikely(DrawingScale[] others, double lettering)
    {
        (double Width, double Height)[] blocks = Blocks(others, SheetThrift.Levels[0], lettering, (view, factor, _) => store.Sizes.Guess(view, factor, style));
        double area = blocks.Append(room.SmallestNotes(lettering)).Append((room.Title.Width, room.Title.Height)).Sum(b => Cell.AreaWithGap(b.Width, b.Height));
        return area < Likely * room.Field.Width * room.Field.Height && blocks.All(b => b.Width < room.Field.Width && b.Height < room.Field.Height);
    }

    /// <summary>The sizes of all blocks but the notes and the title block, the row of main views first.</summary>
    private (double Width, double Height)[] Blocks(DrawingScale[] others, SheetThrift thrift, double lettering, Func<ViewSource, double, double, (double Width, double Height)> sizeOf)
    {
        (double Width, double Height) row = (-Cell.Gap, 0);
        foreach (ViewSource view in projected)
        {
            (double width, double height) = sizeOf(view, scale.Factor, thrift.Main);
            row = (row.Width + Cell.Gap + width, Math.Max(row.Height, height));
        }

        var blocks = new List<(double Width, double Height)>(1 + others.Length + content.Tables.Length + content.Blocks.Length) { row };
        for (int i = 0; i < others.Length; i++)
            blocks.Add(sizeOf(content.Others[i], others[i].Factor, thrift.Details));
        for (int i = 0; i < content.Tables.Length; i++)
            blocks.Add((store.Table(i, lettering).Bounds.Width, store.Table(i, lettering).Bounds.Height));
        foreach (PaperBlock block in content.Blocks)
            blocks.Add((block.Bounds.Width, block.Bounds.Height));
        return [.. blocks];
    }
}
