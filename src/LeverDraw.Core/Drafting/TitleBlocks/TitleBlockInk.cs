using System.Collections.Immutable;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.TitleBlocks;

/// <summary>Draws the title block: five rows of cells, six with a flag, each with a small caption over its entry.</summary>
public static class TitleBlockInk
{
    /// <summary>Greatest width by ISO 7200 (reference 10b, from memory).</summary>
    public const double FullWidth = 180;

    public const double RowHeight = 8.5;

    /// <summary>Without a flag.</summary>
    public const int Rows = 5;

    public static int RowsOf(TitleBlock block) => block.Flag.Length > 0 ? Rows + 1 : Rows;

    private const double CaptionHeight = 1.8;

    /// <summary>From the top of a cell down to its caption's baseline.</summary>
    private const double CaptionDrop = CaptionHeight + 0.6;

    /// <summary>Where the projection symbol's cell begins, in the fourth row from below.</summary>
    private const double SymbolX = 156;

    /// <summary>Entries that are too long for their cells even in the smallest lettering.</summary>
    public static IEnumerable<string> TooLong(TitleBlock block, double width) =>
        Cells(block, "50:1", "tabloid").Where(c => Fit(c, c.Width * width / FullWidth) is null).Select(c => c.Caption);

    /// <param name="box">As wide as the block is to be and <see cref="RowsOf"/> rows high.</param>
    public static ImmutableArray<PlotItem> Draw(TitleBlock block, string scale, string paper, ProjectionMethod projection, Box2D box)
    {
        var items = ImmutableArray.CreateBuilder<PlotItem>();
        double stretch = box.Width / FullWidth;
        void Line(double x0, double y0, double x1, double y1) =>
            items.Add(new PlotStroke(LineRole.TitleBlock, new LineEdge(new Point2D(x0, y0), new Point2D(x1, y1))));

        Line(box.MinX, box.MaxY, box.MaxX, box.MaxY);
        Line(box.MinX, box.MinY, box.MinX, box.MaxY);
        foreach (TitleCell cell in Cells(block, scale, paper))
        {
            double x0 = box.MinX + (cell.X * stretch);
            double width = cell.Width * stretch;
            double y0 = box.MinY + (cell.Row * RowHeight);
            double y1 = y0 + (cell.RowSpan * RowHeight);
            if (cell.X > 0)
                Line(x0, y0, x0, y1);
            if (cell.Row > 0)
                Line(x0, y0, x0 + width, y0);
            items.Add(StrokeLettering.Compose(cell.Caption, new Point2D(x0 + 1, y1 - CaptionDrop), CaptionHeight));
            if (cell.Entry.Length == 0)
                continue;
            // One that is too long was told before; drawn all the same it shows where.
            TitleEntry entry = Fit(cell, width) ?? new TitleEntry([(cell.Entry, 1.4)], 1.8);
            foreach ((string line, double baseline) in entry.Lines)
                items.Add(StrokeLettering.Compose(line, new Point2D(x0 + 1.5, y0 + baseline), entry.Height));
        }

        var room = new Box2D(box.MinX + (SymbolX * stretch), box.MinY + (3 * RowHeight), box.MaxX, box.MinY + (4 * RowHeight));
        Line(room.MinX, room.MinY, room.MinX, room.MaxY);
        Line(room.MinX, room.MinY, room.MaxX, room.MinY);
        items.AddRange(ProjectionSymbol.Draw(projection, room.Centre));
        return items.ToImmutable();
    }

    private static IEnumerable<TitleCell> Cells(TitleBlock b, string scale, string paper)
    {
        if (b.Flag.Length > 0)
        {
            yield return new(5, 1, 0, 150, "CONTRACTION", b.Flag);
            yield return new(5, 1, 150, 30, "QUANTITY", b.Quantity);
        }

        yield return new(4, 1, 0, 70, "GENERAL TOLERANCES", b.GeneralTolerance, 2.5);
        yield return new(4, 1, 70, 65, "MATERIAL", b.Material, 2.5);
        yield return new(4, 1, 135, 45, "PROCESS", b.Process, 2.5);
        yield return new(3, 1, 0, 45, "DRAWN BY", b.Creator, 2.5);
        yield return new(3, 1, 45, 45, "APPROVED BY", b.Approver, 2.5);
        yield return new(3, 1, 90, 26, "DATE OF ISSUE", b.Date, 2.5);
        yield return new(3, 1, 116, 20, "DIMENSIONS IN", b.Units, 2.5);
        yield return new(3, 1, 136, 20, "SCALE", scale, 3.5);
        yield return new(1, 2, 0, 70, "LEGAL OWNER", b.Owner, 3.5);
        yield return new(2, 1, 70, 110, "TITLE", b.Title, 3.5);
        yield return new(1, 1, 70, 110, "SUPPLEMENTARY TITLE", b.SupplementaryTitle, 2.5);
        yield return new(0, 1, 0, 70, "DOCUMENT TYPE", b.DocumentType, 2.5);
        yield return new(0, 1, 70, 50, "DRAWING NUMBER", b.DrawingNumber, 3.5);
        yield return new(0, 1, 120, 14, "REVISION", b.Revision, 3.5);
        yield return new(0, 1, 134, 22, "PAPER", paper, 3.5);
        yield return new(0, 1, 156, 24, "SHEET", b.Sheet, 3.5);
    }

    private static TitleEntry? Fit(TitleCell cell, double width) =>
        TitleEntry.Fit(cell.Entry, width, (cell.RowSpan * RowHeight) - CaptionDrop - Pens.LetteringWidth(CaptionHeight) / 2, cell.Largest);

    /// <summary>Row 0 is the lowest; x and width for a block 180 wide.</summary>
    private sealed record TitleCell(int Row, int RowSpan, double X, double Width, string Caption, string Entry, double Largest = 3.5);
}
