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

    /// <summary>The same above and below of a table set close: rows twice as high as their lettering still read easily.</summary>
    private const double CloseRowPad = 0.5;

    /// <summary>Width of a sample, and the distance of its section lines, in lettering heights: long enough for two periods of a chain line.</summary>
    private const double SampleWidth = 8, SampleHatch = 0.75;

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
        double[] xs = Borders(table.Columns.Length, i => (2 * SidePad * lettering) + (i == 0 && !table.Samples.IsEmpty
            ? SampleWidth * lettering
            : all.Max(row => WidthOf(row[i], lettering))));
        double pad = table.IsClose ? CloseRowPad : RowPad;
        double[] ys = Borders(all.Length, i => HeightOf(all[i], pad, lettering));
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

        for (int r = 0; r < table.Samples.Length; r++)
            items.AddRange(Sample(table.Samples[r], new Box2D(xs[0], top - ys[r + 2], xs[1], top - ys[r + 1]).Inflated(-SidePad * lettering / 2), lettering));
        double above = top, right = xs[^1];
        if (table.Title.Length > 0)
        {
            PlotText title = StrokeLettering.Compose(table.Title, new Point2D(0, top + (0.8 * lettering)), TitleHeight * lettering);
            items.Add(title);
            above = title.Anchor.Y + (TitleHeight * lettering);
            right = Math.Max(right, title.Width);
        }

        return new PaperBlock(name, new Box2D(-1, -1, right + 1, above + 1), items.ToImmutable(), []) { Continues = table.Continues };
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

    private static IEnumerable<PlotItem> Sample(TableSample sample, Box2D cell, double lettering)
    {
        if (sample.HatchAngle is not { } angle)
        {
            yield return new PlotStroke(sample.Role, new LineEdge(new Point2D(cell.MinX, cell.Centre.Y), new Point2D(cell.MaxX, cell.Centre.Y)));
            yield break;
        }

        Point2D[] corners = [new(cell.MinX, cell.MinY), new(cell.MaxX, cell.MinY), new(cell.MaxX, cell.MaxY), new(cell.MinX, cell.MaxY)];
        ImmutableArray<Contour> patch = [Contour.Of(corners.Select((c, i) => new LineEdge(c, corners[(i + 1) % corners.Length])))];
        double spacing = SampleHatch * lettering;
        yield return new PlotHatch(sample.Role, patch, angle, spacing, HatchLines.Across(patch, angle, spacing));
    }

    private static double WidthOf(string entry, double lettering) => entry.Split('\n').Max(line => line.Length == 0 ? 0 : StrokeLettering.WidthOf(line, lettering));

    private static double HeightOf(ImmutableArray<string> row, double pad, double lettering) =>
        lettering * ((2 * pad) + 1 + (Pitch * (row.Max(cell => cell.Split('\n').Length) - 1)));

    private static double[] Borders(int count, Func<int, double> size)
    {
        double[] borders = new double[count + 1];
        for (int i = 0; i < count; i++)
            borders[i + 1] = borders[i] + size(i);
        return borders;
    }

    private static PlotStroke Rule(Point2D from, Point2D to) => new(LineRole.Table, new LineEdge(from, to));
}
