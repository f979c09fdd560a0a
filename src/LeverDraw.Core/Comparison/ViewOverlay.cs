using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Units;

namespace LeverDraw.Comparison;

/// <summary>The largest normal distance from one outline to another.</summary>
/// <param name="At">The point that lies farthest away, in the view's millimetres.</param>
/// <param name="Nearest">The other outline's nearest point to it.</param>
/// <param name="Distance">Within <see cref="LargestDistance.Error"/>.</param>
/// <param name="Outside">True when the point stands out of the other outline, false when it lies within.</param>
public sealed record Deviation(Point2D At, Point2D Nearest, Length Distance, bool Outside)
{
    private const int ShownDecimals = 2;

    /// <summary>To a hundredth of a millimetre, as it is shown: castings are not made to thousandths.</summary>
    public Length Shown => Length.FromMillimetres(Math.Round(Distance.Millimetres, ShownDecimals, MidpointRounding.AwayFromZero));
}

/// <summary>Two variants in one view, the second moved onto the first.</summary>
/// <param name="AFromB">Of A's outline from B's.</param>
/// <param name="BFromA">Of B's outline from A's.</param>
public sealed record ViewOverlay(Silhouette A, Silhouette B, OverlayAreas Areas, Deviation AFromB, Deviation BFromA)
{
    /// <param name="shift">How far B is moved, millimetres.</param>
    public static ViewOverlay Of(ViewGeometry a, ViewGeometry b, Vector2D shift)
    {
        Silhouette first = Silhouette.Of(a.Outlines), second = Silhouette.Of(b.Outlines).Moved(shift);
        return new ViewOverlay(
            first,
            second,
            RegionOverlay.Of(first, second),
            Largest(first.Outer, second.Outer),
            Largest(second.Outer, first.Outer));
    }

    private static Deviation Largest(Contour from, Contour to)
    {
        FarthestPoint far = LargestDistance.Between(from, to);
        return new Deviation(far.From, far.To, Length.FromMillimetres(far.Distance), ContourQueries.Contains(to, far.From) == PointPlace.Outside);
    }
}
