using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>Standard tolerance grades IT1 to IT18 for sizes up to 500 mm.</summary>
public static class Iso286Grades
{
    public const int Finest = 1;

    public const int Coarsest = 18;

    public static StandardSource Source { get; } = new(
        "Tolerance grades IT1 to IT18", "ISO 286-1", "2010", "table 1", Certainty.Solid,
        "three independent tables agree, and the tolerance-unit formula gives the cells from IT5 up within 5 % (two cells within 10 %); IT14 up not for sizes to 1 mm: from memory");

    /// <summary>Rows over, up to (mm); widths IT1 to IT18 in µm.</summary>
    private static readonly ImmutableArray<Row> _rows =
    [
        new(0, 3, [0.8, 1.2, 2, 3, 4, 6, 10, 14, 25, 40, 60, 100, 140, 250, 400, 600, 1000, 1400]),
        new(3, 6, [1, 1.5, 2.5, 4, 5, 8, 12, 18, 30, 48, 75, 120, 180, 300, 480, 750, 1200, 1800]),
        new(6, 10, [1, 1.5, 2.5, 4, 6, 9, 15, 22, 36, 58, 90, 150, 220, 360, 580, 900, 1500, 2200]),
        new(10, 18, [1.2, 2, 3, 5, 8, 11, 18, 27, 43, 70, 110, 180, 270, 430, 700, 1100, 1800, 2700]),
        new(18, 30, [1.5, 2.5, 4, 6, 9, 13, 21, 33, 52, 84, 130, 210, 330, 520, 840, 1300, 2100, 3300]),
        new(30, 50, [1.5, 2.5, 4, 7, 11, 16, 25, 39, 62, 100, 160, 250, 390, 620, 1000, 1600, 2500, 3900]),
        new(50, 80, [2, 3, 5, 8, 13, 19, 30, 46, 74, 120, 190, 300, 460, 740, 1200, 1900, 3000, 4600]),
        new(80, 120, [2.5, 4, 6, 10, 15, 22, 35, 54, 87, 140, 220, 350, 540, 870, 1400, 2200, 3500, 5400]),
        new(120, 180, [3.5, 5, 8, 12, 18, 25, 40, 63, 100, 160, 250, 400, 630, 1000, 1600, 2500, 4000, 6300]),
        new(180, 250, [4.5, 7, 10, 14, 20, 29, 46, 72, 115, 185, 290, 460, 720, 1150, 1850, 2900, 4600, 7200]),
        new(250, 315, [6, 8, 12, 16, 23, 32, 52, 81, 130, 210, 320, 520, 810, 1300, 2100, 3200, 5200, 8100]),
        new(315, 400, [7, 9, 13, 18, 25, 36, 57, 89, 140, 230, 360, 570, 890, 1400, 2300, 3600, 5700, 8900]),
        new(400, 500, [8, 10, 15, 20, 27, 40, 63, 97, 155, 250, 400, 630, 970, 1550, 2500, 4000, 6300, 9700]),
    ];

    /// <summary>The width of the tolerance interval of a grade.</summary>
    /// <param name="grade">1 to 18.</param>
    /// <param name="nominal">Over 0 up to 500 mm; over 1 mm for grades 14 and up.</param>
    public static Answer<Length> Width(int grade, Length nominal) =>
        WidthMicrometres(grade, nominal).Map(um => Length.FromMillimetres(um / 1000));

    internal static Answer<double> WidthMicrometres(int grade, Length nominal)
    {
        if (grade is < Finest or > Coarsest)
            return Answer<double>.Refused(string.Create(CultureInfo.InvariantCulture, $"the tolerance grades run from 1 to 18, there is no {grade}"));
        if (grade >= 14 && SizeSteps.ToBorder(nominal) <= 1)
            return Answer<double>.Refused("grades 14 to 18 are not used for sizes up to 1 mm");
        return SizeSteps.Find(_rows, nominal, "tolerance grades").Map(row => row.Widths[grade - 1]);
    }

    private sealed record Row(double OverMm, double UpToMm, ImmutableArray<double> Widths) : ISizeStep;
}
