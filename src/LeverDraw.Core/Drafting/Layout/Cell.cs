using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>A piece of the sheet's division: a block, or a row or column of further cells. Asked first how much room it needs, then given a box.</summary>
internal abstract class Cell(double minWidth, double minHeight, bool holdsTitle = false)
{
    /// <summary>Least free distance between neighbours and to the frame, millimetres.</summary>
    public const double Gap = 5;

    /// <summary>A block's area with half the gap round it: what it takes of the sheet.</summary>
    public static double AreaWithGap(double width, double height) => (width + Gap) * (height + Gap);

    public double MinWidth { get; } = minWidth;

    public double MinHeight { get; } = minHeight;

    /// <summary>The title block is in it: it must get the lower right corner of the box it stands in.</summary>
    public bool HoldsTitle { get; } = holdsTitle;

    public abstract void Place(Box2D area, List<PlacedBlock> placed);
}

/// <summary>Room in which nothing is placed: the title block's, which is drawn with the frame, or that of a block not yet made.</summary>
internal sealed class RoomCell(double width, double height, bool holdsTitle = false) : Cell(width, height, holdsTitle)
{
    public override void Place(Box2D area, List<PlacedBlock> placed)
    {
    }
}

/// <summary>One block, in the middle of its area.</summary>
internal sealed class BlockCell(PaperBlock block) : Cell(block.Bounds.Width, block.Bounds.Height)
{
    public override void Place(Box2D area, List<PlacedBlock> placed) =>
        placed.Add(new PlacedBlock(block, area.Centre - block.Bounds.Centre));
}

/// <summary>Views side by side with their origins on one level, as projection demands; the spare width is shared evenly.</summary>
internal sealed class ProjectedRow(IReadOnlyList<PaperBlock> blocks)
    : Cell(blocks.Sum(b => b.Bounds.Width) + ((blocks.Count - 1) * Gap), blocks.Max(b => b.Bounds.MaxY) - blocks.Min(b => b.Bounds.MinY))
{
    private readonly double _middle = (blocks.Min(b => b.Bounds.MinY) + blocks.Max(b => b.Bounds.MaxY)) / 2;

    public override void Place(Box2D area, List<PlacedBlock> placed)
    {
        double spare = (area.Width - MinWidth) / (blocks.Count + 1);
        double level = area.Centre.Y - _middle;
        double x = area.MinX + spare;
        foreach (PaperBlock block in blocks)
        {
            placed.Add(new PlacedBlock(block, new Vector2D(x - block.Bounds.MinX, level)));
            x += block.Bounds.Width + Gap + spare;
        }
    }
}

/// <summary>Cells one below the other (first on top) or side by side; room beyond the gaps is shared evenly between and around them. The title block's cell comes last and reaches to the corner.</summary>
internal sealed class StackCell : Cell
{
    private readonly Cell[] _cells;

    public StackCell(bool vertical, params Cell[] cells)
        : base(WidthOf(vertical, cells), HeightOf(vertical, cells), cells[^1].HoldsTitle)
    {
        IsVertical = vertical;
        _cells = cells;
    }

    public bool IsVertical { get; }

    /// <summary>One more cell before another, or before the cells of a stack the same way: then all share the room alike.</summary>
    public static StackCell Before(bool vertical, Cell first, Cell rest) =>
        rest is StackCell stack && stack.IsVertical == vertical ? new(vertical, [first, .. stack._cells]) : new(vertical, first, rest);

    public override void Place(Box2D area, List<PlacedBlock> placed)
    {
        double spare = (IsVertical ? area.Height - MinHeight : area.Width - MinWidth) / (HoldsTitle ? _cells.Length : _cells.Length + 1);
        double at = IsVertical ? area.MaxY - spare : area.MinX + spare;
        foreach (Cell cell in _cells)
        {
            if (IsVertical)
            {
                double low = cell.HoldsTitle ? area.MinY : at - cell.MinHeight;
                cell.Place(new Box2D(area.MinX, low, area.MaxX, at), placed);
                at -= cell.MinHeight + Gap + spare;
            }
            else
            {
                double right = cell.HoldsTitle ? area.MaxX : at + cell.MinWidth;
                cell.Place(new Box2D(at, area.MinY, right, area.MaxY), placed);
                at += cell.MinWidth + Gap + spare;
            }
        }
    }

    private static double WidthOf(bool vertical, Cell[] cells)
    {
        double most = 0, sum = 0;
        foreach (Cell cell in cells)
            (most, sum) = (Math.Max(most, cell.MinWidth), sum + cell.MinWidth);
        return vertical ? most : sum + ((cells.Length - 1) * Gap);
    }

    private static double HeightOf(bool vertical, Cell[] cells)
    {
        double most = 0, sum = 0;
        foreach (Cell cell in cells)
            (most, sum) = (Math.Max(most, cell.MinHeight), sum + cell.MinHeight);
        return vertical ? sum + ((cells.Length - 1) * Gap) : most;
    }
}
