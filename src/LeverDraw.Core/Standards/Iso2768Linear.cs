using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>General tolerances for lengths and diameters without a tolerance of their own.</summary>
public static class Iso2768Linear
{
    public static StandardSource Source { get; } = new(
        "General tolerances for linear sizes", "ISO 2768-1", "1989", "table 1", Certainty.Solid,
        "three sources agree on every cell; one prints class f above 2000 mm and class v below 3 mm too, left out here; an older national table has smaller class c values below 6 mm; part 1 was still in force in September 2026 with a successor announced, part 2 was withdrawn in 2021");

    /// <summary>Rows over, up to (mm), the first from its lower end on; plus or minus mm of f m c v.</summary>
    private static readonly ImmutableArray<Row> _rows =
    [
        new(0.5, 3, [0.05, 0.1, 0.2, double.NaN]),
        new(3, 6, [0.05, 0.1, 0.3, 0.5]),
        new(6, 30, [0.1, 0.2, 0.5, 1]),
        new(30, 120, [0.15, 0.3, 0.8, 1.5]),
        new(120, 400, [0.2, 0.5, 1.2, 2.5]),
        new(400, 1000, [0.3, 0.8, 2, 4]),
        new(1000, 2000, [0.5, 1.2, 3, 6]),
        new(2000, 4000, [double.NaN, 2, 4, 8]),
    ];

    /// <summary>The plus-or-minus value. A size below 0.5 mm carries its deviation beside it, so it is refused.</summary>
    public static Answer<Length> PlusMinus(GeneralToleranceClass toleranceClass, Length nominal) =>
        SizeSteps.Find(_rows, nominal, "general tolerances", lowerEndBelongs: true).Then(row =>
        {
            double mm = row.Values[(int)toleranceClass];
            return double.IsNaN(mm)
                ? Answer<Length>.Refused(toleranceClass == GeneralToleranceClass.Fine
                    ? "class f is given up to 2000 mm"
                    : "class v is given over 3 mm")
                : Answer<Length>.Given(Length.FromMillimetres(mm));
        });

    private sealed record Row(double OverMm, double UpToMm, ImmutableArray<double> Values) : ISizeStep;
}
