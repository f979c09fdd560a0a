using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Layout;

/// <summary>Arrowheads and rows of lettering laid out by hand; lettering 2.5 high, arrowheads 2.5 long.</summary>
public class PairBlemishTests
{
    [Theory]
    [InlineData(0.5, 0.5, 200, PlacingCosts.HeadsMeet)]
    [InlineData(1, 0, 90, PlacingCosts.HeadsMeet)]
    [InlineData(0, 0, 180, 0)]
    [InlineData(6, 0, 180, 0)]
    [InlineData(0, 3, 0, 0)]
    public void Between_ArrowheadAtADistance_CostsWhereTheyMeetButNotPointToPoint(double x, double y, double degrees, double cost)
    {
        Candidate one = WithHead(Point2D.Origin, 0), other = WithHead(new Point2D(x, y), degrees);
        AssertBothWays(cost, one, other);
    }

    [Fact]
    public void Between_LetteringInOneRow_CostsLessTheFartherItStands()
    {
        double near = Row(gap: 0.5), farther = Row(gap: 2);
        Assert.InRange(farther, 1, near);
        Assert.Equal(0, Row(gap: 6));
        Assert.Equal(0, Row(gap: 0.5, up: 4));
        Assert.Equal(0, Row(gap: 0.5, degrees: 90));
    }

    // The arrowhead points along +x and has its tip at the origin, its back 2.5 behind and 0.83 wide.
    [Theory]
    [InlineData(StrokeKind.Leader, -1, -3, -1, 3, PlacingCosts.ThroughHead)]
    [InlineData(StrokeKind.DimensionLine, -2.5, -3, -2, 3, PlacingCosts.ThroughHead)]
    [InlineData(StrokeKind.Leader, -2.6, 0, -8, 0, PlacingCosts.ThroughHead)]
    [InlineData(StrokeKind.ExtensionLine, -1, -3, -1, 3, 0)]
    [InlineData(StrokeKind.DimensionLine, 0, 0, 8, 0, 0)]
    [InlineData(StrokeKind.DimensionLine, 0, -3, 0, 3, 0)]
    [InlineData(StrokeKind.Leader, -4, -3, -4, 3, 0)]
    public void Between_LineAndAnArrowhead_CostsWhereALeaderOrDimensionLineGoesThroughIt(StrokeKind kind, double x, double y, double toX, double toY, double cost) =>
        AssertBothWays(cost, WithHead(Point2D.Origin, 0), Lined(kind, x, y, toX, toY));

    [Theory]
    [InlineData(3, 0.3, 3, 5, PlacingCosts.Touches)]
    [InlineData(12, 0, 10.2, 0, PlacingCosts.Touches + PlacingCosts.CarriedOn)]
    [InlineData(20, 0.3, 16, 0.3, PlacingCosts.CarriedOn)]
    [InlineData(20, 1, 16, 1, PlacingCosts.CarriedOn)]
    [InlineData(20, 1.5, 16, 1.5, 0)]
    [InlineData(24, 0, 19, 0, 0)]
    [InlineData(16, 0.3, 16, 5, 0)]
    [InlineData(3, -1, 3, 5, PlacingCosts.SeenAcross)]
    [InlineData(3, 1, 3, 5, 0)]
    public void Between_LeaderAtADimensionLine_CostsWhereItCrossesTouchesOrCarriesItOn(double x, double y, double toX, double toY, double cost) =>
        AssertBothWays(cost, Lined(StrokeKind.DimensionLine, 0, 0, 10, 0), Lined(StrokeKind.Leader, x, y, toX, toY));

    [Theory]
    [InlineData(8, 0, 15, 0, PlacingCosts.OnExtension)]
    [InlineData(-5, 0.2, 15, 0.2, PlacingCosts.OnExtension)]
    [InlineData(10, 0, 15, 0, 0)]
    [InlineData(8, 2, 15, 2, 0)]
    [InlineData(5, -3, 5, 3, 0)]
    public void Between_DimensionLineAndExtensionLine_CostsWhereTheyAreOneLine(double x, double y, double toX, double toY, double cost) =>
        AssertBothWays(cost, Lined(StrokeKind.DimensionLine, 0, 0, 10, 0), Lined(StrokeKind.ExtensionLine, x, y, toX, toY));

    // Lettering or a sign from (0, 0) to (12, 5).
    [Theory]
    [InlineData(StrokeKind.Leader, 0, 5.6, 12, 5.6, PlacingCosts.Underlined)]
    [InlineData(StrokeKind.Leader, 4, -0.6, 16, -0.6, PlacingCosts.Underlined)]
    [InlineData(StrokeKind.Leader, 0, 6.5, 12, 6.5, 0)]
    [InlineData(StrokeKind.Leader, 8, 5.6, 20, 5.6, 0)]
    [InlineData(StrokeKind.Leader, 0, 5.6, 12, 6.4, 0)]
    [InlineData(StrokeKind.DimensionLine, 0, 5.7, 12, 5.7, 0)]
    public void Between_LeadersShoulderAndLettering_CostsWhereItSeemsToBelongToIt(StrokeKind kind, double x, double y, double toX, double toY, double cost) =>
        AssertBothWays(cost, OnShoulder(OrientedBox.FromCorner(Point2D.Origin, 12, 5, 0)), Lined(kind, x, y, toX, toY));

    // A mark's words from (0, 0) to (12, 5), its own stroke far away: under another's shoulder they look like one more line of that label, so from 2 mm on.
    [Theory]
    [InlineData(6.8, PlacingCosts.Underlined)]
    [InlineData(7.2, 0)]
    public void Between_LeadersShoulderAndAMarksWords_CostsFartherOff(double y, double cost)
    {
        Candidate mark = new([OrientedBox.FromCorner(Point2D.Origin, 12, 5, 0)], [new Stroke(new Point2D(100, 100), new Point2D(110, 100), StrokeKind.Mark)], 0, () => new AnnotationInk([], null));
        AssertBothWays(cost, mark, Lined(StrokeKind.Leader, 0, y, 12, y));
    }

    // Lettering from (0, 0) to (12, 5), an upright line at its right end; extension lines stand beside their own numbers everywhere.
    [Theory]
    [InlineData(StrokeKind.DimensionLine, 12.5, PlacingCosts.BesideDimension)]
    [InlineData(StrokeKind.DimensionLine, 12.7, 0)]
    [InlineData(StrokeKind.ExtensionLine, 12.5, 0)]
    public void Between_LetteringAndADimensionLine_CostsWhereItIsSqueezedInBesideIt(StrokeKind kind, double x, double cost) =>
        AssertBothWays(cost, OnShoulder(OrientedBox.FromCorner(Point2D.Origin, 12, 5, 0)), Lined(kind, x, -9, x, 9));

    // Lettering from (0, 0) to (12, 5), before which a level line ends.
    [Theory]
    [InlineData(StrokeKind.ExtensionLine, 2, -1, PlacingCosts.RunsInto)]
    [InlineData(StrokeKind.ExtensionLine, 2, -1.5, 0)]
    [InlineData(StrokeKind.ExtensionLine, 6, -1, 0)]
    [InlineData(StrokeKind.DimensionLine, 2, -1, 0)]
    public void Between_LineThatEndsBeforeLettering_CostsWhereItSeemsToRunIntoIt(StrokeKind kind, double y, double end, double cost) =>
        AssertBothWays(cost, OnShoulder(OrientedBox.FromCorner(Point2D.Origin, 12, 5, 0)), Lined(kind, -20, y, end, y));

    // A letter by itself from (0, 0) to (3, 5): within 2 of a line it seems to be meant by it.
    [Theory]
    [InlineData(StrokeKind.ExtensionLine, 4, 2, 9, 7, PlacingCosts.LetterAtLine)]
    [InlineData(StrokeKind.DimensionLine, -1, -5, -1, 9, PlacingCosts.LetterAtLine)]
    [InlineData(StrokeKind.ExtensionLine, 4.9, 2, 9, 7, PlacingCosts.LetterAtLine)]
    [InlineData(StrokeKind.ExtensionLine, 5.1, 2, 9, 7, 0)]
    public void Between_LoneLetterAndALine_CostsWhereTheLineSeemsToPointAtIt(StrokeKind kind, double x, double y, double toX, double toY, double cost) =>
        AssertBothWays(cost, Lettered(OrientedBox.FromCorner(Point2D.Origin, 3, 5, 0)), Lined(kind, x, y, toX, toY));

    // The leader comes from (-20, 0) to its arrow's tip at the origin.
    [Theory]
    [InlineData(-1.5, -3, -1.5, 3, PlacingCosts.HeadOnExtension)]
    [InlineData(-0.7, -3, -0.7, 3, PlacingCosts.HeadOnExtension + 12 + PlacingCosts.Grazes)]
    [InlineData(0.7, -3, 0.7, 3, 12 + PlacingCosts.Grazes)]
    [InlineData(-19.5, -3, -19.5, 3, PlacingCosts.Grazes)]
    [InlineData(0, 0, 0, 9, 24 + PlacingCosts.Grazes)]
    [InlineData(1.5, -3, 1.5, 3, 0)]
    [InlineData(-4, -3, -4, 3, 0)]
    [InlineData(-10, 0.3, -10, 5, PlacingCosts.Grazes)]
    [InlineData(-10, 0.9, -10, 5, 0)]
    public void Between_LeaderAndAnExtensionLine_CostsWhereItGrazesStandsInTheArrowheadOrIsAtItsTip(double x, double y, double toX, double toY, double cost)
    {
        Candidate leader = new([], [new Stroke(new Point2D(-20, 0), Point2D.Origin, StrokeKind.Leader)], 0, () => new AnnotationInk([], null), Arrowhead.Back(Point2D.Origin, new Vector2D(1, 0), DraftingStyle.Small));
        AssertBothWays(cost, leader, Lined(StrokeKind.ExtensionLine, x, y, toX, toY));
    }

    // A cutting plane's end from (30, 0) to (34, 0), its arrow above it; extension lines of a dimension that hangs below: boxes that only touch.
    [Theory]
    [InlineData(10, 0, 40, 0, PlacingCosts.MarkOnExtension)]
    [InlineData(10, 0, 29, 0, 0)]
    [InlineData(10, -2, 40, -2, 0)]
    [InlineData(32, -9, 32, -1, 0)]
    public void OfMark_CuttingPlanesEndOnAnExtensionLine_Costs(double x, double y, double toX, double toY, double cost)
    {
        Candidate end = new([], [new Stroke(new Point2D(30, 0), new Point2D(34, 0), StrokeKind.Mark), new Stroke(new Point2D(34, 7), new Point2D(34, 0), StrokeKind.Mark)], 0, () => new AnnotationInk([], null));
        Candidate dimension = Lined(StrokeKind.ExtensionLine, x, y, toX, toY);
        Assert.True(end.IsMark && !dimension.IsMark);
        Assert.Equal((cost, cost), (LineBlemish.OfMark(end.Strokes, dimension), LineBlemish.OfMark(dimension.Strokes, end)));
    }

    // Two leaders, the second's shoulder ending half a millimetre from the first, and 2 mm from it.
    [Theory]
    [InlineData(0.5, PlacingCosts.Touches)]
    [InlineData(2, 0)]
    public void Between_TwoLeadersThatTouch_Cost(double away, double cost) =>
        AssertBothWays(cost, Lined(StrokeKind.Leader, 0, -10, 0, 10), Lined(StrokeKind.Leader, away, 0, 12, 0));

    [Fact]
    public void AtArcEnd_CostsNothingFromHalfAnArrowheadOn()
    {
        Assert.Equal(12, PlacingCosts.AtArcEnd(0, 2.5));
        Assert.Equal(6, PlacingCosts.AtArcEnd(0.625, 2.5));
        Assert.Equal(0, PlacingCosts.AtArcEnd(1.25, 2.5));
    }

    private static void AssertBothWays(double cost, Candidate one, Candidate other)
    {
        Assert.Equal(cost, PairBlemish.Between(one, other));
        Assert.Equal(cost, PairBlemish.Between(other, one));
    }

    private static Candidate Lined(StrokeKind kind, double x, double y, double toX, double toY) =>
        new([], [new Stroke(new Point2D(x, y), new Point2D(toX, toY), kind)], 0, () => new AnnotationInk([], null));

    private static double Row(double gap, double up = 0, double degrees = 0)
    {
        Candidate left = Lettered(OrientedBox.FromCorner(Point2D.Origin, 12, 5, 0));
        Candidate right = Lettered(new OrientedBox(new Point2D(12 + gap + 6, 2.5 + up), 6, 2.5, degrees * Math.PI / 180));
        Assert.Equal(PairBlemish.Between(left, right), PairBlemish.Between(right, left), 1e-9);
        return PairBlemish.Between(left, right);
    }

    /// <summary>On a shoulder of its own, here far away: no letter by itself.</summary>
    private static Candidate OnShoulder(OrientedBox box) => new([box], [new Stroke(new Point2D(100, 100), new Point2D(110, 100), StrokeKind.Leader)], 0, () => new AnnotationInk([], null));

    private static Candidate Lettered(OrientedBox box) => new([box], [], 0, () => new AnnotationInk([], null));

    private static Candidate WithHead(Point2D tip, double degrees) =>
        new([], [], 0, () => new AnnotationInk([], null), Arrowhead.Back(tip, Vector2D.FromAngle(degrees * Math.PI / 180), DraftingStyle.Small));
}
