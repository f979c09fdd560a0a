using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>Required machining allowances of castings, grades A to K (no I): least stock per machined face.</summary>
public static class RequiredMachiningAllowances
{
    private const string Letters = "ABCDEFGHJK";

    public static StandardSource Source { get; } = new(
        "Required machining allowances, grades A to K", "ISO 8062-3", "2007", "", Certainty.Mixed,
        "grades E to J: two sources; A to D: one; K up to 63 mm is 1.4 and 2 in one source (held), 2 and 3 in the other");

    /// <summary>Rows of the casting's largest finished size over, up to (mm); allowances of A to K, mm.</summary>
    private static readonly ImmutableArray<Row> _rows =
    [
        new(0, 40, [0.1, 0.1, 0.2, 0.3, 0.4, 0.5, 0.5, 0.7, 1, 1.4]),
        new(40, 63, [0.1, 0.2, 0.3, 0.3, 0.4, 0.5, 0.7, 1, 1.4, 2]),
        new(63, 100, [0.2, 0.3, 0.4, 0.5, 0.7, 1, 1.4, 2, 2.8, 4]),
        new(100, 160, [0.3, 0.4, 0.5, 0.8, 1.1, 1.5, 2.2, 3, 4, 6]),
        new(160, 250, [0.3, 0.5, 0.7, 1, 1.4, 2, 2.8, 4, 5.5, 8]),
        new(250, 400, [0.4, 0.7, 0.9, 1.3, 1.8, 2.5, 3.5, 5, 7, 10]),
        new(400, 630, [0.5, 0.8, 1.1, 1.5, 2.2, 3, 4, 6, 9, 12]),
        new(630, 1000, [0.6, 0.9, 1.2, 1.8, 2.5, 3.5, 5, 7, 10, 14]),
    ];

    /// <summary>One value serves the whole casting, chosen by the largest overall size of the finished part.</summary>
    /// <param name="grade">A to H, J or K.</param>
    /// <param name="largestSize">Over 0 up to 1000 mm.</param>
    public static Answer<Length> PerFace(char grade, Length largestSize)
    {
        int at = Letters.IndexOf(grade, StringComparison.Ordinal);
        return at < 0
            ? Answer<Length>.Refused("the machining allowance grades are A to H, J and K, there is no " + grade)
            : SizeSteps.Find(_rows, largestSize, "machining allowances").Map(row => Length.FromMillimetres(row.Values[at]));
    }

    private sealed record Row(double OverMm, double UpToMm, ImmutableArray<double> Values) : ISizeStep;
}
