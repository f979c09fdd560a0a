using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Tests.Standards;

public class Iso3098LetteringTests
{
    /// <summary>The printed rows are the ratios 10, 7, 1, 2, 6, 19, 15, 13 of d (ratios typed from reference 10g's note); only c is rounded, by 2 % of h at most, to a nominal height itself (2.5, 5, 10).</summary>
    [Fact]
    public void Rows_AreTheRatiosOfTheStroke()
    {
        Assert.Equal(8, Iso3098Lettering.TypeB.Length);
        foreach (LetteringSize row in Iso3098Lettering.TypeB)
        {
            double d = row.Stroke.Millimetres;
            Near(10 * d, row.Height);
            Near(7 * d, row.SmallHeight, 0.2001 * d);
            Near(2 * d, row.LetterGap);
            Near(6 * d, row.WordGap);
            Near(19 * d, row.LinePitchAccented);
            Near(15 * d, row.LinePitch);
            Near(13 * d, row.LinePitchCapitals);
        }
    }

    private static void Near(double expected, Length actual, double slack = 1e-9) =>
        Assert.InRange(actual.Millimetres, expected - slack, expected + slack);
}
