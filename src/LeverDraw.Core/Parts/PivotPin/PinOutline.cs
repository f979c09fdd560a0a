using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;
using LeverDraw.Units;

namespace LeverDraw.Parts.PivotPin;

/// <summary>The pin's outline, both halves.</summary>
internal sealed record PinOutline(Contour Contour, Point2D LargeBase, Point2D SmallBase)
{
    public static PinOutline Of(double length, PinEnd large, PinEnd small, Length? crown, string ends)
    {
        double half = length / 2;
        Point2D largeBase = new(half - large.Depth, large.Base), smallBase = new(small.Depth - half, small.Base);
        OutlinePath path = new(Below(largeBase));
        if (crown is { Millimetres: var radius })
        {
            path.Turn("crown-large", new(half - radius, 0), largeBase, true);
            path.To("side-upper", smallBase);
            path.Turn("crown-small", new(radius - half, 0), Below(smallBase), true);
        }
        else
        {
            bool chamfered = ends == PinFields.Chamfered;
            path.To(chamfered ? "chamfer-large-lower" : "end-large", new(half, -large.Tip));
            path.To("end-large", new(half, large.Tip));
            path.To("chamfer-large-upper", largeBase);
            path.To("side-upper", smallBase);
            path.To("chamfer-small-upper", new(-half, small.Tip));
            path.To("end-small", new(-half, -small.Tip));
            path.To("chamfer-small-lower", Below(smallBase));
        }

        path.To("side-lower", Below(largeBase));
        return new PinOutline(Contour.Of(path.Edges.Select(e => e.Edge)), largeBase, smallBase);
    }

    private static Point2D Below(Point2D p) => new(p.X, -p.Y);
}
