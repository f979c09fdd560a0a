using System.Collections.Immutable;
using LeverDraw.Specimens.Measuring;

namespace LeverDraw.Specimens.Readings;

/// <summary>What ties with other sizes of the specimen did to a value.</summary>
internal enum TieEffect
{
    None,

    /// <summary>It was read, and moved so that the sizes agree.</summary>
    Adjusted,

    /// <summary>It follows from others alone: it was not read, or only at a worn place where an unworn one tells it.</summary>
    Told,
}

/// <summary>What repeated readings of one size on one specimen come to: the witness readings if there are any, else the worn ones.</summary>
/// <param name="Own">Standard uncertainty that this value has for itself: repeats and display.</param>
/// <param name="Common">Standard uncertainty that it shares with others of the same instrument.</param>
internal sealed record SpecimenValue(string Specimen, double Value, bool IsWorn, double Own, double Common, int Readings)
{
    /// <summary>Of the display or the set of gauges; <see cref="Own"/> has it too, as an even scatter.</summary>
    public double Step { get; init; }

    /// <summary>Name of the instrument whose error <see cref="Common"/> is: the least exact one, where several were used.</summary>
    public string Instrument { get; init; } = string.Empty;

    public TieEffect Ties { get; init; }

    /// <param name="readings">Of one size on one specimen, at least one; all count.</param>
    public static SpecimenValue Of(ImmutableArray<Reading> readings)
    {
        Measurand measurand = readings[0].Measurand;
        bool wears = measurand.Wear != WearSide.None;
        Reading[] witness = [.. readings.Where(r => r.At == ReadAt.Witness)];
        Reading[] used = wears && witness.Length > 0 ? witness : [.. readings];
        bool worn = wears && witness.Length == 0;
        bool angle = measurand.Kind == ReadingKind.Angle;
        double[] values = [.. used.Select(r => r.Corrected)];
        Reading leastExact = used.MaxBy(Variance)!;
        double common = Math.Sqrt(Variance(leastExact));
        // Repeating takes no step away: the same gauge fits again.
        double step = used.Max(r => r.Instrument.Rounding(angle));
        double range = values.Max() - values.Min();
        // Worn readings further apart than the instrument can err are different spots: the least worn of them says most, and a mean would say nothing.
        double value = worn && range > 2 * Math.Sqrt(3) * common
            ? measurand.Wear == WearSide.Smaller ? values.Max() : values.Min()
            : values.Average();
        return new SpecimenValue(readings[0].Specimen, value, worn, Math.Sqrt(Square(step) + (Repeats(values) / values.Length)), common, used.Length) { Step = Math.Sqrt(12) * step, Instrument = leastExact.Instrument.Name };

        double Variance(Reading r) => Square(r.Instrument.Common(angle, r.Value)) + Square(r.OfCorrection);
    }

    /// <summary>Variance of one reading from its repeats, s² with n − 1 (GUM 4.2.2); nothing for a single one.</summary>
    private static double Repeats(double[] values)
    {
        if (values.Length < 2)
            return 0;
        double mean = values.Average();
        return values.Sum(v => Square(v - mean)) / (values.Length - 1);
    }

    private static double Square(double x) => x * x;
}
