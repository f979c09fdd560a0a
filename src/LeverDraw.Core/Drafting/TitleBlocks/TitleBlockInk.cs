using System.Collections.Immutable;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.TitleBlocks;

/// <summary>Draws the title block: five rows of cells, each with a small caption over its entry.</summary>
public static class TitleBlockInk
{
    /// <summary>Greatest width by ISO 7200 (reference 10b, from memory).</summary>
    public const double FullWidth = 180;

    public const double RowHeight = 8.5;

    public const int Rows = 5;

    private const double CaptionHeight = 1.8;

    /// <summary>From line to line where an entry takes two.</summary>
    private const double TightPitch = 2.95;

    /// <summary>Where the projection symbol's cell begins, in the fourth row from below.</summary>
    private const double SymbolX = 156;

    private static readonly double[] EntryHeights = [3.5, 2.5, 1.8];

    /// <summary>Entries that are too long for their cells even in the smallest lettering.</summary>
    public static IEnumerable<string> TooLong(TitleBlock block, double width) =>
        Cells(block, "50:1", "tabloid").Where(c => Lines(c.Entry, c.Width * width / FullWidth, c.Largest) is null).Select(c => c.Caption);

    /// <param name="box">As wide as the block is to be and <see cref="Rows"/> rows high.</param>
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
            items.Add(StrokeLettering.Compose(cell.Caption, new Point2D(x0 + 1, y1 - 0.6 - CaptionHeight), CaptionHeight));
            if (cell.Entry.Length == 0)
                continue;
            (string[] lines, double height) = Lines(cell.Entry, width, cell.Largest) ?? ([cell.Entry], EntryHeights[^1]);
            double foot = lines.Length > 1 ? 0.8 : 1.4;
            for (int i = 0; i < lines.Length; i++)
                items.Add(StrokeLettering.Compose(lines[i], new Point2D(x0 + 1.5, y0 + foot + ((lines.Length - 1 - i) * TightPitch)), height));
        }

        var room = new Box2D(box.MinX + (SymbolX * stretch), box.MinY + (3 * RowHeight), box.MaxX, box.MinY + (4 * RowHeight));
        Line(room.MinX, room.MinY, room.MinX, room.MaxY);
        Line(room.MinX, room.MinY, room.MaxX, room.MinY);
        items.AddRange(ProjectionSymbol.Draw(projection, room.Centre));
        return items.ToImmutable();
    }

    private static IEnumerable<TitleCell> Cells(TitleBlock b, string scale, string paper)
    {
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

    /// <summary>The entry on one line in the largest lettering that fits, or on two in the smallest; null when even that is too long.</summary>
    private static (string[] Lines, double Height)? Lines(string entry, double width, double largest)
    {
        double room = width - 2.5;
        foreach (double height in EntryHeights)
        {
            if (height <= largest && (entry.Length == 0 || StrokeLettering.WidthOf(entry, height, stackFractions: false) <= room))
                return ([entry], height);
        }

        double smallest = EntryHeights[^1];
        for (int at = entry.LastIndexOf(' '); at > 0; at = entry.LastIndexOf(' ', at - 1))
        {
            if (StrokeLettering.WidthOf(entry[..at], smallest) <= room)
                return StrokeLettering.WidthOf(entry[(at + 1)..], smallest) <= room ? ([entry[..at], entry[(at + 1)..]], smallest) : null;
        }

        return null;
    }

    /// <summary>Row 0 is the lowest; x and width for a block 180 wide.</summary>
    private sealed record TitleCell(int Row, int RowSpan, double X, double Width, string Caption, string Entry, double Largest = 3.5);
}
