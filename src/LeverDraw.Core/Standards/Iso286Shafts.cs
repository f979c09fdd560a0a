using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>Fundamental deviations of shafts c to h and k to s for sizes up to 500 mm: the limit nearest the nominal size.</summary>
public static class Iso286Shafts
{
    public static StandardSource Source { get; } = new(
        "Fundamental deviations of shafts c to s", "ISO 286-1", "2010", "tables 4 and 5", Certainty.Solid,
        "three independent tables agree on every cell, a fourth on 660 limits; table numbers from memory");

    /// <summary>Rows over, up to (mm); µm: es of c d e f g h, then ei of k (IT4 to IT7) m n p r s.</summary>
    private static readonly ImmutableArray<Row> _rows =
    [
        new(0, 3, [-60, -20, -14, -6, -2, 0, 0, 2, 4, 6, 10, 14]),
        new(3, 6, [-70, -30, -20, -10, -4, 0, 1, 4, 8, 12, 15, 19]),
        new(6, 10, [-80, -40, -25, -13, -5, 0, 1, 6, 10, 15, 19, 23]),
        new(10, 14, [-95, -50, -32, -16, -6, 0, 1, 7, 12, 18, 23, 28]),
        new(14, 18, [-95, -50, -32, -16, -6, 0, 1, 7, 12, 18, 23, 28]),
        new(18, 24, [-110, -65, -40, -20, -7, 0, 2, 8, 15, 22, 28, 35]),
        new(24, 30, [-110, -65, -40, -20, -7, 0, 2, 8, 15, 22, 28, 35]),
        new(30, 40, [-120, -80, -50, -25, -9, 0, 2, 9, 17, 26, 34, 43]),
        new(40, 50, [-130, -80, -50, -25, -9, 0, 2, 9, 17, 26, 34, 43]),
        new(50, 65, [-140, -100, -60, -30, -10, 0, 2, 11, 20, 32, 41, 53]),
        new(65, 80, [-150, -100, -60, -30, -10, 0, 2, 11, 20, 32, 43, 59]),
        new(80, 100, [-170, -120, -72, -36, -12, 0, 3, 13, 23, 37, 51, 71]),
        new(100, 120, [-180, -120, -72, -36, -12, 0, 3, 13, 23, 37, 54, 79]),
        new(120, 140, [-200, -145, -85, -43, -14, 0, 3, 15, 27, 43, 63, 92]),
        new(140, 160, [-210, -145, -85, -43, -14, 0, 3, 15, 27, 43, 65, 100]),
        new(160, 180, [-230, -145, -85, -43, -14, 0, 3, 15, 27, 43, 68, 108]),
        new(180, 200, [-240, -170, -100, -50, -15, 0, 4, 17, 31, 50, 77, 122]),
        new(200, 225, [-260, -170, -100, -50, -15, 0, 4, 17, 31, 50, 80, 130]),
        new(225, 250, [-280, -170, -100, -50, -15, 0, 4, 17, 31, 50, 84, 140]),
        new(250, 280, [-300, -190, -110, -56, -17, 0, 4, 20, 34, 56, 94, 158]),
        new(280, 315, [-330, -190, -110, -56, -17, 0, 4, 20, 34, 56, 98, 170]),
        new(315, 355, [-360, -210, -125, -62, -18, 0, 4, 21, 37, 62, 108, 190]),
        new(355, 400, [-400, -210, -125, -62, -18, 0, 4, 21, 37, 62, 114, 208]),
        new(400, 450, [-440, -230, -135, -68, -20, 0, 5, 23, 40, 68, 126, 232]),
        new(450, 500, [-480, -230, -135, -68, -20, 0, 5, 23, 40, 68, 132, 252]),
    ];

    /// <summary>The upper deviation of c to h, the lower one of k to s. Not for js, which has none.</summary>
    /// <param name="grade">Matters for k only: its deviation is 0 outside IT4 to IT7.</param>
    public static Answer<Length> FundamentalDeviation(DeviationLetter letter, int grade, Length nominal) =>
        Micrometres(letter, grade, nominal).Map(um => Length.FromMillimetres(um / 1000));

    internal static Answer<double> Micrometres(DeviationLetter letter, int grade, Length nominal) =>
        SizeSteps.Find(_rows, nominal, "shaft deviations").Then(row => letter switch
        {
            DeviationLetter.JS => Answer<double>.Refused("js has no fundamental deviation: it lies evenly about the nominal size"),
            DeviationLetter.K when grade is < 4 or > 7 => Answer<double>.Given(0),
            <= DeviationLetter.H => Answer<double>.Given(row.Values[(int)letter]),
            _ => Answer<double>.Given(row.Values[(int)letter - 1]),
        });

    private sealed record Row(double OverMm, double UpToMm, ImmutableArray<double> Values) : ISizeStep;
}
