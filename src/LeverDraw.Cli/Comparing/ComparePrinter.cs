using LeverDraw.Cli.Reporting;
using LeverDraw.Comparison;
using LeverDraw.Geometry;
using LeverDraw.Units;

namespace LeverDraw.Cli.Comparing;

/// <summary>A comparison as text in columns.</summary>
internal sealed class ComparePrinter(TextWriter to, LengthUnit unit, bool colour)
{
    public void Print(CompareResult result)
    {
        CompareInput input = result.Input;
        int variants = input.Variants.Length;
        Lines([.. input.Variants.Select((v, i) => (string[])[CompareLetters.Of(i), v.ShortName, input.Paths[i], v.Pin is { } pin ? "with " + pin.Profile.Path : ""])]);
        to.WriteLine();
        if (result.Sizes.IsEmpty)
            to.WriteLine("No size differs.");
        else
            Sizes(variants, result.Sizes);
        to.WriteLine();
        Figures("whole lever", variants, result.Figures);
        if (result.Two is not { } two)
            return;
        to.WriteLine();
        Figures("overlay", 2, two.Overlay);
        to.WriteLine();
        Deviations(two);
        to.WriteLine(Paint.Quiet("B is laid on A by " + two.Alignment.Words() + ", moved, not turned. Areas within " + ValueText.AreaError(two) + ". Under Δ stands B less A, of the figures shown.", colour));
    }

    private void Sizes(int variants, IEnumerable<ComparedRow> rows)
    {
        bool two = variants == 2;
        Lines(
        [
            ["differs", .. Letters(variants), "", .. two ? (string[])["Δ mm", "Δ in"] : [], "matters for"],
            .. rows.Select(r => (string[])
            [
                r.Name, .. ValueText.Of(r, unit), ValueText.UnitOf(r, unit),
                .. two ? (string[])[Delta(r, LengthUnit.Millimetre), r.Delta is null ? "" : Delta(r, LengthUnit.Inch)] : [],
                CompareLetters.Matters(r) + ": " + r.Why,
            ]),
        ], [.. Enumerable.Range(1, variants), .. two ? (int[])[variants + 2, variants + 3] : []]);
    }

    /// <summary>Each row in a unit of its own.</summary>
    private void Figures(string head, int variants, IEnumerable<ComparedRow> rows)
    {
        bool two = variants == 2;
        Lines(
        [
            [head, .. Letters(variants), .. two ? (string[])["Δ"] : [], "", "what it is"],
            .. rows.Select(r => (string[])[r.Name, .. ValueText.Of(r, unit), .. two ? (string[])[Delta(r, unit)] : [], ValueText.UnitOf(r, unit), r.Why]),
        ], [.. Enumerable.Range(1, variants + (two ? 1 : 0))]);
    }

    private static IEnumerable<string> Letters(int variants) => Enumerable.Range(0, variants).Select(CompareLetters.Of);

    private string Delta(ComparedRow row, LengthUnit of) => ValueText.Delta(row, of, of == unit);

    private void Deviations(LeverComparison two)
    {
        foreach ((string view, ViewOverlay seen, string across) in ((string, ViewOverlay, string)[])[("side", two.Side, "n"), ("fork", two.Fork, "x")])
        {
            foreach ((string own, string other, Deviation far) in ((string, string, Deviation)[])[("A", "B", seen.AFromB), ("B", "A", seen.BFromA)])
            {
                to.WriteLine(far.Distance.Millimetres < LargestDistance.Error
                    ? $"{view} view: {own} lies on {other}."
                    : $"{view} view: {own} is at most {Text(far.Shown)} {(far.Outside ? "outside" : "inside")} {other}, at {across} {Text(far.At.X)}, z {Text(far.At.Y)}.");
            }
        }
    }

    private string Text(double millimetres) => Text(Length.FromMillimetres(millimetres));

    private string Text(Length length) => LengthText.WithUnit(length, unit, unit == LengthUnit.Inch ? 4 : 2).Replace('-', '−');

    /// <param name="numbers">Columns that stand to the right.</param>
    private void Lines(string[][] lines, params int[] numbers)
    {
        foreach (string line in Columns.Of(lines, numbers))
            to.WriteLine(line);
    }
}
