using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>Finds the division of the sheet that holds all blocks with the most even free room: projected views together, other views and notes beside or below them.</summary>
internal static class SheetArrangement
{
    /// <param name="field">Inside the frame.</param>
    /// <param name="title">The title block's box, in the field's lower right corner.</param>
    /// <returns>Null when no division holds everything.</returns>
    public static List<PlacedBlock>? Best(Box2D field, Box2D title, IReadOnlyList<PaperBlock> projected, IReadOnlyList<PaperBlock> others, IReadOnlyList<PaperBlock> texts)
    {
        List<PlacedBlock>? best = null;
        double bestSpread = double.NegativeInfinity;
        foreach ((Box2D Area, Cell Cell)[] division in Divisions(field, title, projected, others, texts))
        {
            if (division.Any(part => Room(part.Area, part.Cell) < 0))
                continue;
            var placed = new List<PlacedBlock>();
            foreach ((Box2D area, Cell cell) in division)
                cell.Place(area.Inflated(-Cell.Gap), placed);
            double spread = Spread(field, title, placed);
            if (spread <= bestSpread + 1e-9)
                continue;
            bestSpread = spread;
            best = placed;
        }

        return best;
    }

    /// <summary>Free room on the tighter axis; negative when it does not fit with a gap all round.</summary>
    private static double Room(Box2D area, Cell cell) =>
        Math.Min(area.Width - cell.MinWidth, area.Height - cell.MinHeight) - (2 * Cell.Gap);

    /// <summary>How evenly the sheet is filled: the largest empty square left is small, and the blocks' common middle lies near the field's.</summary>
    private static double Spread(Box2D field, Box2D title, List<PlacedBlock> placed)
    {
        Box2D[] boxes = [title, .. placed.Select(p => p.Block.Bounds.Moved(p.Shift))];
        double area = 0;
        Vector2D pull = default;
        foreach (Box2D box in boxes)
        {
            double own = box.Width * box.Height;
            area += own;
            pull += (box.Centre - field.Centre) * own;
        }

        double off = (Math.Abs(pull.X) / field.Width) + (Math.Abs(pull.Y) / field.Height);
        return -(LargestEmptySquare(field, boxes) / Math.Min(field.Width, field.Height)) - (0.5 * off / area);
    }

    /// <summary>Side of the largest square of the field that no box touches, to the pitch of a coarse grid; the usual dynamic programme over its cells.</summary>
    private static double LargestEmptySquare(Box2D field, Box2D[] boxes)
    {
        double pitch = Math.Max(field.Width, field.Height) / 40;
        int columns = (int)(field.Width / pitch);
        int rows = (int)(field.Height / pitch);
        var taken = new bool[columns * rows];
        foreach (Box2D box in boxes)
        {
            int c0 = Math.Max(0, (int)((box.MinX - field.MinX) / pitch));
            int c1 = Math.Min(columns - 1, (int)((box.MaxX - field.MinX) / pitch));
            int r0 = Math.Max(0, (int)((box.MinY - field.MinY) / pitch));
            int r1 = Math.Min(rows - 1, (int)((box.MaxY - field.MinY) / pitch));
            for (int r = r0; r <= r1; r++)
            {
                for (int c = c0; c <= c1; c++)
                    taken[(r * columns) + c] = true;
            }
        }

        var side = new int[columns + 1];
        int largest = 0;
        for (int r = 0; r < rows; r++)
        {
            int diagonal = 0;
            for (int c = 1; c <= columns; c++)
            {
                int above = side[c];
                side[c] = taken[(r * columns) + c - 1] ? 0 : 1 + Math.Min(diagonal, Math.Min(above, side[c - 1]));
                largest = Math.Max(largest, side[c]);
                diagonal = above;
            }
        }

        return largest * pitch;
    }

    private static IEnumerable<(Box2D Area, Cell Cell)[]> Divisions(Box2D field, Box2D title, IReadOnlyList<PaperBlock> projected, IReadOnlyList<PaperBlock> others, IReadOnlyList<PaperBlock> texts)
    {
        var main = new ProjectedRow(projected);
        Cell[] views = [.. others.Select(o => new BlockCell(o))];
        Cell[] notes = [.. texts.Select(t => new BlockCell(t))];
        var above = new Box2D(field.MinX, title.MaxY, field.MaxX, field.MaxY);
        yield return [(above, Column(main, Row([.. views, .. notes])))];
        yield return [(above, Column(main, Row(views), Row(notes)))];
        yield return [(above, Column(Row(main, Column(views)), Row(notes)))];
        yield return [(above, Row(main, Column([.. views, .. notes])))];
        yield return [(above, Row(main, Column(views), Column(notes)))];
        if (title.MinX - field.MinX < 40)
            yield break;

        var beside = new Box2D(field.MinX, field.MinY, title.MinX, title.MaxY);
        yield return [(above, Row(main, Column(views))), (beside, Row(notes))];
        yield return [(above, Column(main, Row(views))), (beside, Row(notes))];
        yield return [(above, Row(main, Row(views))), (beside, Row(notes))];
        var left = new Box2D(field.MinX, field.MinY, title.MinX, field.MaxY);
        var right = new Box2D(title.MinX, title.MaxY, field.MaxX, field.MaxY);
        yield return [(left, main), (right, Column([.. views, .. notes]))];
        yield return [(left, main), (right, Column(Row(views), Row(notes)))];
        yield return [(left, Column(main, Row(views))), (right, Column(notes))];
        yield return [(left, Column(main, Row(notes))), (right, Column(views))];
        if (views.Length > 1)
        {
            yield return [(above, Row(main, Column(views[..1]), Column(views[1..]))), (beside, Row(notes))];
            yield return [(left, Column(main, Row(views[..1]))), (right, Column([.. views[1..], .. notes]))];
        }
    }

    private static StackCell Row(params Cell[] cells) => new(false, [.. cells.Where(HasContent)]);

    private static StackCell Column(params Cell[] cells) => new(true, [.. cells.Where(HasContent)]);

    private static bool HasContent(Cell cell) => cell.MinWidth > 0;
}
