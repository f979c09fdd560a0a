using LeverDraw.Drafting.Layout;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Layout;

/// <summary>An extension line along x from 0 to 10, beside an outline laid out by hand.</summary>
public class SliverTests
{
    [Theory]
    [InlineData(0, 0.2, 10, 1.6, PlacingCosts.Sliver)]
    [InlineData(0, 0.2, 10, 2.6, 0)]
    [InlineData(0, 2, 10, 2.2, 0)]
    [InlineData(8, 0.2, 18, 1.6, 0)]
    public void BlemishOf_ExtensionLineBesideAnOutline_CostsWhereTheyMakeASliver(double x, double y, double toX, double toY, double cost)
    {
        var field = new ViewField([new Stroke(new Point2D(x, y), new Point2D(toX, toY), StrokeKind.Feature)]);
        Assert.Equal(cost, field.BlemishOf([new Stroke(Point2D.Origin, new Point2D(10, 0), StrokeKind.ExtensionLine)]));
        Assert.Equal(0, field.BlemishOf([new Stroke(Point2D.Origin, new Point2D(10, 0), StrokeKind.DimensionLine)]));
    }
}
