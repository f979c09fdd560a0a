using System.Globalization;
using LeverDraw.Cli.Reporting;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Cli.Remoulding;

/// <summary>The report of an original used as a pattern, as text.</summary>
internal static class RemouldPrinter
{
    public static void Print(TextWriter to, string path, PatternLever pattern, IReadOnlyDictionary<string, Length> measured, bool inches)
    {
        FoundryPlan plan = pattern.Casting.Plan;
        to.WriteLine($"{path}: an original moulded as it is, cast in {plan.Metal.Name} by {plan.Process.Name}, contraction {Rates(pattern.Rates)}");
        to.WriteLine();
        CopiedSize[] rows = [.. OriginalAsPattern.Table(pattern, size => measured.TryGetValue(size.Field.Name, out Length read) ? read : size.Finished)];
        string[][] cells =
        [
            ["size", "original", "comes out", "short by", "pad each face"],
            .. rows.Select(r => new[]
            {
                r.Size.Name + (r.Size.Group == MachinedFaces.None ? "" : ", machined"), Text(r.Original, inches), Text(r.ComesOut, inches), Text(r.Short, inches),
                Text(r.Pad, inches) + (r.Size.Kind is FoundrySizeKind.Outside or FoundrySizeKind.Inside ? "" : " in all"),
            }),
        ];
        foreach (string line in Columns.Of(cells, 1, 2, 3))
            to.WriteLine("  " + line);
        to.WriteLine();
        to.WriteLine("  Short by: what the casting misses of the finished size, before any machining. Pad: what to add to each face of the original");
        to.WriteLine("  (take off where it is negative) so that it is as large as a pattern, with the stock of machined faces.");
        to.WriteLine("  Everything shrinks about one point, holes too: fill or bush the pivot hole before moulding (common practice). Wear of the");
        to.WriteLine("  original is copied: pad it as well. For an exact copy machine the part, or make a pattern.");
    }

    private static string Rates(AxisRates rates) => rates.AreAlike
        ? ContractionText.OneIn(rates.X) + " (" + ContractionText.Percent(rates.X) + ")"
        : ContractionText.Percent(rates.X) + " along the pin, " + ContractionText.Percent(rates.N) + " square to the arms, " + ContractionText.Percent(rates.Z) + " along the arms";

    private static string Text(Length length, bool inches) => length.Millimetres < 0 ? "-" + Plain(-length, inches) : Plain(length, inches);

    private static string Plain(Length length, bool inches) => inches ? LengthText.InchDecimal(length, 3, leadingZero: true) : length.Millimetres.ToString("0.00", CultureInfo.InvariantCulture);
}
