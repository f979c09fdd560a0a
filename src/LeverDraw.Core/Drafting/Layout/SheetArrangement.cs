using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>Finds the division of the sheet that holds all blocks and fills it most evenly: projected views in one row, other views, tables and notes beside or below them.</summary>
internal static class SheetArrangement
{
    /// <summary>Whether any division could hold blocks of these sizes.</summary>
    /// <param name="projected">Of the row of projected views.</param>
    /// <param name="notes">The notes' sizes at several widths.</param>
    public static bool CouldHold(Box2D field, Box2D title, (double Width, double Height) projected, IEnumerable<(double Width, double Height)> others, IReadOnlyList<(double Width, double Height)> notes)
    {
        Box2D inside = field.Inflated(-Cell.Gap);
        Cell[][] pieces =
        [
            [new RoomCell(projected.Width, projected.Height)],
            .. others.Select(o => new Cell[] { new RoomCell(o.Width, o.Height) }),
            [.. notes.Select(n => new RoomCell(n.Width, n.Height))],
            [TitleRoom(title, inside)],
        ];
        double area = pieces.Sum(p => p.Min(c => c.MinWidth * c.MinHeight));
        return area <= inside.Width * inside.Height && new SheetDivisions(inside.Width, inside.Height, pieces).Any();
    }

    /// <param name="field">Inside the frame.</param>
    /// <param name="title">The title block's box, in the field's lower right corner.</param>
    /// <param name="others">Other views and tables, in reading order.</param>
    /// <param name="notes">The notes wrapped to several widths; one of them is taken.</param>
    /// <returns>Null when no division holds everything.</returns>
    public static List<PlacedBlock>? Best(Box2D field, Box2D title, IReadOnlyList<PaperBlock> projected, IReadOnlyList<PaperBlock> others, IReadOnlyList<PaperBlock> notes)
    {
        Box2D inside = field.Inflated(-Cell.Gap);
        double area = (title.Width - Cell.Gap) * (title.Height - Cell.Gap);
        area += projected.Concat(others).Sum(b => b.Bounds.Width * b.Bounds.Height) + notes.Min(b => b.Bounds.Width * b.Bounds.Height);
        if (area > inside.Width * inside.Height)
            return null;
        Cell[][] pieces =
        [
            [new ProjectedRow(projected)],
            .. others.Select(o => new Cell[] { new BlockCell(o) }),
            [.. notes.Select(n => new BlockCell(n))],
            [TitleRoom(title, inside)],
        ];
        List<PlacedBlock>? best = null;
        double bestBalance = double.NegativeInfinity;
        Span<Box2D> boxes = new Box2D[projected.Count + others.Count + 1];
        foreach (Cell division in new SheetDivisions(inside.Width, inside.Height, pieces).All())
        {
            var placed = new List<PlacedBlock>(boxes.Length);
            division.Place(inside, placed);
            Box2D notesBox = default;
            for (int i = 0; i < boxes.Length; i++)
            {
                boxes[i] = placed[i].Block.Bounds.Moved(placed[i].Shift);
                if (notes.Contains(placed[i].Block))
                    notesBox = boxes[i];
            }

            double balance = SheetBalance.Of(field, title, boxes, notesBox);
            if (balance <= bestBalance + 1e-9)
                continue;
            bestBalance = balance;
            best = placed;
        }

        return best;
    }

    private static RoomCell TitleRoom(Box2D title, Box2D inside) =>
        new(Math.Min(title.Width - Cell.Gap, inside.Width), title.Height - Cell.Gap, holdsTitle: true);
}
