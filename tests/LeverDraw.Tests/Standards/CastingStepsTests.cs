using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Tests.Standards;

/// <summary>Casting tolerances and machining allowances at both ends of every step: just above the lower border, and on the upper one. Cells as two copies of ISO 8062-3:2007, tables 2 and 7, print them; an empty one is not given.</summary>
public sealed class CastingStepsTests
{
    private static readonly (double Over, double UpTo, string TotalWidths)[] Tolerances =
    [
        (0, 10, "0.09 0.13 0.18 0.26 0.36 0.52 0.74 1 1.5 2 2.8 4.2 - - - -"),
        (10, 16, "0.1 0.14 0.2 0.28 0.38 0.54 0.78 1.1 1.6 2.2 3 4.4 - - - -"),
        (16, 25, "0.11 0.15 0.22 0.3 0.42 0.58 0.82 1.2 1.7 2.4 3.2 4.6 6 8 10 12"),
        (25, 40, "0.12 0.17 0.24 0.32 0.46 0.64 0.9 1.3 1.8 2.6 3.6 5 7 9 11 14"),
        (40, 63, "0.13 0.18 0.26 0.36 0.5 0.7 1 1.4 2 2.8 4 5.6 8 10 12 16"),
        (63, 100, "0.14 0.2 0.28 0.4 0.56 0.78 1.1 1.6 2.2 3.2 4.4 6 9 11 14 18"),
        (100, 160, "0.15 0.22 0.3 0.44 0.62 0.88 1.2 1.8 2.5 3.6 5 7 10 12 16 20"),
        (160, 250, "- 0.24 0.34 0.5 0.7 1 1.4 2 2.8 4 5.6 8 11 14 18 22"),
        (250, 400, "- - 0.4 0.56 0.78 1.1 1.6 2.2 3.2 4.4 6.2 9 12 16 20 25"),
        (400, 630, "- - - 0.64 0.9 1.2 1.8 2.6 3.6 5 7 10 14 18 22 28"),
        (630, 1000, "- - - - 1 1.4 2 2.8 4 6 8 11 16 20 25 32"),
    ];

    private static readonly (double Over, double UpTo, string PerFace)[] Allowances =
    [
        (0, 40, "0.1 0.1 0.2 0.3 0.4 0.5 0.5 0.7 1 1.4"),
        (40, 63, "0.1 0.2 0.3 0.3 0.4 0.5 0.7 1 1.4 2"),
        (63, 100, "0.2 0.3 0.4 0.5 0.7 1 1.4 2 2.8 4"),
        (100, 160, "0.3 0.4 0.5 0.8 1.1 1.5 2.2 3 4 6"),
        (160, 250, "0.3 0.5 0.7 1 1.4 2 2.8 4 5.5 8"),
        (250, 400, "0.4 0.7 0.9 1.3 1.8 2.5 3.5 5 7 10"),
        (400, 630, "0.5 0.8 1.1 1.5 2.2 3 4 6 9 12"),
        (630, 1000, "0.6 0.9 1.2 1.8 2.5 3.5 5 7 10 14"),
    ];

    [Fact]
    public void TotalWidth_BothEndsOfEveryStep_IsThePublishedCellAndHalves()
    {
        foreach ((double over, double upTo, string cells) in Tolerances)
        {
            string[] published = cells.Split(' ');
            Assert.Equal(16, published.Length);
            for (int grade = 1; grade <= 16; grade++)
            {
                foreach (double size in (double[])[over + 0.001, upTo])
                {
                    Answer<Length> width = CastingTolerances.TotalWidth(grade, Length.FromMillimetres(size));
                    Assert.Equal(published[grade - 1] != "-", width.IsGiven);
                    if (!width.IsGiven)
                        continue;
                    double total = Number(published[grade - 1]);
                    Assert.Equal(total, width.Value.Millimetres, 1e-9);
                    Assert.Equal(total / 2, CastingTolerances.PlusMinus(grade, Length.FromMillimetres(size)).Value.Millimetres, 1e-9);
                }
            }
        }
    }

    [Fact]
    public void PerFace_BothEndsOfEveryStep_IsThePublishedCell()
    {
        const string Grades = "ABCDEFGHJK";
        foreach ((double over, double upTo, string cells) in Allowances)
        {
            foreach ((char grade, string published) in Grades.Zip(cells.Split(' ')))
            {
                foreach (double size in (double[])[over + 0.001, upTo])
                    Assert.Equal(Number(published), RequiredMachiningAllowances.PerFace(grade, Length.FromMillimetres(size)).Value.Millimetres, 1e-9);
            }
        }
    }

    private static double Number(string cell) => double.Parse(cell, System.Globalization.CultureInfo.InvariantCulture);
}
