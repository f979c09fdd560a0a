using LeverDraw.Comparison;
using LeverDraw.Geometry;
using LeverDraw.Tests.Geometry;

namespace LeverDraw.Tests.Comparison;

public sealed class RegionOverlayTests
{
    /// <summary>Lens of two circles of radius r, centres d apart: 2r² arccos(d/2r) − (d/2)√(4r² − d²) (plane geometry, any collection of formulas).</summary>
    [Theory]
    [InlineData(5, 2)]
    [InlineData(5, 9.5)]
    [InlineData(1.7, 1.7)]
    public void Of_TwoCircles_SharesTheLens(double r, double d)
    {
        OverlayAreas areas = RegionOverlay.Of(Disc(0, r), Disc(d, r));
        double lens = (2 * r * r * Math.Acos(d / (2 * r))) - (d / 2 * Math.Sqrt((4 * r * r) - (d * d)));
        Assert.InRange(areas.Both.Area, lens - areas.Error, lens + areas.Error);
        double crescent = (Math.PI * r * r) - lens;
        Assert.InRange(areas.OnlyA.Area, crescent - areas.Error, crescent + areas.Error);
        Assert.InRange(areas.OnlyB.Area, crescent - areas.Error, crescent + areas.Error);
        // By hand: chords a thousandth of a millimetre off take less than perimeter × 0.001 from each circle.
        Assert.InRange(areas.Error, 1e-6, 2 * 2 * Math.PI * r * RegionOverlay.ChordError);
    }

    /// <summary>10 × 4 shifted by (3, 1): 7 × 3 in common, 40 − 21 = 19 each alone. Straight sides have no flattening error.</summary>
    [Fact]
    public void Of_ShiftedRectangle_IsByHand()
    {
        OverlayAreas areas = RegionOverlay.Of(new(LargestDistanceTests.Rectangle(0, 0, 10, 4), []), new(LargestDistanceTests.Rectangle(3, 1, 10, 4), []));
        Assert.Equal(0, areas.Error);
        Assert.Equal(21, areas.Both.Area, 1e-9);
        Assert.Equal(19, areas.OnlyA.Area, 1e-9);
        Assert.Equal(19, areas.OnlyB.Area, 1e-9);
        RegionPiece shared = Assert.Single(areas.Both.Pieces);
        Assert.Equal(20, shared.Perimeter, 1e-9);
    }

    /// <summary>A disc inside a larger one leaves a ring: one piece with one hole, which runs the other way round.</summary>
    [Fact]
    public void Of_DiscInDisc_LeavesARingWithAHole()
    {
        OverlayAreas areas = RegionOverlay.Of(Disc(0, 5), Disc(0, 3));
        RegionPiece ring = Assert.Single(areas.OnlyA.Pieces);
        Assert.Single(ring.Holes);
        Assert.True(ContourMeasure.Area(ring.Outer) > 0 && ContourMeasure.Area(ring.Holes[0]) < 0);
        Assert.InRange(areas.OnlyA.Area, (16 * Math.PI) - areas.Error, (16 * Math.PI) + areas.Error);
        Assert.Empty(areas.OnlyB.Pieces);
    }

    /// <summary>A hole of the one over metal of the other: the hole is metal that only the other has.</summary>
    [Fact]
    public void Of_PlateWithHoleOnPlate_HoleIsTheOthersAlone()
    {
        Contour plate = LargestDistanceTests.Rectangle(-5, -5, 10, 10);
        OverlayAreas areas = RegionOverlay.Of(new(plate, [Contour.Circle(Point2D.Origin, 2)]), new(plate, []));
        Assert.Equal(0, areas.OnlyA.Area, 1e-9);
        Assert.InRange(areas.OnlyB.Area, (4 * Math.PI) - areas.Error, (4 * Math.PI) + areas.Error);
    }

    private static Silhouette Disc(double x, double radius) => new(Contour.Circle(new(x, 0), radius), []);
}
