using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>General tolerances for angles, by the length of the angle's shorter side.</summary>
public static class Iso2768Angles
{
    public static StandardSource Source { get; } = new(
        "General tolerances for angles", "ISO 2768-1", "1989", "table 3", Certainty.Solid, "two sources agree on every cell");

    /// <summary>Rows of the shorter side over, up to (mm); plus or minus arc minutes of f m c v.</summary>
    private static readonly ImmutableArray<Row> _rows =
    [
        new(0, 10, [60, 60, 90, 180]),
        new(10, 50, [30, 30, 60, 120]),
        new(50, 120, [20, 20, 30, 60]),
        new(120, 400, [10, 10, 15, 30]),
        new(400, double.PositiveInfinity, [5, 5, 10, 20]),
    ];

    /// <summary>The plus-or-minus value.</summary>
    public static Answer<Angle> PlusMinus(GeneralToleranceClass toleranceClass, Length shorterSide) =>
        SizeSteps.Find(_rows, shorterSide, "general tolerances of angles")
            .Map(row => Angle.FromDegrees(row.Minutes[(int)toleranceClass] / 60));

    private sealed record Row(double OverMm, double UpToMm, ImmutableArray<double> Minutes) : ISizeStep;
}
