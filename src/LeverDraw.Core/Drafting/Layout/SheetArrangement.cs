using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>Finds the division of the sheet that holds all blocks and fills it most evenly: projected views in one row, other views, tables and notes beside or below them.</summary>
internal static class SheetArrangement
{
    /// <summary>Of a block that is read before the one it goes on from: more than a well filled sheet is worth.</summary>
    private const double OutOfOrder = 0.5;

    /// <summary>A division that holds blocks of these sizes, or null.</summary>
    /// <param name="blocks">The row of projected views first.</param>
    /// <param name="notes">The notes' sizes at several widths.</param>
    public static DivisionPlan? PlanFor(Box2D field, Box2D title, ReadOnlySpan<(double Width, double Height)> blocks, ReadOnlySpan<(double Width, double Height)> notes)
    {
        Box2D inside = field.Inflated(-Cell.Gap);
        var pieces = new Cell[blocks.Length + 2][];
        for (int i = 0; i < blocks.Length; i++)
            pieces[i] = [new RoomCell(blocks[i].Width, blocks[i].Height)];
        pieces[^2] = new Cell[notes.Length];
        for (int i = 0; i < notes.Length; i++)
            pieces[^2][i] = new RoomCell(notes[i].Width, notes[i].Height);
        pieces[^1] = [TitleRoom(title, inside)];
        return new SheetDivisions(inside.Width, inside.Height, pieces).Any();
    }

    /// <summary>Whether a division, found for other sizes, holds blocks of these.</summary>
    public static bool Holds(DivisionPlan plan, Box2D field, Box2D title, ReadOnlySpan<(double Width, double Height)> blocks, ReadOnlySpan<(double Width, double Height)> notes)
    {
        Box2D inside = field.Inflated(-Cell.Gap);
        Span<(double Width, double Height)> pieces = stackalloc (double, double)[blocks.Length + 2];
        blocks.CopyTo(pieces);
        Cell titleRoom = TitleRoom(title, inside);
        pieces[^1] = (titleRoom.MinWidth, titleRoom.MinHeight);
        foreach ((double Width, double Height) form in notes)
        {
            pieces[^2] = form;
            (double width, double height) = plan.Size(pieces);
            if (width <= inside.Width && height <= inside.Height)
                return true;
        }

        return false;
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
        (PaperBlock Last, PaperBlock Next)[] series = [.. others.Select((o, i) => (i == 0 ? projected[^1] : others[i - 1], o)).Where(s => s.o.Continues)];
        List<PlacedBlock>? best = null;
        var placed = new List<PlacedBlock>(projected.Count + others.Count + 1);
        double bestBalance = double.NegativeInfinity;
        Span<Box2D> boxes = new Box2D[projected.Count + others.Count + 1];
        foreach (Cell division in new SheetDivisions(inside.Width, inside.Height, pieces).All())
        {
            placed.Clear();
            division.Place(inside, placed);
            Box2D notesBox = default;
            for (int i = 0; i < boxes.Length; i++)
            {
                boxes[i] = placed[i].Block.Bounds.Moved(placed[i].Shift);
                if (IsAmong(notes, placed[i].Block))
                    notesBox = boxes[i];
            }

            double disorder = OutOfOrder * series.Count(s => IsReadBefore(BoxOf(s.Next, placed), BoxOf(s.Last, placed)));
            double balance = SheetBalance.Of(field, title, boxes, notesBox, bestBalance + disorder + 1e-9) - disorder;
            if (balance <= bestBalance + 1e-9)
                continue;
            bestBalance = balance;
            (best, placed) = (placed, best ?? new List<PlacedBlock>(boxes.Length));
        }

        return best;
    }

    /// <summary>Neither below the other nor to the right of it on its level.</summary>
    private static bool IsReadBefore(Box2D box, Box2D other) => box.MaxY > other.MinY && (box.MinX < other.MaxX || box.MinY > other.MaxY);

    private static Box2D BoxOf(PaperBlock block, List<PlacedBlock> placed)
    {
        PlacedBlock found = placed.Find(p => ReferenceEquals(p.Block, block));
        return block.Bounds.Moved(found.Shift);
    }

    private static bool IsAmong(IReadOnlyList<PaperBlock> blocks, PaperBlock block)
    {
        for (int i = 0; i < blocks.Count; i++)
        {
            if (ReferenceEquals(blocks[i], block))
                return true;
        }

        return false;
    }

    private static RoomCell TitleRoom(Box2D title, Box2D inside) =>
        new(Math.Min(title.Width - Cell.Gap, inside.Width), title.Height - Cell.Gap, holdsTitle: true);
}
