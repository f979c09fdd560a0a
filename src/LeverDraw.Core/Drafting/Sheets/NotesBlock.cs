using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Sheets;

/// <summary>The notes as one tidy block: numbered, wrapped to a width, the print check bar below, the general signs beside it or, under narrow notes, over it.</summary>
public static class NotesBlock
{
    /// <summary>From the number to the text, in lettering heights.</summary>
    private const double IndentHeights = 2.4;

    private const double Pitch = 1.55, BetweenNotes = 0.35, HeadHeight = 1.4;

    /// <summary>From the last line down to the signs, in lettering heights.</summary>
    private const double SignsBelow = 1.2;

    /// <summary>Between the check bar and the signs beside it or over it.</summary>
    private const double SignGap = 5;

    public static PaperBlock Build(IReadOnlyList<string> notes, double width, double lettering, SheetUnit unit, GeneralSigns? signs = null)
    {
        var text = new NotesText(notes);
        return Build(text, text.Wrapped(WrapWidth(width, lettering)), lettering, unit, signs);
    }

    /// <summary>The width for the notes' own text, in heights of the lettering, where all has a width in millimetres.</summary>
    internal static double WrapWidth(double width, double lettering) => (width / lettering) - IndentHeights;

    internal static PaperBlock Build(NotesText text, NotesLines lines, double lettering, SheetUnit unit, GeneralSigns? signs)
    {
        double indent = IndentHeights * lettering;
        GeneralSignsShape? row = signs is null ? null : new(signs, DraftingStyle.Small with { LetteringHeight = lettering });
        double bar = CheckBar.LengthOf(unit), wide = indent + (lines.Widest * lettering);
        Vector2D signsAt = row is null ? default
            : bar + SignGap + row.Width <= wide ? new Vector2D(bar + SignGap, 0) : new Vector2D(0, CheckBar.Height + SignGap);
        double used = Math.Max(Math.Max(bar, wide), row is null ? 0 : signsAt.X + row.Width);
        double foot = Math.Max(CheckBar.Height + 3, row is null ? 0 : signsAt.Y + row.Height + Math.Max(2.5, SignsBelow * lettering));
        double head = foot + (lettering * ((Pitch * lines.Lines.Count) + (BetweenNotes * lines.Notes) + 0.4));
        return new PaperBlock(
            "notes",
            new Box2D(-1, -1, used + 1, head + (HeadHeight * lettering) + 1),
            () => Draw(text, lines, foot, head, indent, lettering, unit, row, signsAt));
    }

    private static BlockInk Draw(NotesText text, NotesLines lines, double foot, double head, double indent, double lettering, SheetUnit unit, GeneralSignsShape? row, Vector2D signsAt)
    {
        var items = ImmutableArray.CreateBuilder<PlotItem>();
        double y = foot;
        for (int i = lines.Lines.Count - 1; i >= 0; i--)
        {
            NoteLine line = lines.Lines[i];
            items.Add(StrokeLettering.Compose(text.TextOf(line), new Point2D(indent, y), lettering));
            bool isFirst = i == 0 || lines.Lines[i - 1].Note != line.Note;
            if (isFirst)
                items.Add(StrokeLettering.Compose((line.Note + 1).ToString(CultureInfo.InvariantCulture), new Point2D(0, y), lettering));
            y += Pitch * lettering;
            if (isFirst)
                y += BetweenNotes * lettering;
        }

        items.Add(StrokeLettering.Compose("NOTES", new Point2D(0, head), HeadHeight * lettering));
        items.AddRange(CheckBar.Draw(unit, new Point2D(0, 0.5), Math.Min(lettering, 2.5)));
        if (row is not null)
            items.AddRange(row.Ink(new Point2D(0, 0.5) + signsAt));
        return new BlockInk(items.ToImmutable(), []);
    }
}
