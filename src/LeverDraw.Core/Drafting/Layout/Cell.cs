using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>A piece of the sheet's division: a block, or a row or column of further cells. Asked first how much room it needs, then given a box.</summary>
internal abstract class Cell
{
    /// <summary>Least free distance between neighbours and to the frame, millimetres.</summary>
    public const double Gap = 5;

    public abstract double MinWidth { get; }

    public abstract double MinHeight { get; }

    public abstract void Place(Box2D area, List<PlacedBlock> placed);
}

/// <summary>One block, in the middle of its area.</summary>
internal sealed class BlockCell(PaperBlock block) : Cell
{
    public override double MinWidth => block.Bounds.Width;

    public override double MinHeight => block.Bounds.Height;

    public override void Place(Box2D area, List<PlacedBlock> placed) =>
        placed.Add(new PlacedBlock(block, area.Centre - block.Bounds.Centre));
}

/// <summary>Views side by side with their origins on one level, as projection demands; the spare width is shared evenly.</summary>
internal sealed class ProjectedRow(IReadOnlyList<PaperBlock> blocks) : Cell
{
    private double Low => blocks.Min(b => b.Bounds.MinY);

    private double High => blocks.Max(b => b.Bounds.MaxY);

    public override double MinWidth => blocks.Sum(b => b.Bounds.Width) + ((blocks.Count - 1) * Gap);

    public override double MinHeight => High - Low;

    public override void Place(Box2D area, List<PlacedBlock> placed)
    {
        double spare = (area.Width - MinWidth) / (blocks.Count + 1);
        double level = area.Centre.Y - ((Low + High) / 2);
        double x = area.MinX + spare;
        foreach (PaperBlock block in blocks)
        {
            placed.Add(new PlacedBlock(block, new Vector2D(x - block.Bounds.MinX, level)));
            x += block.Bounds.Width + Gap + spare;
        }
    }
}

/// <summary>Cells one below the other (first on top) or side by side; room beyond the gaps is shared evenly between and around them.</summary>
internal sealed class StackCell(bool vertical, IReadOnlyList<Cell> cells) : Cell
{
    public override double MinWidth => cells.Count == 0 ? 0 : vertical ? cells.Max(c => c.MinWidth) : cells.Sum(c => c.MinWidth) + ((cells.Count - 1) * Gap);

    public override double MinHeight => cells.Count == 0 ? 0 : vertical ? cells.Sum(c => c.MinHeight) + ((cells.Count - 1) * Gap) : cells.Max(c => c.MinHeight);

    public override void Place(Box2D area, List<PlacedBlock> placed)
    {
        double spare = (vertical ? area.Height - MinHeight : area.Width - MinWidth) / (cells.Count + 1);
        double at = vertical ? area.MaxY - spare : area.MinX + spare;
        foreach (Cell cell in cells)
        {
            if (vertical)
            {
                at -= cell.MinHeight;
                cell.Place(new Box2D(area.MinX, at, area.MaxX, at + cell.MinHeight), placed);
                at -= Gap + spare;
            }
            else
            {
                cell.Place(new Box2D(at, area.MinY, at + cell.MinWidth, area.MaxY), placed);
                at += cell.MinWidth + Gap + spare;
            }
        }
    }
}
