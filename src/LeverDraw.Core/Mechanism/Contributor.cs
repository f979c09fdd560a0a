using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Mechanism;

/// <summary>One size and how the nut's idle way hangs on it.</summary>
/// <param name="Gap">The gap it belongs to; the iron's thickness belongs to none, but moves the tongue's bearing.</param>
/// <param name="Factor">Idle way of the nut per unit of this size; negative when a larger size takes play away.</param>
/// <param name="Variance">Its share of the variance of the idle way, 0 to 1.</param>
public sealed record Contributor(string Name, Gap? Gap, SizeLimits Limits, double Factor, double Variance)
{
    /// <summary>Limits apart: the size is not just measured.</summary>
    public bool Varies => Limits.Width > Length.Zero;
}
