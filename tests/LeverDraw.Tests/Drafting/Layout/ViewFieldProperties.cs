using CsCheck;
using LeverDraw.Drafting;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Layout;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Layout;

/// <summary>The grid is only there for speed: nothing near is ever missed.</summary>
public class ViewFieldProperties
{
    private static readonly Gen<Point2D> Points = Gen.Select(Gen.Double[-60, 60], Gen.Double[-60, 60], (x, y) => new Point2D(x, y));

    private static readonly Gen<Stroke[]> Strokes = Gen.Select(Points, Points, Gen.Enum<StrokeKind>(), (a, b, kind) => new Stroke(a, b, kind)).Array[1, 30];

    [Fact]
    public void CostOf_Text_IsBrokenExactlyWhereSomeStrokeStrikesIt() =>
        Gen.Select(Strokes, Points, Gen.Double[0.5, 20], Gen.Double[-3, 3]).Sample((strokes, at, half, angle) =>
        {
            OrientedBox text = new(at, half, 2, angle);
            double cost = new ViewField(strokes).CostOf(new Candidate([text], [], 0, null!));
            Assert.Equal(strokes.Any(s => text.Meets(s.A, s.B)), cost >= PlacingCosts.Broken);
        }, iter: 1000);

    [Fact]
    public void CostOf_Leader_IsTheSumOfItsCrossings() =>
        Gen.Select(Strokes, Points, Points).Sample((strokes, a, b) =>
        {
            Stroke leader = new(a, b, StrokeKind.Leader);
            double crossings = strokes.Where(s => leader.Crosses(s)).Sum(s => s.Kind switch
            {
                StrokeKind.Light => 0,
                StrokeKind.Lining => PlacingCosts.CrossingLining(StrokeKind.Leader),
                _ => PlacingCosts.CrossingFeature(StrokeKind.Leader),
            });
            double cost = new ViewField(strokes).CostOf(new Candidate([], [leader], 0, null!));
            // Random strokes seldom run along or lie beside each other; where they do, the price is another.
            if (!strokes.Any(s => leader.RunsAlong(s, 0.4) || leader.LiesBeside(s, PlacingCosts.BesideLight)))
                Assert.Equal(crossings, cost, 9);
        }, iter: 1000);

    // Section lines at 45 degrees: a leader across them is seen, one at 60 degrees, 15 to them, is lost.
    [Fact]
    public void SeenCostOf_LeaderAmongSectionLines_CostsOnlyNearTheirSlant()
    {
        ViewField field = new(Enumerable.Range(0, 5).Select(i => new Stroke(new Point2D(4 * i, 0), new Point2D((4 * i) + 10, 10), StrokeKind.Lining)));
        Assert.Equal(0, field.SeenCostOf([new Stroke(new Point2D(0, 8), new Point2D(20, 2), StrokeKind.Leader)]));
        double askew = field.SeenCostOf([new Stroke(new Point2D(6, 0), new Point2D(16, 17.3), StrokeKind.Leader)]);
        Assert.True(askew > 0 && askew < PlacingCosts.AlongLining);
        // Along them, within 12 degrees: lost between two of them without crossing any.
        Assert.Equal(PlacingCosts.AlongLining, field.SeenCostOf([new Stroke(new Point2D(2, 0), new Point2D(11, 9.5), StrokeKind.Leader)]));
    }

    // An outline from (0, 0) to (20, 0): crossed in its middle, and a millimetre from its end.
    [Fact]
    public void SeenCostOf_LeaderOverAnOutline_CostsMoreAtItsCorner()
    {
        ViewField field = new([new Stroke(new Point2D(0, 0), new Point2D(20, 0), StrokeKind.Feature)]);
        Assert.Equal(PlacingCosts.SeenOverFeature, field.SeenCostOf([new Stroke(new Point2D(10, -5), new Point2D(12, 5), StrokeKind.Leader)]));
        Assert.Equal(PlacingCosts.SeenOverFeature + PlacingCosts.ThroughCorner, field.SeenCostOf([new Stroke(new Point2D(18, -5), new Point2D(20, 5), StrokeKind.Leader)]));
    }

    // A number 2 high and 6 wide, its lower side at y − 1, over a level narrow line; an outline has its own price, at every stage.
    [Theory]
    [InlineData(1.3, PlacingCosts.CloseToLight)]
    [InlineData(1.5, 0)]
    public void SeenCostOf_LetteringBesideANarrowLine_CostsWhereItIsClose(double y, double cost)
    {
        OrientedBox number = new(new Point2D(10, y), 3, 1, 0);
        Assert.Equal(cost, new ViewField([new Stroke(new Point2D(0, 0), new Point2D(20, 0), StrokeKind.Light)]).SeenCostOf([number]));
        Assert.Equal(0, new ViewField([new Stroke(new Point2D(0, 0), new Point2D(20, 0), StrokeKind.Feature)]).SeenCostOf([number]));
    }

    // An arrow from below to (x, 0) on a level outline, on which an upright one ends at (10, 0) and a centre line crosses at (20, 0).
    [Theory]
    [InlineData(5, 0)]
    [InlineData(10, 24)]
    [InlineData(10.7, 12)]
    [InlineData(11.4, 0)]
    [InlineData(20, 8)]
    public void TipCostOf_TipWhereAnotherLineBeginsOrPasses_CostsByItsDistance(double x, double cost)
    {
        ViewField field = new(
        [
            new Stroke(new Point2D(0, 0), new Point2D(30, 0), StrokeKind.Feature),
            new Stroke(new Point2D(10, 0), new Point2D(10, 15), StrokeKind.Feature),
            new Stroke(new Point2D(20, -10), new Point2D(20, 10), StrokeKind.Light),
        ]);
        Assert.Equal(cost, field.TipCostOf([Arrowhead.Back(new Point2D(x, 0), new Vector2D(0, 1), DraftingStyle.Small)]), 9);
    }

    [Fact]
    public void CostOf_EmptyView_IsNothing() =>
        Assert.Equal(0, new ViewField([]).CostOf(new Candidate([new OrientedBox(Point2D.Origin, 5, 5, 0)], [], 0, null!)));
}
