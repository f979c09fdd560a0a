using System.Globalization;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Tests.Tolerancing;

/// <summary>
/// Published limits. Sources, by letter: a = a public collection of ISO shaft and hole limits; b = a public DIN 286 data set;
/// c = a public program after PN-EN ISO 286-1:2011; d = textbook examples; e = a DIN 7 pin page; f = a DIN 6325 pin sheet.
/// Where a source differs (a: K6 on 10; b: N7 on 25) its row was found to be misprinted and is not counted.
/// </summary>
public sealed class Iso286CheckedLimitsTests
{
    /// <summary>Nominal mm, zone, lower and upper deviation in µm, sources that print exactly these.</summary>
    private const string Checked =
        """
        2 H7 0 10 bc
        3 g6 -8 -2 bc
        3 k6 0 6 bc
        4 H7 0 12 abc
        4 h8 -18 0 abcf
        4 m6 4 12 abcef
        5 H7 0 12 abc
        5 h9 -30 0 abc
        5 m6 4 12 abcef
        6 H7 0 12 abc
        6 H8 0 18 abc
        6 m6 4 12 abcef
        6 h8 -18 0 abcf
        6 h10 -48 0 abc
        6 g6 -12 -4 abc
        6 f7 -22 -10 abc
        6 e8 -38 -20 bc
        6 d9 -60 -30 bc
        6 c11 -145 -70 bc
        6 js6 -4 4 abc
        6 k6 1 9 abc
        6 n6 8 16 abc
        6 p6 12 20 abc
        6 r6 15 23 abc
        6 s6 19 27 bc
        6 K7 -9 3 abc
        6 M7 -12 0 abc
        6 N7 -16 -4 abc
        6 P7 -20 -8 ab
        8 H7 0 15 abc
        8 h6 -9 0 abcf
        8 m6 6 15 abcef
        10 f7 -28 -13 abc
        10 H7 0 15 abc
        10 H8 0 22 abc
        10 h10 -58 0 abc
        10 p6 15 24 abc
        10 K6 -7 2 bc
        10 P7 -24 -9 ab
        12 H7 0 18 abc
        12 g6 -17 -6 abc
        12 h8 -27 0 abcf
        12 f7 -34 -16 abc
        12 d9 -93 -50 bc
        16 H8 0 27 abc
        16 e8 -59 -32 bc
        20 H7 0 21 abcd
        20 s6 35 48 bcd
        20 c11 -240 -110 bc
        25 H7 0 21 abc
        25 H8 0 33 abc
        25 H9 0 52 abc
        25 H11 0 130 abc
        25 g6 -20 -7 abc
        25 h6 -13 0 abc
        25 f7 -41 -20 abc
        25 k6 2 15 abc
        25 n6 15 28 abc
        25 p6 22 35 abc
        25 K7 -15 6 abc
        25 M7 -21 0 abc
        25 N7 -28 -7 ac
        25 N9 -52 0 bc
        25 P7 -35 -14 ab
        25 P8 -55 -22 ab
        29 h7 -21 0 abc
        29 H7 0 21 abc
        29 h8 -33 0 abc
        40 H7 0 25 abc
        40 g6 -25 -9 abc
        40 js7 -12.5 12.5 abc
        45 H7 0 25 abc
        45 k8 0 39 bc
        45 js8 -19.5 19.5 bc
        45 m6 9 25 abc
        50 H7 0 25 abcd
        50 s6 43 59 bcd
        50 D10 80 180 b
        50 E9 50 112 b
        50 F8 25 64 ab
        50 G7 9 34 ab
        60 H7 0 30 abc
        60 f7 -60 -30 abc
        100 H7 0 35 abc
        100 r6 51 73 abc
        100 s6 71 93 bc
        120 c11 -400 -180 bc
        120 H8 0 54 abc
        120 K7 -25 10 abc
        """;

    public static TheoryData<double, string, double, double> Rows()
    {
        TheoryData<double, string, double, double> data = [];
        foreach (string line in Checked.Split('\n'))
        {
            string[] cell = line.Trim().Split(' ');
            data.Add(Number(cell[0]), cell[1], Number(cell[2]), Number(cell[3]));
        }
        return data;
    }

    [Fact]
    public void Rows_AllCopied_AreEightyNine() => Assert.Equal(89, Rows().Count);

    [Theory]
    [MemberData(nameof(Rows))]
    public void Deviations_PublishedLimit_IsEqual(double nominal, string zone, double lower, double upper)
    {
        LimitDeviations found = Iso286.Deviations(ToleranceZone.Parse(zone).Value, Length.FromMillimetres(nominal)).Value;
        Assert.Equal(lower, found.Lower.Millimetres * 1000, 9);
        Assert.Equal(upper, found.Upper.Millimetres * 1000, 9);
    }

    // ISO 286-1: the ends of the finer steps of tables 2 to 5; a published limit holds from one to the next.
    private static readonly double[] StepEnds =
        [0, 3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140];

    [Theory]
    [MemberData(nameof(Rows))]
    public void Deviations_BothEndsOfThePublishedStep_AreEqual(double nominal, string zone, double lower, double upper)
    {
        int step = Array.FindIndex(StepEnds, end => nominal <= end);
        foreach (double mm in (double[])[StepEnds[step - 1] + 0.001, StepEnds[step]])
        {
            LimitDeviations found = Iso286.Deviations(ToleranceZone.Parse(zone).Value, Length.FromMillimetres(mm)).Value;
            Assert.Equal(lower, found.Lower.Millimetres * 1000, 9);
            Assert.Equal(upper, found.Upper.Millimetres * 1000, 9);
        }
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
