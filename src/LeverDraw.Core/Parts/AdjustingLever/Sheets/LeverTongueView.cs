using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Profiles;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>The auxiliary view: the tongue square to its mid-line, in true shape. It carries the tongue's width, which the fork view shows on a foreshortened face.</summary>
internal static class LeverTongueView
{
    /// <summary>Below this sweep, radians, the fork view shows the tongue as good as true (foreshortened by less than 3.5 %) and an auxiliary view would say nothing new (own rule).</summary>
    private const double LeastSweep = Math.PI / 12;

    public static bool IsNeeded(Lever lever) => Sweep(lever) >= LeastSweep;

    /// <summary>The width, for this view or, without it, for the fork view.</summary>
    public static LinearDimension Width(Lever lever, DimensionText text, double level, DimensionSides sides)
    {
        SizeValue width = lever.Sizes[LeverFields.TongueWidth];
        double half = width.Millimetres / 2;
        return new LinearDimension(LeverFields.TongueWidth.Name, width.Millimetres, text.Size(width), new Point2D(-half, level), new Point2D(half, level), 0) { Sides = sides };
    }

    /// <summary>The arrow in the side view from where one looks, at the tongue's flank.</summary>
    public static ViewArrow Arrow(Lever lever) =>
        new("view.tongue", LeverLetters.Tongue, Aim(lever.Side.FlankUpper, lever.Side.NoseCentre, LeverNoseDetail.CircleRadius(lever)), lever.Side.Tongue.Across);

    /// <summary>The flank outside the nose's circle, without its ends; its last piece where the circle leaves next to nothing.</summary>
    private static LineEdge Aim(LineEdge flank, Point2D nose, double circle)
    {
        const double Most = 0.8, End = 0.15;
        double from = Math.Min(Most, EdgeClip.ToCircle([flank], nose, circle).Select(e => (e.End - flank.From).Length / flank.Length).DefaultIfEmpty(0).Max());
        double end = (1 - from) * End;
        return flank.Trimmed(from + end, 1 - end);
    }

    public static ViewSource Of(Lever lever, DimensionText text)
    {
        ViewGeometry seen = LeverViews.TongueTrue(lever);
        Box2D box = seen.Edges.Aggregate(Box2D.Empty, (b, e) => b.Union(e.Edge.Box));
        return new ViewSource("tongue", LeverLetters.Tongue)
        {
            Edges = [.. seen.Edges, .. Break(box)],
            Annotations = [Width(lever, text, box.MinY + (0.55 * box.Height), DimensionSides.Left)],
            // Drawn upright; the arrow sees it leaning as in the side view.
            Turned = Sweep(lever),
            IsMain = false,
        };
    }

    /// <summary>The thin zigzag that ends a partial view (ISO 128-2 practice, proportions our own).</summary>
    private static IEnumerable<ViewEdge> Break(Box2D box)
    {
        double out_ = 0.12 * box.Width, tooth = 0.07 * box.Width;
        return BreakLine.Zigzag(new(box.MinX - out_, box.MinY), new(box.MaxX + out_, box.MinY), tooth, tooth / 2).Select(line => new ViewEdge(LineRole.Dimension, line));
    }

    private static double Sweep(Lever lever) => (Math.PI / 2) - lever.Side.Tongue.Along.Angle;
}
