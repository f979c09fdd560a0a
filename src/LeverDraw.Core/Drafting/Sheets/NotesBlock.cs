using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Sheets;

/// <summary>The notes as one tidy block: numbered, wrapped to a width, the print check bar below.</summary>
public static class NotesBlock
{
    private const double Indent = 6;

    /// <summary>Between the check bar and the signs beside it.</summary>
    private const double SignGap = 5;

    public static PaperBlock Build(IReadOnlyList<string> notes, double width, double lettering, SheetUnit unit, GeneralSigns? signs = null)
    {
        var items = ImmutableArray.CreateBuilder<PlotItem>();
        double pitch = lettering * 1.55;
        var row = signs is null ? null : new GeneralSignsShape(signs, DraftingStyle.Small with { LetteringHeight = lettering });
        double y = Math.Max(CheckBar.Height + 3, row is null ? 0 : row.Height + 2.5);
        for (int i = notes.Count - 1; i >= 0; i--)
        {
            List<string> lines = Wrap(notes[i], width - Indent, lettering);
            for (int k = lines.Count - 1; k >= 0; k--)
            {
                items.Add(StrokeLettering.Compose(lines[k], new Point2D(Indent, y), lettering));
                if (k == 0)
                    items.Add(StrokeLettering.Compose((i + 1).ToString(CultureInfo.InvariantCulture), new Point2D(0, y), lettering));
                y += pitch;
            }

            y += lettering * 0.35;
        }

        y += lettering * 0.4;
        items.Add(StrokeLettering.Compose("NOTES", new Point2D(0, y), lettering * 1.4));
        y += lettering * 1.4;
        items.AddRange(CheckBar.Draw(unit, new Point2D(0, 0.5), Math.Min(lettering, 2.5)));
        double end = CheckBar.LengthOf(unit);
        if (row is not null)
        {
            items.AddRange(row.Ink(new Point2D(end + SignGap, 0.5)));
            end += SignGap + row.Width;
        }

        double used = items.OfType<PlotText>().Max(t => t.Anchor.X + t.Width);
        return new PaperBlock("notes", new Box2D(-1, -1, Math.Max(used, end) + 1, y + 1), items.ToImmutable(), []);
    }

    private static List<string> Wrap(string text, double width, double lettering)
    {
        var lines = new List<string>();
        string line = string.Empty;
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string longer = line.Length == 0 ? word : line + " " + word;
            if (line.Length > 0 && StrokeLettering.WidthOf(longer, lettering) > width)
            {
                lines.Add(line);
                longer = word;
            }

            line = longer;
        }

        lines.Add(line);
        return lines;
    }
}
