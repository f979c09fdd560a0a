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
        double bestSpread = -1;
        foreach ((Box2D Area, Cell Cell)[] division in Divisions(field, title, projected, others, texts))
        {
            if (division.Any(part => Room(part.Area, part.Cell) < 0))
                continue;
            var placed = new List<PlacedBlock>();
            foreach ((Box2D area, Cell cell) in division)
                cell.Place(area, placed);
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

    /// <summary>How evenly the sheet is filled: the share of a coarse grid of the free field that blocks touch, less how far their common middle lies off the field's.</summary>
    private static double Spread(Box2D field, Box2D title, List<PlacedBlock> placed)
    {
        const int Columns = 8;
        const int Rows = 8;
        int free = 0;
        int touched = 0;
        double area = 0;
        Vector2D pull = default;
        Box2D[] boxes = [title, .. placed.Select(p => p.Block.Bounds.Moved(p.Shift))];
        foreach (Box2D box in boxes)
        {
            double own = box.Width * box.Height;
            area += own;
            pull += (box.Centre - field.Centre) * own;
        }

        for (int c = 0; c < Columns; c++)
        {
            for (int r = 0; r < Rows; r++)
            {
                var cell = new Box2D(
                    field.MinX + (field.Width * c / Columns), field.MinY + (field.Height * r / Rows),
                    field.MinX + (field.Width * (c + 1) / Columns), field.MinY + (field.Height * (r + 1) / Rows));
                free++;
                if (boxes.Any(b => b.Overlaps(cell)))
                    touched++;
            }
        }

        double off = (Math.Abs(pull.X) / field.Width) + (Math.Abs(pull.Y) / field.Height);
        return ((double)touched / free) - (off / area);
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
