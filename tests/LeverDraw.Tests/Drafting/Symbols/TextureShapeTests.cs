using LeverDraw.Drafting;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Geometry;
using LeverDraw.Units;

namespace LeverDraw.Tests.Drafting.Symbols;

// Reference 10i (from memory there): short leg 3.5 and long leg 7.5 high for lettering of 2.5; 5 and 10.5 for 3.5; legs at 60°. 1.8 has no row: 1.4 h and 3 h.
public class TextureShapeTests
{
    public static TheoryData<double, double, double> Styles => new() { { 1.8, 2.52, 5.4 }, { 2.5, 3.5, 7.5 }, { 3.5, 5, 10.5 } };

    [Theory]
    [MemberData(nameof(Styles))]
    public void Ink_Vee_HasLegsOfTheTableAtSixtyDegrees(double h, double shortLeg, double longLeg)
    {
        PlotItem[] ink = [.. Shape(TextureProcess.Any, h).Ink(Point2D.Origin, 0, null, null)];
        LineEdge left = Assert.Single(ink.Lines(), l => l.To == Point2D.Origin);
        LineEdge right = Assert.Single(ink.Lines(), l => l.From == Point2D.Origin);
        Assert.Equal(shortLeg, left.From.Y, 9);
        Assert.Equal(longLeg, right.To.Y, 9);
        Assert.Equal(60, (right.To - right.From).Angle * 180 / Math.PI, 9);
        Assert.Equal(120, (left.From - left.To).Angle * 180 / Math.PI, 9);
        Assert.Equal(2, ink.Length);
    }

    [Fact]
    public void Ink_Removal_ClosesTheVeeAtTheShortLeg()
    {
        PlotItem[] ink = [.. Shape(TextureProcess.Removal, 2.5).Ink(Point2D.Origin, 0, null, null)];
        LineEdge bar = Assert.Single(ink.Lines(), l => Math.Abs(l.From.Y - l.To.Y) < 1e-9);
        // 3.5 / tan 60° = 2.0207 to each side.
        Assert.Equal((-2.0207, 2.0207, 3.5), (Math.Round(bar.From.X, 4), Math.Round(bar.To.X, 4), bar.From.Y));
        Assert.Empty(ink.Arcs());
    }

    [Fact]
    public void Ink_NoRemoval_HasACircleThatTouchesBothLegsAndNoBar()
    {
        PlotItem[] ink = [.. Shape(TextureProcess.NoRemoval, 3.5).Ink(Point2D.Origin, 0, null, null)];
        ArcEdge circle = Assert.Single(ink.Arcs());
        foreach (LineEdge leg in ink.Lines())
        {
            Vector2D u = (leg.To - leg.From).Unit();
            Assert.Equal(circle.Radius, Math.Abs(u.Cross(circle.Centre - leg.From)), 9);
        }

        Assert.Equal(5, circle.Centre.Y + circle.Radius, 9);
        Assert.DoesNotContain(ink.Lines(), l => Math.Abs(l.From.Y - l.To.Y) < 1e-9);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(Math.PI / 2)]
    [InlineData(-0.7)]
    public void Ink_Text_StandsUnderTheLongLegsBarClearOfAllLines(double angle)
    {
        var shape = new TextureShape(new TextureSign(TextureProcess.Removal, "Ra 1.6"), DraftingStyle.Small);
        var tip = new Point2D(5, 6);
        PlotItem[] ink = [.. shape.Ink(tip, angle, "d", "v")];
        PlotText text = Assert.Single(ink.OfType<PlotText>());
        Assert.Equal(("Ra 1.6", angle), (text.Text, text.Angle));
        Point2D[] corners = [.. InkBox.Corners(text)];
        foreach (LineEdge line in ink.Lines())
        {
            for (int i = 0; i < 4; i++)
                Assert.True(Distance(corners[i], line) > 0.3);
        }

        Assert.Equal(7.5, shape.Height, 9);
        Assert.True(shape.Box(tip, angle, 0).Inflated(1e-9).Bounds.Contains(ink.StrokeBox()));
    }

    [Fact]
    public void Machined_Roughness_IsInMicrometresAndZeroIsNoSign()
    {
        Assert.Equal(new TextureSign(TextureProcess.Removal, "Ra 1.6"), TextureSign.Machined(Length.FromMillimetres(0.0016)));
        Assert.Null(TextureSign.Machined(Length.Zero));
    }

    private static TextureShape Shape(TextureProcess process, double h) =>
        new(new TextureSign(process), DraftingStyle.Small with { LetteringHeight = h });

    private static double Distance(Point2D p, LineEdge line)
    {
        Vector2D u = (line.To - line.From).Unit();
        double along = Math.Clamp(u.Dot(p - line.From), 0, line.Length);
        return (p - (line.From + (u * along))).Length;
    }
}
