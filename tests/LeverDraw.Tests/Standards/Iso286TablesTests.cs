using System.Globalization;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Tests.Standards;

/// <summary>Checks of the ISO 286-1 tables by the rules they were made by: formulas from memory, so a slip in a single cell shows.</summary>
public sealed class Iso286TablesTests
{
    private static readonly double[] _steps = [3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500];

    private static readonly double[] _fineSteps =
        [3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500];

    /// <summary>Over, up to (mm); delta for IT3 to IT8, µm, as two public tables print it.</summary>
    private const string PublishedDelta =
        """
        0 3 0 0 0 0 0 0
        3 6 1 1.5 1 3 4 6
        6 10 1 1.5 2 3 6 7
        10 14 1 2 3 3 7 9
        14 18 1 2 3 3 7 9
        18 24 1.5 2 3 4 8 12
        24 30 1.5 2 3 4 8 12
        30 40 1.5 3 4 5 9 14
        40 50 1.5 3 4 5 9 14
        50 65 2 3 5 6 11 16
        65 80 2 3 5 6 11 16
        80 100 2 4 5 7 13 19
        100 120 2 4 5 7 13 19
        120 140 3 4 6 7 15 23
        140 160 3 4 6 7 15 23
        160 180 3 4 6 7 15 23
        180 200 3 4 6 9 17 26
        200 225 3 4 6 9 17 26
        225 250 3 4 6 9 17 26
        250 280 4 4 7 9 20 29
        280 315 4 4 7 9 20 29
        315 355 4 5 7 11 21 32
        355 400 4 5 7 11 21 32
        400 450 5 5 7 13 23 34
        450 500 5 5 7 13 23 34
        """;

    // Tolerance unit i = 0.45 ∛D + 0.001 D µm, D the geometric mean of the step, with its multipliers.
    // Two cells are rounded further in the table: IT6 over 3 to 6 and IT5 over 10 to 18.
    [Theory]
    [InlineData(5, 7)]
    [InlineData(6, 10)]
    [InlineData(7, 16)]
    [InlineData(8, 25)]
    [InlineData(9, 40)]
    [InlineData(10, 64)]
    [InlineData(11, 100)]
    [InlineData(12, 160)]
    [InlineData(13, 250)]
    [InlineData(14, 400)]
    [InlineData(15, 640)]
    [InlineData(16, 1000)]
    [InlineData(17, 1600)]
    [InlineData(18, 2500)]
    public void Width_EveryStepOverThree_AgreesWithToleranceUnit(int grade, double units)
    {
        for (int i = 1; i < _steps.Length; i++)
        {
            double mean = Math.Sqrt(_steps[i - 1] * _steps[i]);
            double formula = units * (0.45 * Math.Cbrt(mean) + 0.001 * mean);
            bool roundedFurther = (grade == 6 && i == 1) || (grade == 5 && i == 3);
            double allowed = (roundedFurther ? 0.10 : 0.05) * formula + 0.5;
            Assert.InRange(Width(grade, _steps[i]), formula - allowed, formula + allowed);
            Assert.Equal(Width(grade, _steps[i]), Width(grade, _steps[i - 1] + 0.001));
        }
    }

    // Public tables, both ends of the first and last steps and one in the middle (µm).
    [Theory]
    [InlineData(1, 1.001, 0.8)]
    [InlineData(1, 3, 0.8)]
    [InlineData(2, 3.001, 1.5)]
    [InlineData(4, 50, 7)]
    [InlineData(4, 50.001, 8)]
    [InlineData(3, 180, 8)]
    [InlineData(15, 50, 1000)]
    [InlineData(18, 500, 9700)]
    [InlineData(6, 0.001, 6)]
    public void Width_PublishedCell_IsEqual(int grade, double mm, double micrometres) => Assert.Equal(micrometres, Width(grade, mm), 9);

    [Fact]
    public void Width_NextGradeOrNextStep_IsNeverSmaller()
    {
        for (int grade = 1; grade <= 18; grade++)
        {
            foreach (double mm in _steps)
            {
                if (grade < 18)
                    Assert.True(Width(grade + 1, mm) > Width(grade, mm));
                if (mm < 500)
                    Assert.True(Width(grade, mm + 0.001) >= Width(grade, mm));
            }
        }
    }

    [Theory]
    [InlineData(0, 10)]
    [InlineData(19, 10)]
    [InlineData(7, 0)]
    [InlineData(7, -1)]
    [InlineData(7, 500.001)]
    public void Width_OutsideTheTable_IsRefusedWithTheRange(int grade, double mm)
    {
        Answer<Length> answer = Iso286Grades.Width(grade, Length.FromMillimetres(mm));
        Assert.False(answer.IsGiven);
        Assert.Matches("from 1 to 18|over 0 mm up to 500 mm", answer.Refusal);
    }

    // From memory: IT14 and up are not used for sizes to 1 mm.
    [Fact]
    public void Width_CoarseGradeUpToOneMillimetre_IsRefused_FromMemory()
    {
        Assert.False(Iso286Grades.Width(14, Length.FromMillimetres(1)).IsGiven);
        Assert.True(Iso286Grades.Width(13, Length.FromMillimetres(1)).IsGiven);
        Assert.True(Iso286Grades.Width(14, Length.FromMillimetres(1.001)).IsGiven);
    }

    // es and ei formulas from memory, each cell to 6 % or 1 µm; g and n are rounded further in the first step.
    [Theory]
    [InlineData(DeviationLetter.D, -16, 0.44, 0)]
    [InlineData(DeviationLetter.E, -11, 0.41, 0)]
    [InlineData(DeviationLetter.F, -5.5, 0.41, 0)]
    [InlineData(DeviationLetter.G, -2.5, 0.34, 3)]
    [InlineData(DeviationLetter.N, 5, 0.34, 3)]
    public void Shaft_PowerLaw_AgreesInEveryStep_FormulaFromMemory(DeviationLetter letter, double factor, double power, double from)
    {
        foreach (double mm in _fineSteps.Where(mm => mm > from))
        {
            double formula = factor * Math.Pow(MainMean(mm), power);
            double allowed = Math.Max(1, 0.06 * Math.Abs(formula));
            Assert.InRange(Shaft(letter, 6, mm), formula - allowed, formula + allowed);
        }
    }

    // m = IT7 − IT6; p = IT7 + 0 to 5; r the geometric mean of p and s; s over 50 mm = IT7 + 0.4 D (rules from memory).
    [Fact]
    public void Shaft_MtoS_AgreeWithTheGradesOverThree_RulesFromMemory()
    {
        for (int i = 1; i < _fineSteps.Length; i++)
        {
            double mm = _fineSteps[i];
            Assert.Equal(Width(7, mm) - Width(6, mm), Shaft(DeviationLetter.M, 6, mm), 9);
            Assert.InRange(Shaft(DeviationLetter.P, 6, mm) - Width(7, mm), 0, 5);
            double r = Math.Sqrt(Shaft(DeviationLetter.P, 6, mm) * Shaft(DeviationLetter.S, 6, mm));
            Assert.InRange(Shaft(DeviationLetter.R, 6, mm), r - 2, r + 2);
            if (mm > 50)
            {
                double s = Width(7, mm) + 0.4 * Math.Sqrt(_fineSteps[i - 1] * mm);
                Assert.InRange(Shaft(DeviationLetter.S, 6, mm), s - 3, s + 3);
            }
        }
    }

    // c over 40 mm = −(95 + 0.8 D) (rule from memory).
    [Fact]
    public void Shaft_COverForty_AgreesWithItsLine_FormulaFromMemory()
    {
        for (int i = 8; i < _fineSteps.Length; i++)
        {
            double c = -(95 + 0.8 * Math.Sqrt(_fineSteps[i - 1] * _fineSteps[i]));
            Assert.InRange(Shaft(DeviationLetter.C, 11, _fineSteps[i]), c - 8, c + 8);
        }
    }

    // Public tables: first steps of c, and k, which its formula does not fix.
    [Theory]
    [InlineData(DeviationLetter.C, 11, 3, -60)]
    [InlineData(DeviationLetter.C, 11, 6, -70)]
    [InlineData(DeviationLetter.C, 11, 10, -80)]
    [InlineData(DeviationLetter.C, 11, 18, -95)]
    [InlineData(DeviationLetter.C, 11, 30, -110)]
    [InlineData(DeviationLetter.C, 11, 40, -120)]
    [InlineData(DeviationLetter.C, 11, 40.001, -130)]
    [InlineData(DeviationLetter.G, 6, 3, -2)]
    [InlineData(DeviationLetter.H, 6, 250, 0)]
    [InlineData(DeviationLetter.K, 6, 3, 0)]
    [InlineData(DeviationLetter.K, 6, 3.001, 1)]
    [InlineData(DeviationLetter.K, 4, 18.001, 2)]
    [InlineData(DeviationLetter.K, 7, 80.001, 3)]
    [InlineData(DeviationLetter.K, 5, 180.001, 4)]
    [InlineData(DeviationLetter.K, 6, 400.001, 5)]
    [InlineData(DeviationLetter.K, 8, 100, 0)]
    [InlineData(DeviationLetter.K, 3, 100, 0)]
    public void Shaft_PublishedCell_IsEqual(DeviationLetter letter, int grade, double mm, double micrometres) =>
        Assert.Equal(micrometres, Shaft(letter, grade, mm), 9);

    // C to H lie as the shaft's mirror; so do K to S before the delta step.
    [Fact]
    public void Hole_EveryCell_MirrorsTheShaft()
    {
        foreach (double mm in _fineSteps)
        {
            foreach (DeviationLetter letter in new[] { DeviationLetter.C, DeviationLetter.D, DeviationLetter.E, DeviationLetter.F, DeviationLetter.G, DeviationLetter.H })
                Assert.Equal(-Shaft(letter, 7, mm), Hole(letter, 7, mm), 9);
            foreach (DeviationLetter letter in new[] { DeviationLetter.P, DeviationLetter.R, DeviationLetter.S })
                Assert.Equal(-Shaft(letter, 8, mm), Hole(letter, 8, mm), 9);
            Assert.Equal(-Shaft(DeviationLetter.M, 9, mm), Hole(DeviationLetter.M, 9, mm), 9);
            foreach (DeviationLetter letter in new[] { DeviationLetter.K, DeviationLetter.M, DeviationLetter.N })
                Assert.Equal(-Shaft(letter, 7, mm) + (mm > 3 ? Width(7, mm) - Width(6, mm) : 0), Hole(letter, 7, mm), 9);
        }
    }

    [Fact]
    public void Hole_DeltaStep_EqualsThePublishedColumn()
    {
        int checkedCells = 0;
        foreach (string line in PublishedDelta.Split('\n'))
        {
            double[] cell = [.. line.Trim().Split(' ').Select(c => double.Parse(c, CultureInfo.InvariantCulture))];
            for (int grade = 3; grade <= 8; grade++)
            {
                foreach (double mm in new[] { cell[0] + 0.001, cell[1] })
                    Assert.Equal(cell[grade - 1], Iso286Holes.DeltaMicrometres(grade, Length.FromMillimetres(mm)).Value, 9);
                checkedCells++;
            }
        }
        Assert.Equal(150, checkedCells);
    }

    // One public table and memory: M6 over 250 to 315 mm is −9, where the rule would give −11.
    [Theory]
    [InlineData(250.001, 6, -9)]
    [InlineData(280.001, 6, -9)]
    [InlineData(315, 6, -9)]
    [InlineData(250, 6, -8)]
    [InlineData(315.001, 6, -10)]
    [InlineData(300, 7, 0)]
    public void Hole_M6OverTwoFiftyToThreeFifteen_IsTheException(double mm, int grade, double micrometres) =>
        Assert.Equal(micrometres, Hole(DeviationLetter.M, grade, mm), 9);

    // Public tables: N above IT8 is 0, −4 up to 3 mm; P R S take the delta step up to IT7 only.
    [Theory]
    [InlineData(DeviationLetter.N, 9, 3, -4)]
    [InlineData(DeviationLetter.N, 9, 3.001, 0)]
    [InlineData(DeviationLetter.N, 11, 500, 0)]
    [InlineData(DeviationLetter.N, 8, 25, -3)]
    [InlineData(DeviationLetter.P, 7, 25, -14)]
    [InlineData(DeviationLetter.P, 8, 25, -22)]
    [InlineData(DeviationLetter.K, 9, 3, 0)]
    public void Hole_AboveTheDeltaGrades_FollowsItsRule(DeviationLetter letter, int grade, double mm, double micrometres) =>
        Assert.Equal(micrometres, Hole(letter, grade, mm), 9);

    [Theory]
    [InlineData(DeviationLetter.K, 9, 3.001)]
    [InlineData(DeviationLetter.K, 2, 25)]
    [InlineData(DeviationLetter.P, 1, 25)]
    [InlineData(DeviationLetter.JS, 7, 25)]
    [InlineData(DeviationLetter.N, 9, 1)] // from memory
    public void Hole_NotDefined_IsRefused(DeviationLetter letter, int grade, double mm) =>
        Assert.False(Iso286Holes.FundamentalDeviation(letter, grade, Length.FromMillimetres(mm)).IsGiven);

    private static double MainMean(double upTo)
    {
        int step = Array.FindIndex(_steps, mm => upTo <= mm);
        return Math.Sqrt((step == 0 ? 1 : _steps[step - 1]) * _steps[step]);
    }

    private static double Width(int grade, double mm) => Iso286Grades.Width(grade, Length.FromMillimetres(mm)).Value.Millimetres * 1000;

    private static double Shaft(DeviationLetter letter, int grade, double mm) =>
        Iso286Shafts.FundamentalDeviation(letter, grade, Length.FromMillimetres(mm)).Value.Millimetres * 1000;

    private static double Hole(DeviationLetter letter, int grade, double mm) =>
        Iso286Holes.FundamentalDeviation(letter, grade, Length.FromMillimetres(mm)).Value.Millimetres * 1000;
}
