using LeverDraw.Units;

namespace LeverDraw.Tolerancing;

/// <summary>How far a size may lie from its nominal: from <see cref="Lower"/> to <see cref="Upper"/>, signed. The default value is zero width.</summary>
public readonly record struct LimitDeviations
{
    /// <exception cref="ArgumentException">The lower deviation is above the upper one.</exception>
    public LimitDeviations(Length lower, Length upper)
    {
        if (lower > upper)
            throw new ArgumentException("The lower deviation must not be above the upper one.", nameof(lower));
        Lower = lower;
        Upper = upper;
    }

    public Length Lower { get; }

    public Length Upper { get; }

    /// <summary>The tolerance: upper − lower, never negative.</summary>
    public Length Width => Upper - Lower;

    /// <summary>Where the middle of the tolerance lies from the nominal.</summary>
    public Length Mid => (Lower + Upper) / 2;

    /// <summary>True when both deviations are equally far from zero, within a nanometre.</summary>
    public bool IsSymmetric => Math.Abs((Lower + Upper).Millimetres) < 1e-6;

    /// <exception cref="ArgumentException">The value is negative.</exception>
    public static LimitDeviations PlusMinus(Length value) => new(-value, value);

    /// <summary>The limits of size about a nominal.</summary>
    public SizeLimits About(Length nominal) => new(nominal + Lower, nominal + Upper);
}
