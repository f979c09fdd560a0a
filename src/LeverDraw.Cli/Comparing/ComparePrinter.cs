using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Cli.Reporting;
using LeverDraw.Comparison;
using LeverDraw.Geometry;
using LeverDraw.Units;

namespace LeverDraw.Cli.Comparing;

/// <summary>A comparison as text in columns.</summary>
internal sealed class ComparePrinter(TextWriter to, LengthUnit unit, bool colour)
{
    /// <param name="two">The overlay, when two are compared.</param>
    public void Print(CompareInput input, ImmutableArray<ComparedRow> sizes, ImmutableArray<ComparedRow> figures, LeverComparison? two)
    {
        Lines([.. input.Variants.Select((v, i) => (string[])[CompareLetters.Of(i), v.ShortName, input.Paths[i], v.Pin is { } pin ? "with " + pin.Profile.Path : ""])]);
        to.WriteLine();
        if (sizes.IsEmpty)
            to.WriteLine("No size differs.");
        else
            Table("differs", input.Variants.Length, sizes, "matters for");
        to.WriteLine();
        Table("whole lever", input.Variants.Length, figures, "what it is");
        if (two is null)
            return;
        to.WriteLine();
        Table("overlay", 2, two.Overlay, "what it is");
        to.WriteLine();
        Deviations(two);
        string within = (Math.Ceiling(Math.Max(two.Side.Areas.Error, two.Fork.Areas.Error) * 1000) / 1000).ToString("0.###", CultureInfo.InvariantCulture);
        to.WriteLine(Paint.Quiet("B is laid on A by the " + AlignmentWords(two.Alignment) + ", moved, not turned. Areas within " + within + " mm². B less A stands under Δ.", colour));
    }

    private static string AlignmentWords(Alignment alignment) => alignment switch
    {
        Alignment.Pads => "middles of the pads",
        Alignment.Nose => "nose centres",
        _ => "pivot's axis",
    };

    private void Table(string head, int variants, ImmutableArray<ComparedRow> rows, string why)
    {
        bool two = variants == 2;
        string[] heads = [head, .. Enumerable.Range(0, variants).Select(CompareLetters.Of), "", .. two ? (string[])["Δ mm", "Δ in"] : [], why];
        Lines([heads, .. rows.Select(r => (string[])
        [
            r.Name, .. ValueText.Of(r, unit), CompareLetters.Unit(r, unit),
            .. two ? (string[])[ValueText.Delta(r, LengthUnit.Millimetre), r.Delta is null ? "" : ValueText.Delta(r, LengthUnit.Inch)] : [],
            (r.Matters is null ? "" : CompareLetters.Matters(r) + ": ") + r.Why,
        ])], [.. Enumerable.Range(1, variants), .. two ? (int[])[variants + 2, variants + 3] : []]);
    }

    private void Deviations(LeverComparison two)
    {
        foreach ((string view, ViewOverlay seen, string across) in ((string, ViewOverlay, string)[])[("side", two.Side, "n"), ("fork", two.Fork, "x")])
        {
            foreach ((string own, string other, Deviation far) in ((string, string, Deviation)[])[("A", "B", seen.AFromB), ("B", "A", seen.BFromA)])
            {
                to.WriteLine(far.Distance.Millimetres < LargestDistance.Error
                    ? $"{view} view: {own} lies on {other}."
                    : $"{view} view: {own} is at most {Text(far.Distance)} {(far.Outside ? "outside" : "inside")} {other}, at {across} {Text(far.At.X)}, z {Text(far.At.Y)}.");
            }
        }
    }

    private string Text(double millimetres) => Text(Length.FromMillimetres(millimetres));

    private string Text(Length length) => LengthText.WithUnit(length, unit, unit == LengthUnit.Inch ? 4 : 2).Replace('-', '−');

    /// <param name="numbers">Columns that stand to the right.</param>
    private void Lines(string[][] lines, params ReadOnlySpan<int> numbers)
    {
        int[] widths = [.. Enumerable.Range(0, lines[0].Length).Select(i => lines.Max(l => l[i].Length))];
        bool[] right = new bool[widths.Length];
        foreach (int column in numbers)
            right[column] = true;
        foreach (string[] line in lines)
        {
            IEnumerable<string> cells = line.Select((cell, i) => right[i] ? cell.PadLeft(widths[i]) : cell.PadRight(widths[i]));
            to.WriteLine(string.Join("  ", cells.Where((_, i) => widths[i] > 0)).TrimEnd());
        }
    }
}
