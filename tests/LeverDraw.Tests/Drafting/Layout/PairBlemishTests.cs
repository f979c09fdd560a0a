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
        Assert.Equal(cost, PairBlemish.Between(one, other));
        Assert.Equal(cost, PairBlemish.Between(other, one));
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

    private static double Row(double gap, double up = 0, double degrees = 0)
    {
        Candidate left = Lettered(OrientedBox.FromCorner(Point2D.Origin, 12, 5, 0));
        Candidate right = Lettered(new OrientedBox(new Point2D(12 + gap + 6, 2.5 + up), 6, 2.5, degrees * Math.PI / 180));
        Assert.Equal(PairBlemish.Between(left, right), PairBlemish.Between(right, left), 1e-9);
        return PairBlemish.Between(left, right);
    }

    private static Candidate Lettered(OrientedBox box) => new([box], [], 0, () => new AnnotationInk([], null));

    private static Candidate WithHead(Point2D tip, double degrees) =>
        new([], [], 0, () => new AnnotationInk([], null), Arrowhead.Back(tip, Vector2D.FromAngle(degrees * Math.PI / 180), DraftingStyle.Small));
}
