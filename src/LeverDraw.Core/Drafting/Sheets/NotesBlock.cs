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
    /// <summary>From the number to the text, in lettering heights.</summary>
    private const double IndentHeights = 2.4;

    /// <summary>More than a blank with both its gaps ever takes, in lettering heights.</summary>
    private const double MostBlank = 1.2;

    private const double Pitch = 1.55, BetweenNotes = 0.35, HeadHeight = 1.4;

    /// <summary>Between the check bar and the signs beside it.</summary>
    private const double SignGap = 5;

    public static PaperBlock Build(IReadOnlyList<string> notes, double width, double lettering, SheetUnit unit, GeneralSigns? signs = null)
    {
        double indent = IndentHeights * lettering;
        string[][] lines = [.. notes.Select(n => Wrap(n, width - indent, lettering))];
        GeneralSignsShape? row = signs is null ? null : new(signs, DraftingStyle.Small with { LetteringHeight = lettering });
        double bar = CheckBar.LengthOf(unit) + (row is null ? 0 : SignGap + row.Width);
        double used = Math.Max(bar, indent + lines.Max(note => note.Max(line => StrokeLettering.WidthOf(line, lettering))));
        double foot = Math.Max(CheckBar.Height + 3, row is null ? 0 : row.Height + 2.5);
        double head = foot + (lettering * ((Pitch * lines.Sum(note => note.Length)) + (BetweenNotes * lines.Length) + 0.4));
        return new PaperBlock(
            "notes",
            new Box2D(-1, -1, used + 1, head + (HeadHeight * lettering) + 1),
            () => Draw(lines, foot, head, indent, lettering, unit, row));
    }

    private static BlockInk Draw(string[][] notes, double foot, double head, double indent, double lettering, SheetUnit unit, GeneralSignsShape? row)
    {
        var items = ImmutableArray.CreateBuilder<PlotItem>();
        double y = foot;
        for (int i = notes.Length - 1; i >= 0; i--)
        {
            for (int k = notes[i].Length - 1; k >= 0; k--)
            {
                items.Add(StrokeLettering.Compose(notes[i][k], new Point2D(indent, y), lettering));
                if (k == 0)
                    items.Add(StrokeLettering.Compose((i + 1).ToString(CultureInfo.InvariantCulture), new Point2D(0, y), lettering));
                y += Pitch * lettering;
            }

            y += BetweenNotes * lettering;
        }

        items.Add(StrokeLettering.Compose("NOTES", new Point2D(0, head), HeadHeight * lettering));
        items.AddRange(CheckBar.Draw(unit, new Point2D(0, 0.5), Math.Min(lettering, 2.5)));
        if (row is not null)
            items.AddRange(row.Ink(new Point2D(CheckBar.LengthOf(unit) + SignGap, 0.5)));
        return new BlockInk(items.ToImmutable(), []);
    }

    private static string[] Wrap(string text, double width, double lettering)
    {
        var lines = new List<string>();
        string line = string.Empty;
        double atMost = 0;
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            double own = StrokeLettering.WidthOf(word, lettering);
            string longer = line.Length == 0 ? word : line + " " + word;
            atMost += own + (MostBlank * lettering);
            // A line is measured only where its words by themselves do not show that it fits.
            if (line.Length > 0 && atMost > width && (atMost = StrokeLettering.WidthOf(longer, lettering)) > width)
            {
                lines.Add(line);
                longer = word;
                atMost = own;
            }

            line = longer;
        }

        lines.Add(line);
        return [.. lines];
    }
}
