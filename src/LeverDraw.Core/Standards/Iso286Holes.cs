using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>Fundamental deviations of holes C to H and K to S for sizes up to 500 mm: the limit nearest the nominal size.</summary>
public static class Iso286Holes
{
    public static StandardSource Source { get; } = new(
        "Fundamental deviations of holes C to S", "ISO 286-1", "2010", "tables 2 and 3", Certainty.Mixed,
        "every cell: three independent tables agree (solid), a fourth on 680 limits; M6 over 250 to 315 mm: one table; N above IT8 not for sizes to 1 mm and table numbers: from memory");

    /// <summary>Rows over, up to (mm); µm: EI of C D E F G H, then ES before the delta step of K M N P R S.</summary>
    private static readonly ImmutableArray<Row> _rows =
    [
        new(0, 3, [60, 20, 14, 6, 2, 0, 0, -2, -4, -6, -10, -14]),
        new(3, 6, [70, 30, 20, 10, 4, 0, -1, -4, -8, -12, -15, -19]),
        new(6, 10, [80, 40, 25, 13, 5, 0, -1, -6, -10, -15, -19, -23]),
        new(10, 14, [95, 50, 32, 16, 6, 0, -1, -7, -12, -18, -23, -28]),
        new(14, 18, [95, 50, 32, 16, 6, 0, -1, -7, -12, -18, -23, -28]),
        new(18, 24, [110, 65, 40, 20, 7, 0, -2, -8, -15, -22, -28, -35]),
        new(24, 30, [110, 65, 40, 20, 7, 0, -2, -8, -15, -22, -28, -35]),
        new(30, 40, [120, 80, 50, 25, 9, 0, -2, -9, -17, -26, -34, -43]),
        new(40, 50, [130, 80, 50, 25, 9, 0, -2, -9, -17, -26, -34, -43]),
        new(50, 65, [140, 100, 60, 30, 10, 0, -2, -11, -20, -32, -41, -53]),
        new(65, 80, [150, 100, 60, 30, 10, 0, -2, -11, -20, -32, -43, -59]),
        new(80, 100, [170, 120, 72, 36, 12, 0, -3, -13, -23, -37, -51, -71]),
        new(100, 120, [180, 120, 72, 36, 12, 0, -3, -13, -23, -37, -54, -79]),
        new(120, 140, [200, 145, 85, 43, 14, 0, -3, -15, -27, -43, -63, -92]),
        new(140, 160, [210, 145, 85, 43, 14, 0, -3, -15, -27, -43, -65, -100]),
        new(160, 180, [230, 145, 85, 43, 14, 0, -3, -15, -27, -43, -68, -108]),
        new(180, 200, [240, 170, 100, 50, 15, 0, -4, -17, -31, -50, -77, -122]),
        new(200, 225, [260, 170, 100, 50, 15, 0, -4, -17, -31, -50, -80, -130]),
        new(225, 250, [280, 170, 100, 50, 15, 0, -4, -17, -31, -50, -84, -140]),
        new(250, 280, [300, 190, 110, 56, 17, 0, -4, -20, -34, -56, -94, -158]),
        new(280, 315, [330, 190, 110, 56, 17, 0, -4, -20, -34, -56, -98, -170]),
        new(315, 355, [360, 210, 125, 62, 18, 0, -4, -21, -37, -62, -108, -190]),
        new(355, 400, [400, 210, 125, 62, 18, 0, -4, -21, -37, -62, -114, -208]),
        new(400, 450, [440, 230, 135, 68, 20, 0, -5, -23, -40, -68, -126, -232]),
        new(450, 500, [480, 230, 135, 68, 20, 0, -5, -23, -40, -68, -132, -252]),
    ];

    /// <summary>The lower deviation of C to H, the upper one of K to S with its delta step. Not for JS, which has none.</summary>
    /// <param name="grade">Matters for K to S: the delta step is IT(grade) − IT(grade − 1), for K M N up to IT8, for P R S up to IT7, none up to 3 mm.</param>
    public static Answer<Length> FundamentalDeviation(DeviationLetter letter, int grade, Length nominal) =>
        Micrometres(letter, grade, nominal).Map(um => Length.FromMillimetres(um / 1000));

    internal static Answer<double> Micrometres(DeviationLetter letter, int grade, Length nominal) =>
        SizeSteps.Find(_rows, nominal, "hole deviations").Then(row => letter switch
        {
            DeviationLetter.JS => Answer<double>.Refused("JS has no fundamental deviation: it lies evenly about the nominal size"),
            <= DeviationLetter.H => Answer<double>.Given(row.Values[(int)letter]),
            _ => UpperDeviation(letter, grade, nominal, row),
        });

    private static Answer<double> UpperDeviation(DeviationLetter letter, int grade, Length nominal, Row row)
    {
        double tabled = row.Values[(int)letter - 1];
        bool smallest = row.OverMm == 0;
        int lastWithStep = letter <= DeviationLetter.N ? 8 : 7;
        if (grade <= lastWithStep)
        {
            if (letter == DeviationLetter.M && grade == 6 && row.OverMm >= 250 && row.UpToMm <= 315)
                return Answer<double>.Given(-9);
            return DeltaMicrometres(grade, nominal).Map(delta => tabled + delta);
        }
        return letter switch
        {
            DeviationLetter.K when !smallest => Answer<double>.Refused("K above grade 8 is given for sizes up to 3 mm only"),
            DeviationLetter.N when SizeSteps.ToBorder(nominal) <= 1 => Answer<double>.Refused("N above grade 8 is not used for sizes up to 1 mm"),
            DeviationLetter.N when !smallest => Answer<double>.Given(0),
            _ => Answer<double>.Given(tabled),
        };
    }

    /// <summary>The delta step; the published column equals this difference in every cell (two tables and one program agree).</summary>
    internal static Answer<double> DeltaMicrometres(int grade, Length nominal)
    {
        if (SizeSteps.ToBorder(nominal) <= 3)
            return Answer<double>.Given(0);
        return grade is >= 3 and <= 8
            ? Iso286Grades.WidthMicrometres(grade, nominal).Then(own => Iso286Grades.WidthMicrometres(grade - 1, nominal).Map(finer => own - finer))
            : Answer<double>.Refused("holes K to S over 3 mm are given from grade 3 on");
    }

    private sealed record Row(double OverMm, double UpToMm, ImmutableArray<double> Values) : ISizeStep;
}
