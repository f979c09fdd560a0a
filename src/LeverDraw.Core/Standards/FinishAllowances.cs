using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

public enum FinishFace
{
    Bore,

    /// <summary>A face in the drag or on the side.</summary>
    Surface,

    /// <summary>A face on top as cast, where dirt gathers.</summary>
    Cope,
}

/// <summary>Stock left for machining, per face, by metal and size: the inch shop tables.</summary>
public static class FinishAllowances
{
    public static StandardSource Source { get; } = new(
        "Stock for machining, inch tables", "Course notes, foundry chart, textbook", "", "", Certainty.Mixed,
        "cast-iron rows: one source and memory; small brass and iron 1/16 to 1/8 in: two; the course notes' first non-ferrous row is misprinted in mm and read as 3 in; draft not included");

    private const double _none = double.NaN;

    /// <summary>Metal; casting size over, up to, inches; stock in inches on a bore, a surface, a cope face; kind of publication.</summary>
    private static readonly ImmutableArray<Row> _rows =
    [
        new("cast iron", 0, 6, 1.0 / 8, 3.0 / 32, 3.0 / 16, "course notes"),
        new("cast iron", 6, 12, 1.0 / 8, 1.0 / 8, 1.0 / 4, "course notes"),
        new("cast iron", 12, 20, 3.0 / 16, 5.0 / 32, 1.0 / 4, "course notes"),
        new("cast iron", 20, 36, 1.0 / 4, 3.0 / 16, 1.0 / 4, "course notes"),
        new("cast iron", 36, 60, 5.0 / 16, 3.0 / 16, 5.0 / 16, "course notes"),
        new("cast steel", 0, 6, 1.0 / 8, 1.0 / 8, 1.0 / 4, "course notes"),
        new("cast steel", 6, 12, 1.0 / 4, 3.0 / 16, 1.0 / 4, "course notes"),
        new("cast steel", 12, 20, 1.0 / 4, 1.0 / 4, 5.0 / 16, "course notes"),
        new("cast steel", 20, 36, 9.0 / 32, 1.0 / 4, 3.0 / 8, "course notes"),
        new("cast steel", 36, 60, 5.0 / 16, 1.0 / 4, 1.0 / 2, "course notes"),
        new("non-ferrous", 0, 3, 1.0 / 16, 1.0 / 16, 1.0 / 16, "course notes"),
        new("non-ferrous", 3, 6, 3.0 / 32, 1.0 / 16, 3.0 / 32, "course notes"),
        new("non-ferrous", 6, 12, 3.0 / 32, 1.0 / 16, 1.0 / 8, "course notes"),
        new("non-ferrous", 12, 20, 1.0 / 8, 3.0 / 32, 1.0 / 8, "course notes"),
        new("non-ferrous", 20, 36, 1.0 / 8, 1.0 / 8, 5.0 / 32, "course notes"),
        new("non-ferrous", 36, 60, 5.0 / 32, 1.0 / 8, 3.0 / 16, "course notes"),
        new("iron (foundry chart)", 0, 8, _none, 1.0 / 8, 5.0 / 32, "foundry chart"),
        new("iron (foundry chart)", 8, 14, _none, 5.0 / 32, 3.0 / 16, "foundry chart"),
        new("iron (foundry chart)", 14, 18, _none, 3.0 / 16, 1.0 / 4, "foundry chart"),
        new("iron (foundry chart)", 18, 24, _none, 1.0 / 4, 5.0 / 16, "foundry chart"),
        new("iron (foundry chart)", 24, 30, _none, 5.0 / 16, 3.0 / 8, "foundry chart"),
        new("iron (foundry chart)", 30, 36, _none, 3.0 / 8, 1.0 / 2, "foundry chart"),
        new("small iron or brass castings", 0, double.PositiveInfinity, _none, 1.0 / 16, 1.0 / 8, "textbook"),
        new("sand castings, mainly iron or steel", 0, double.PositiveInfinity, _none, 1.0 / 8, _none, "foundry page"),
    ];

    /// <summary>The metals held.</summary>
    public static ImmutableArray<string> Metals { get; } = [.. _rows.Select(row => row.Metal).Distinct(StringComparer.Ordinal)];

    /// <param name="size">Largest size of the casting.</param>
    public static Answer<Length> Stock(string metal, FinishFace face, Length size)
    {
        ImmutableArray<Row> rows = [.. _rows.Where(row => string.Equals(row.Metal, metal, StringComparison.OrdinalIgnoreCase))];
        if (rows.IsEmpty)
            return Answer<Length>.Refused("stock is held for " + string.Join("; ", Metals) + ", not \"" + metal + "\"");
        return SizeSteps.Find(rows, size, "stocks for machining").Then(row =>
        {
            double inches = face switch { FinishFace.Bore => row.Bore, FinishFace.Cope => row.Cope, _ => row.Surface };
            return double.IsNaN(inches)
                ? Answer<Length>.Refused("this table gives no stock for that face")
                : Answer<Length>.Given(Length.FromInches(inches));
        });
    }

    private sealed record Row(string Metal, double OverInches, double UpToInches, double Bore, double Surface, double Cope, string Kind) : ISizeStep
    {
        public double OverMm => SizeSteps.ToBorder(Length.FromInches(OverInches));

        public double UpToMm => double.IsInfinity(UpToInches) ? UpToInches : SizeSteps.ToBorder(Length.FromInches(UpToInches));
    }
}
