using System.Collections.Immutable;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.TitleBlocks;

/// <summary>An entry fitted into its cell below the caption: one line in the largest lettering that fits, or two in the smallest.</summary>
/// <param name="Lines">From the top; each with its baseline above the cell's lower line, millimetres.</param>
internal sealed record TitleEntry(ImmutableArray<(string Text, double Baseline)> Lines, double Height)
{
    private const double OneLineFoot = 1.4, TwoLinesFoot = 0.8;

    /// <summary>From line to line where an entry takes two.</summary>
    private const double TightPitch = 2.95;

    /// <summary>Free room between ink and ink, and between ink and the line below.</summary>
    private const double Clear = 0.2, ClearOfLine = 0.15;

    private const double Margins = 2.5;

    private static readonly double[] Heights = [3.5, 2.5, 1.8];

    /// <param name="roof">Where the caption's ink begins, above the cell's lower line.</param>
    /// <returns>Null when it is too long, or its accents and tails too tall, even in the smallest lettering.</returns>
    public static TitleEntry? Fit(string entry, double width, double roof, double largest)
    {
        double room = width - Margins;
        foreach (double height in Heights.Where(h => h <= largest))
        {
            if (entry.Length == 0)
                return new TitleEntry([], height);
            if (StrokeLettering.WidthOf(entry, height, stackFractions: false) <= room && Seat([entry], height, roof, OneLineFoot) is { } seated)
                return seated;
        }

        double smallest = Heights[^1];
        for (int at = entry.LastIndexOf(' '); at > 0; at = entry.LastIndexOf(' ', at - 1))
        {
            string first = entry[..at], second = entry[(at + 1)..];
            if (StrokeLettering.WidthOf(first, smallest) <= room)
                return StrokeLettering.WidthOf(second, smallest) <= room ? Seat([first, second], smallest, roof, TwoLinesFoot) : null;
        }

        return null;
    }

    /// <summary>At the usual height if all ink is clear there; otherwise as low as the ink allows, which accented capitals and tails may ask for.</summary>
    private static TitleEntry? Seat(ImmutableArray<string> lines, double height, double roof, double foot)
    {
        Box2D[] ink = [.. lines.Select(l => InkBox.Local(StrokeLettering.Compose(l, Point2D.Origin, height))).Select(b => b.IsEmpty ? new Box2D(0, 0, 0, 0) : b)];
        double[] usual = [.. lines.Select((_, i) => foot + ((lines.Length - 1 - i) * TightPitch))];
        double[] tight = new double[lines.Length];
        double floor = ClearOfLine;
        for (int i = lines.Length - 1; i >= 0; i--)
        {
            tight[i] = floor - ink[i].MinY;
            floor = tight[i] + ink[i].MaxY + Clear;
        }

        double[]? baselines = ((double[][])[usual, tight]).FirstOrDefault(set => IsClear(set, ink, roof));
        return baselines is null ? null : new TitleEntry([.. lines.Select((l, i) => (l, baselines[i]))], height);
    }

    private static bool IsClear(double[] baselines, Box2D[] ink, double roof)
    {
        for (int i = 0; i < baselines.Length; i++)
        {
            double below = i + 1 < baselines.Length ? baselines[i + 1] + ink[i + 1].MaxY + Clear : ClearOfLine;
            if (baselines[i] + ink[i].MinY < below - 1e-9)
                return false;
        }

        return baselines[0] + ink[0].MaxY + Clear <= roof;
    }
}
