using LeverDraw.Units;

namespace LeverDraw.Mechanism;

/// <summary>The four gaps, each from contact to contact; negative binds.</summary>
/// <param name="Pivot">On diameter.</param>
/// <param name="Slot">Along the bed.</param>
public readonly record struct FourGaps(Length Thread, Length Groove, Length Pivot, Length Slot)
{
    public Length this[Gap gap] => gap switch
    {
        Gap.Thread => Thread,
        Gap.Groove => Groove,
        Gap.Pivot => Pivot,
        _ => Slot,
    };
}

/// <summary>
/// How far the nut goes idle when it is turned back, by virtual work over the crossing of every gap:
/// X = c_th + c_g + ρ·c_p + k·c_t, and in turns X / p.
/// </summary>
/// <remarks>
/// Own derivation. The nut presses with F on the lever at the arm h_a; the iron then presses back with k·F, k = h_a/h_t, and the pin with ρ·F,
/// ρ = √(1 + k² + 2k·cos ψ), ψ being the angle between the two lines of push. Each gap counts as often as the nut's own force goes into the force across it.
/// Of the places where the tongue may come to bear, that counts which closes first, with the least X; <see cref="Linkage"/> finds it.
/// A tongue that tapers is pressed square to its flank, not along the bed: h_t is then less than the height of the contact, and the two ways of driving have a ρ of their own.
/// </remarks>
/// <param name="Slot">How much one millimetre of play in the slot counts: k.</param>
/// <param name="Pivot">How much one millimetre of play on the pin counts: ρ, the mean of the two ways.</param>
public readonly record struct LostMotion(double Slot, double Pivot)
{
    /// <summary>Of two arms and an angle: the plain case, a tongue pressed along the bed.</summary>
    /// <param name="nutArm">h_a, from the pivot to the nut's line of push.</param>
    /// <param name="ironArm">h_t, from the pivot to the tongue's line of push.</param>
    /// <param name="between">ψ, between the two lines.</param>
    public static LostMotion Of(Length nutArm, Length ironArm, Angle between)
    {
        double k = nutArm / ironArm;
        return new LostMotion(k, Rho(k, Math.Cos(between.Radians)));
    }

    /// <summary>How much one millimetre of the gap adds to the nut's idle way.</summary>
    public double FactorOf(Gap gap) => gap switch
    {
        Gap.Pivot => Pivot,
        Gap.Slot => Slot,
        _ => 1,
    };

    /// <summary>The nut's idle way along its stud.</summary>
    public Length Idle(FourGaps gaps) => gaps.Thread + gaps.Groove + (gaps.Pivot * Pivot) + (gaps.Slot * Slot);

    /// <summary>√(1 + k² + 2k·cos ψ).</summary>
    internal static double Rho(double k, double cosine) => Math.Sqrt(1 + (k * k) + (2 * k * cosine));
}
