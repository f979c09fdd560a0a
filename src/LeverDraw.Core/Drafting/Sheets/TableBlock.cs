using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Sheets;

/// <summary>A table as one tidy block: columns as wide as their widest entry, rows as high as their tallest cell, ruled throughout, the heads under a title.</summary>
public static class TableBlock
{
    /// <summary>Free room left and right of an entry, and above and below it, in lettering heights: brackets hang 0.25 h and still clear the rule.</summary>
    private const double SidePad = 0.7, RowPad = 0.65;

    /// <summary>Line pitch inside a cell, and the title's height, in lettering heights.</summary>
    private const double Pitch = 1.55, TitleHeight = 1.2;

    /// <param name="lettering">Height of entries and heads, paper millimetres.</param>
    /// <exception cref="ArgumentException">A row is not as long as the heads.</exception>
    public static PaperBlock Build(string name, SheetTable table, double lettering)
    {
        foreach (ImmutableArray<string> row in table.Rows)
        {
            if (row.Length != table.Columns.Length)
                throw new ArgumentException("Each row needs one entry per column.", nameof(table));
        }

        ImmutableArray<ImmutableArray<string>> all = [[.. table.Columns.Select(c => c.Head)], .. table.Rows];
        double[] xs = Borders(table.Columns.Length, i => all.Max(row => WidthOf(row[i], lettering)) + (2 * SidePad * lettering));
        double[] ys = Borders(all.Length, i => HeightOf(all[i], lettering));
        double top = ys[^1];
        var items = ImmutableArray.CreateBuilder<PlotItem>();
        foreach (double x in xs)
            items.Add(Rule(new Point2D(x, 0), new Point2D(x, top)));
        foreach (double y in ys)
            items.Add(Rule(new Point2D(0, top - y), new Point2D(xs[^1], top - y)));
        for (int r = 0; r < all.Length; r++)
        {
            for (int c = 0; c < table.Columns.Length; c++)
            {
                var cell = new Box2D(xs[c], top - ys[r + 1], xs[c + 1], top - ys[r]);
                items.AddRange(Entry(all[r][c], cell, r == 0 ? 0.5 : table.Columns[c].Align, lettering));
            }
        }

        double above = top, right = xs[^1];
        if (table.Title.Length > 0)
        {
            PlotText title = StrokeLettering.Compose(table.Title, new Point2D(0, top + (0.8 * lettering)), TitleHeight * lettering);
            items.Add(title);
            above = title.Anchor.Y + (TitleHeight * lettering);
            right = Math.Max(right, title.Width);
        }

        return new PaperBlock(name, new Box2D(-1, -1, right + 1, above + 1), items.ToImmutable(), []);
    }

    private static IEnumerable<PlotText> Entry(string entry, Box2D cell, double align, double lettering)
    {
        string[] lines = entry.Split('\n');
        double block = lettering * (1 + (Pitch * (lines.Length - 1)));
        for (int i = 0; i < lines.Length; i++)
        {
            if (lines[i].Length == 0)
                continue;
            double room = cell.Width - (2 * SidePad * lettering) - StrokeLettering.WidthOf(lines[i], lettering);
            double baseline = cell.Centre.Y + (block / 2) - lettering - (i * Pitch * lettering);
            yield return StrokeLettering.Compose(lines[i], new Point2D(cell.MinX + (SidePad * lettering) + (align * room), baseline), lettering);
        }
    }

    private static double WidthOf(string entry, double lettering) => entry.Split('\n').Max(line => line.Length == 0 ? 0 : StrokeLettering.WidthOf(line, lettering));

    private static double HeightOf(ImmutableArray<string> row, double lettering) =>
        lettering * ((2 * RowPad) + 1 + (Pitch * (row.Max(cell => cell.Split('\n').Length) - 1)));

    private static double[] Borders(int count, Func<int, double> size)
    {
        double[] borders = new double[count + 1];
        for (int i = 0; i < count; i++)
            borders[i + 1] = borders[i] + size(i);
        return borders;
    }

    private static PlotStroke Rule(Point2D from, Point2D to) => new(LineRole.Table, new LineEdge(from, to));
}
