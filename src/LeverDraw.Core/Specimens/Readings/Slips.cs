using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Specimens.Measuring;

namespace LeverDraw.Specimens.Readings;

/// <summary>A slip of the pen: the factor by which it spoils a value, how the spoilt value compares, and what mends it.</summary>
internal readonly record struct Slip(double Factor, string Compared, string Divided);

/// <summary>Readings that are ten or 25.4 times off the rest.</summary>
internal static class Slips
{
    /// <summary>How far the mended value may be off the others' median, as a factor: survivors of all eras differ by less.</summary>
    private const double Near = 1.45;

    public static ImmutableArray<Slip> All { get; } =
    [
        new(10, "ten times as large", "a tenth of it"),
        new(0.1, "a tenth as large", "ten times it"),
        new(Units.Length.MillimetresPerInch, "25.4 times as large", "it divided by 25.4 (inches taken twice)"),
        new(1 / Units.Length.MillimetresPerInch, "25.4 times smaller", "25.4 times it (inches read as millimetres)"),
    ];

    /// <summary>Marks and tells every slip; a reading is compared with the median of all of its size, of two with the other: then either may be the slip.</summary>
    public static ImmutableArray<Reading> Marked(ImmutableArray<Reading> readings, List<Diagnostic> told)
    {
        return [.. readings.Select(reading =>
        {
            if (reading.Measurand.Kind is not (ReadingKind.Size or ReadingKind.Angle) || reading.Value <= 0)
                return reading;
            double[] all = [.. readings.Where(r => r.Measurand == reading.Measurand).Select(r => r.Value).Order()];
            double middle = all.Length == 2 ? all[0] + all[1] - reading.Value : all[all.Length / 2];
            if (middle <= 0)
                return reading;
            Slip slip = All.FirstOrDefault(s => Math.Abs(Math.Log(reading.Value / s.Factor / middle)) < Math.Log(Near));
            if (slip.Factor == 0)
                return reading;
            Measurand size = reading.Measurand;
            told.Add(DiagnosticCatalogue.ReadingSlip.At(reading.Position, size.Name, size.Name, size.Text(reading.Value, 3), slip.Compared, size.Text(middle, 3), size.Text(reading.Value / slip.Factor, 3)));
            return reading with { IsSlip = true };
        })];
    }
}
