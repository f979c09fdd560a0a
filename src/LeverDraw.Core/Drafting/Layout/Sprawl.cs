using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>The price of making a block larger than its view with two tiers all round; height is cheaper than width. It is what thrift changes where paper is narrow.</summary>
/// <param name="Free">The box within which annotations cost nothing extra.</param>
/// <param name="PerMillimetre">Of width; a millimetre of height costs 0.4 of it.</param>
public readonly record struct Sprawl(Box2D Free, double PerMillimetre)
{
    /// <summary>Prices of width: the usual one, and those for paper that is too narrow for that; from the first of these on the room of all together is seen to.</summary>
    public const double Generous = 0.25, Thrifty = 2, Stingy = 8;

    /// <summary>A view's own box with two tiers round it.</summary>
    public static Sprawl Around(Box2D view, DraftingStyle style, double perMillimetre) =>
        new(view.Inflated(style.FirstTier + style.TierSpacing + 1), perMillimetre);

    /// <summary>What one more costs where others take their room already.</summary>
    public Sprawl Beside(Box2D others) => this with { Free = Free.Union(others) };

    public double Of(Box2D bounds)
    {
        if (PerMillimetre == 0)
            return 0;
        double wide = Math.Max(0, Free.MinX - bounds.MinX) + Math.Max(0, bounds.MaxX - Free.MaxX);
        double high = Math.Max(0, Free.MinY - bounds.MinY) + Math.Max(0, bounds.MaxY - Free.MaxY);
        return PerMillimetre * (wide + (0.4 * high));
    }
}
