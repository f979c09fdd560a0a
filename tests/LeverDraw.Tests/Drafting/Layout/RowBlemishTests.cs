using LeverDraw.Drafting;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Layout;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Layout;

/// <summary>Level dimensions laid out by hand below what they measure, whose lower side is at 0.</summary>
public class RowBlemishTests
{
    // The other dimension goes from 20 to 40, its line 10 below.
    [Theory]
    [InlineData(0, 20, 10, -10, 0)]
    [InlineData(0, 20, 30, -10, 60)]
    [InlineData(0, 20, 30, -18, 60)]
    [InlineData(0, 20, 30, -40, 0)]
    [InlineData(0, 20, 50, -10, 12)]
    [InlineData(0, 20, -10, -10, 0)]
    [InlineData(40, 50, 60, -10, 0)]
    [InlineData(40, 50, 30, -10, 60)]
    [InlineData(40, 50, 10, -10, 12)]
    public void Between_NumberBesideItsOwnSpan_CostsWhereAnotherClaimsIt(double from, double to, double number, double level, double cost) =>
        AssertBothWays(cost, Below(from, to, level, number), Below(20, 40, -10, 30));

    // The other's line stands 60 below: its extension lines pass the number however far out that is, but not one beyond its line.
    [Theory]
    [InlineData(-10, 60)]
    [InlineData(-90, 0)]
    public void Between_NumberFarFromTheOthersLine_CostsWhereItsExtensionLinesPass(double level, double cost) =>
        AssertBothWays(cost, Below(0, 20, level, 30), Below(20, 40, -60, 30));

    [Fact]
    public void Between_NumberOnALeader_CostsLess() =>
        AssertBothWays(PlacingCosts.Claimed(onLeader: true), Below(0, 20, -10, 30, leader: true), Below(20, 40, -10, 30));

    // The other goes from 0 to 40, its line 10 below.
    [Theory]
    [InlineData(0, 20, -18, PlacingCosts.OutsideLonger)]
    [InlineData(10, 30, -18, PlacingCosts.OutsideLonger)]
    [InlineData(0, 20, -5, 0)]
    [InlineData(0, 40, -18, 0)]
    [InlineData(10, 60, -18, 0)]
    [InlineData(0, 20, 8, 0)]
    public void Between_ShorterDimension_CostsOutsideALonger(double from, double to, double level, double cost) =>
        AssertBothWays(cost, Below(from, to, level, (from + to) / 2), Below(0, 40, -10, 20));

    [Fact]
    public void Between_SquareToEachOther_IsFree()
    {
        DimensionSpan level = Below(0, 20, -10, 30);
        DimensionSpan upright = Span(new Vector2D(0, 1), 20, 40, 10, 30, false);
        AssertBothWays(0, level, upright);
    }

    [Fact]
    public void Of_ReversedLine_IsTheSame() =>
        Assert.Equal(Below(0, 20, -10, 30), Span(new Vector2D(-1, 0), 0, -20, 10, -30, false));

    [Fact]
    public void Of_NoLinearDimension_IsNone()
    {
        var leader = new Stroke(Point2D.Origin, new Point2D(5, 5), StrokeKind.Leader);
        Assert.True(DimensionSpan.Of([new OrientedBox(new Point2D(8, 5), 3, 2, 0)], [leader], [leader]).IsNone);
    }

    private static void AssertBothWays(double cost, DimensionSpan one, DimensionSpan other)
    {
        Assert.Equal(cost, RowBlemish.Between(one, other));
        Assert.Equal(cost, RowBlemish.Between(other, one));
    }

    private static DimensionSpan Below(double from, double to, double level, double number, bool leader = false) =>
        Span(new Vector2D(1, 0), from, to, level, number, leader);

    /// <summary>As a place says it: line, extension lines from 0, arrowheads between them.</summary>
    private static DimensionSpan Span(Vector2D u, double from, double to, double level, double number, bool leader)
    {
        Point2D At(double along, double across) => Point2D.Origin + (u * along) + (u.Left * across);
        Stroke[] strokes =
        [
            new(At(from, level), At(to, level), StrokeKind.DimensionLine),
            new(At(from, 0), At(from, level), StrokeKind.ExtensionLine),
            new(At(to, 0), At(to, level), StrokeKind.ExtensionLine),
            .. leader ? (Stroke[])[new(At((from + to) / 2, level), At(number, level - 5), StrokeKind.Leader)] : [],
        ];
        Vector2D outward = u * Math.Sign(to - from);
        Stroke[] heads = [Arrowhead.Back(At(from, level), -outward, DraftingStyle.Small), Arrowhead.Back(At(to, level), outward, DraftingStyle.Small)];
        DimensionSpan span = DimensionSpan.Of([new OrientedBox(At(number, level + 2), 3, 1.5, 0)], strokes, heads);
        // Rounding aside, so that spans can be compared.
        return span with { From = Math.Round(span.From, 9), To = Math.Round(span.To, 9), Number = Math.Round(span.Number, 9), Along = new Vector2D(Math.Round(span.Along.X), Math.Round(span.Along.Y)) };
    }
}
