using LeverDraw.Drafting.Lettering;

namespace LeverDraw.Tests.Drafting.Lettering;

public class LetteringMetricsTests
{
    /// <summary>Expected values typed from ISO 3098-1 type B (reference 10g, S111).</summary>
    [Theory]
    [InlineData(1.8, 1.26, 0.18, 0.36, 1.08, 3.42, 2.7, 2.34)]
    [InlineData(2.5, 1.75, 0.25, 0.5, 1.5, 4.75, 3.75, 3.25)]
    [InlineData(5, 3.5, 0.5, 1, 3, 9.5, 7.5, 6.5)]
    [InlineData(10, 7, 1, 2, 6, 19, 15, 13)]
    [InlineData(20, 14, 2, 4, 12, 38, 30, 26)]
    public void Metrics_NominalHeight_MatchTheTable(double h, double c, double d, double a, double e, double b1, double b2, double b3)
    {
        LetteringMetrics metrics = new(h);
        Assert.Equal(c, metrics.SmallHeight, 9);
        Assert.Equal(d, metrics.Stroke, 9);
        Assert.Equal(a, metrics.LetterGap, 9);
        Assert.Equal(e, metrics.WordGap, 9);
        Assert.Equal(b1, metrics.LinePitchAccented, 9);
        Assert.Equal(b2, metrics.LinePitch, 9);
        Assert.Equal(b3, metrics.LinePitchCapitals, 9);
    }

    [Fact]
    public void AscenderAndDescender_HoldAllLettersAndFigures()
    {
        LetteringMetrics metrics = new(10);
        const string Upright = "ABCDEFGHIJKLMNOPRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789";
        global::LeverDraw.Geometry.Box2D box = InkBox.Local(StrokeLettering.Compose(Upright, default, 10));
        Assert.Equal(10.5, metrics.Ascender, 9);
        Assert.Equal(3.5, metrics.Descender, 9);
        Assert.Equal(10.5, box.MaxY, 9);
        Assert.Equal(-3.5, box.MinY, 9);
    }
}
