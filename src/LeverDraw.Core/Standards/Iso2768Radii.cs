using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>General tolerances for broken edges: external radii and chamfer heights.</summary>
public static class Iso2768Radii
{
    public static StandardSource Source { get; } = new(
        "General tolerances for radii and chamfers", "ISO 2768-1", "1989", "table 2", Certainty.Mixed,
        "three sources agree to 30 mm; above, two that follow a national table double the values and are not followed");

    /// <summary>Rows over, up to (mm), the first from its lower end on; plus or minus mm of f m c v.</summary>
    private static readonly ImmutableArray<Row> _rows =
    [
        new(0.5, 3, [0.2, 0.2, 0.4, 0.4]),
        new(3, 6, [0.5, 0.5, 1, 1]),
        new(6, double.PositiveInfinity, [1, 1, 2, 2]),
    ];

    /// <summary>The plus-or-minus value for a radius or chamfer height of 0.5 mm or more.</summary>
    public static Answer<Length> PlusMinus(GeneralToleranceClass toleranceClass, Length nominal) =>
        SizeSteps.Find(_rows, nominal, "general tolerances of radii and chamfers", lowerEndBelongs: true)
            .Map(row => Length.FromMillimetres(row.Values[(int)toleranceClass]));

    private sealed record Row(double OverMm, double UpToMm, ImmutableArray<double> Values) : ISizeStep;
}
