using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>Dimensional casting tolerances, grades DCTG 1 to 16.</summary>
public static class CastingTolerances
{
    public const int Finest = 1;

    public const int Coarsest = 16;

    public static StandardSource Source { get; } = new(
        "Casting tolerances DCTG 1 to 16", "ISO 8062-3", "2007", "table 2", Certainty.Solid,
        "two sources agree up to 400 mm, one above; grade 9 up to 10 mm taken as 1.5, one copy misprints 2; values are total widths");

    private const double _none = double.NaN;

    /// <summary>Rows over, up to (mm); TOTAL widths of grades 1 to 16, mm.</summary>
    private static readonly ImmutableArray<Row> _rows =
    [
        new(0, 10, [0.09, 0.13, 0.18, 0.26, 0.36, 0.52, 0.74, 1, 1.5, 2, 2.8, 4.2, _none, _none, _none, _none]),
        new(10, 16, [0.1, 0.14, 0.2, 0.28, 0.38, 0.54, 0.78, 1.1, 1.6, 2.2, 3, 4.4, _none, _none, _none, _none]),
        new(16, 25, [0.11, 0.15, 0.22, 0.3, 0.42, 0.58, 0.82, 1.2, 1.7, 2.4, 3.2, 4.6, 6, 8, 10, 12]),
        new(25, 40, [0.12, 0.17, 0.24, 0.32, 0.46, 0.64, 0.9, 1.3, 1.8, 2.6, 3.6, 5, 7, 9, 11, 14]),
        new(40, 63, [0.13, 0.18, 0.26, 0.36, 0.5, 0.7, 1, 1.4, 2, 2.8, 4, 5.6, 8, 10, 12, 16]),
        new(63, 100, [0.14, 0.2, 0.28, 0.4, 0.56, 0.78, 1.1, 1.6, 2.2, 3.2, 4.4, 6, 9, 11, 14, 18]),
        new(100, 160, [0.15, 0.22, 0.3, 0.44, 0.62, 0.88, 1.2, 1.8, 2.5, 3.6, 5, 7, 10, 12, 16, 20]),
        new(160, 250, [_none, 0.24, 0.34, 0.5, 0.7, 1, 1.4, 2, 2.8, 4, 5.6, 8, 11, 14, 18, 22]),
        new(250, 400, [_none, _none, 0.4, 0.56, 0.78, 1.1, 1.6, 2.2, 3.2, 4.4, 6.2, 9, 12, 16, 20, 25]),
        new(400, 630, [_none, _none, _none, 0.64, 0.9, 1.2, 1.8, 2.6, 3.6, 5, 7, 10, 14, 18, 22, 28]),
        new(630, 1000, [_none, _none, _none, _none, 1, 1.4, 2, 2.8, 4, 6, 8, 11, 16, 20, 25, 32]),
    ];

    /// <summary>The TOTAL width of the tolerance.</summary>
    /// <param name="nominal">Raw casting size, over 0 up to 1000 mm; not every grade is given for every size.</param>
    public static Answer<Length> TotalWidth(int grade, Length nominal)
    {
        if (grade is < Finest or > Coarsest)
            return Answer<Length>.Refused(string.Create(CultureInfo.InvariantCulture, $"the casting tolerance grades run from 1 to 16, there is no {grade}"));
        return SizeSteps.Find(_rows, nominal, "casting tolerances").Then(row =>
        {
            double mm = row.Widths[grade - 1];
            return double.IsNaN(mm)
                ? Answer<Length>.Refused(string.Create(
                    CultureInfo.InvariantCulture, $"casting tolerance grade {grade} is not given for sizes over {row.OverMm} up to {row.UpToMm} mm"))
                : Answer<Length>.Given(Length.FromMillimetres(mm));
        });
    }

    /// <summary>Plus or minus on the size: half of <see cref="TotalWidth"/>. The only place that halves.</summary>
    public static Answer<Length> PlusMinus(int grade, Length nominal) => TotalWidth(grade, nominal).Map(width => width / 2);

    /// <summary>The grade of a wall thickness: one coarser than the casting's other sizes, at most 16 (one source).</summary>
    public static int WallGrade(int grade) => Math.Min(grade + 1, Coarsest);

    private sealed record Row(double OverMm, double UpToMm, ImmutableArray<double> Widths) : ISizeStep;
}
