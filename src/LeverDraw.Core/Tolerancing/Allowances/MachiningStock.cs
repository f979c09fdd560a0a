using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Tolerancing.Allowances;

/// <summary>Stock per face on a size machined on both faces.</summary>
public static class MachiningStock
{
    /// <summary>Stock left for a file on small faces, 0.3 to 0.6 mm (common practice, no source).</summary>
    public static Length Filing { get; } = Length.FromMillimetres(0.5);

    /// <summary>Shop figures are round: up to the next of these.</summary>
    private const double Step = 0.05;

    /// <summary>What the raw size formula gives, so that the least stock in the worst case is the required allowance: RMA + DCT/4, and the spread of the contraction.</summary>
    /// <param name="finishedMost">Upper limit of the finished size.</param>
    /// <param name="spread">How far the casting may fall short by an uncertain contraction, length per length.</param>
    /// <returns>Refused when the tolerance table has no value.</returns>
    public static Answer<Length> ByRawSize(Length nominal, Length finishedMost, Length allowance, CastingToleranceRule tolerance, double spread)
    {
        Length stock = RoundedUp((finishedMost + (2 * allowance) - nominal) / 2);
        // The tolerance is that of the raw size, which it makes larger in turn; the table's steps are few, so this settles.
        while (true)
        {
            Length raw = nominal + (2 * stock);
            Answer<Length> half = tolerance.PlusMinus(raw);
            if (!half.IsGiven)
                return half;
            Length needed = RawSize.BothFaces(finishedMost, allowance, half.Value) + (raw * spread);
            if (raw.Millimetres >= needed.Millimetres - 1e-9)
                return Answer<Length>.Given(stock);
            stock = RoundedUp((needed - nominal) / 2);
        }
    }

    /// <summary>Up to the next round shop figure, 0.05 mm.</summary>
    public static Length RoundedUp(Length stock) => Length.FromMillimetres(Math.Round(Math.Ceiling((stock.Millimetres / Step) - 1e-9) * Step, 6));
}
