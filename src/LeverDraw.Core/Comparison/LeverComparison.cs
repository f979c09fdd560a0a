using System.Collections.Immutable;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever;

namespace LeverDraw.Comparison;

/// <summary>Two levers laid over each other, and all in which they differ.</summary>
/// <param name="Shift">How far B was moved in the side view, (n, z) millimetres; in the fork view by the z alone.</param>
/// <param name="Sizes">What differs, as <see cref="VariantTable.Differences"/> orders it.</param>
/// <param name="Figures">Mass and strength.</param>
public sealed record LeverComparison(
    LeverVariant A,
    LeverVariant B,
    Alignment Alignment,
    Vector2D Shift,
    ViewOverlay Side,
    ViewOverlay Fork,
    ImmutableArray<ComparedRow> Sizes,
    ImmutableArray<ComparedRow> Figures)
{
    /// <summary>No area of either view differs from the exact one by more, mm².</summary>
    public double AreaError => Math.Max(Side.Areas.Error, Fork.Areas.Error);

    /// <summary>Areas and largest distances of both views as rows. A's distance is from B's outline, B's from A's.</summary>
    public ImmutableArray<ComparedRow> Overlay => [.. Rows("side", Side), .. Rows("fork", Fork)];

    public static LeverComparison Of(LeverVariant a, LeverVariant b, Alignment alignment)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        Vector2D shift = AlignmentShift.Of(alignment, a.Lever, b.Lever);
        return new LeverComparison(
            a,
            b,
            alignment,
            shift,
            ViewOverlay.Of(LeverViews.Side(a.Lever), LeverViews.Side(b.Lever), shift),
            ViewOverlay.Of(LeverViews.Fork(a.Lever), LeverViews.Fork(b.Lever), new Vector2D(0, shift.Y)),
            VariantTable.Differences([a, b]),
            VariantTable.Figures([a, b]));
    }

    private static IEnumerable<ComparedRow> Rows(string view, ViewOverlay seen)
    {
        ComparedSize Shown(Deviation d) => new(d.Shown);
        ComparedFigure Area(double squareMillimetres) => new(squareMillimetres, "mm²", 2);
        yield return new ComparedRow(view + ".area", null, null, "seen in the " + view + " view", [Area(seen.A.Area), Area(seen.B.Area)]);
        yield return new ComparedRow(view + ".area_alone", null, null, "what only it has", [Area(seen.Areas.OnlyA.Area), Area(seen.Areas.OnlyB.Area)]) { IsMutual = true };
        yield return new ComparedRow(view + ".largest_distance", null, null, "square to the other's outline", [Shown(seen.AFromB), Shown(seen.BFromA)]) { IsMutual = true };
    }
}
