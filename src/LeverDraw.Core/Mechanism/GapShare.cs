using System.Collections.Immutable;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Mechanism;

/// <summary>What one gap costs.</summary>
/// <param name="Typical">All sizes at the middle of their limits.</param>
/// <param name="Turns">Lost through it, by the formula.</param>
/// <param name="Share">Of all lost turns, 0 to 1; a gap that binds has none.</param>
/// <param name="PerTenth">Turns that one tenth of a millimetre more would cost.</param>
public sealed record GapShare(Gap Gap, Length Typical, SizeLimits Worst, double Turns, double Share, double PerTenth)
{
    public static ImmutableArray<GapShare> Of(Linkage linkage)
    {
        ArgumentNullException.ThrowIfNull(linkage);
        double Idle(Gap gap) => Math.Max(0, linkage.Turns(linkage.Typical[gap] * linkage.Motion.FactorOf(gap)));
        double all = Gaps.All.Sum(Idle);
        return [.. Gaps.All.Select(gap => new GapShare(
            gap, linkage.Typical[gap], linkage.Sizes.Worst(gap), linkage.Turns(linkage.Typical[gap] * linkage.Motion.FactorOf(gap)),
            all == 0 ? 0 : Idle(gap) / all, linkage.Turns(Length.FromMillimetres(0.1) * linkage.Motion.FactorOf(gap))))];
    }
}
