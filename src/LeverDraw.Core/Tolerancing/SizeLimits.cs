using LeverDraw.Units;

namespace LeverDraw.Tolerancing;

/// <summary>The two limits of a size, both allowed.</summary>
public readonly record struct SizeLimits
{
    /// <exception cref="ArgumentException">The lower limit is above the upper one.</exception>
    public SizeLimits(Length min, Length max)
    {
        if (min > max)
            throw new ArgumentException("The lower limit must not be above the upper one.", nameof(min));
        Min = min;
        Max = max;
    }

    public Length Min { get; }

    public Length Max { get; }

    /// <summary>The tolerance: max − min, never negative.</summary>
    public Length Width => Max - Min;

    public Length Mid => (Min + Max) / 2;

    public bool Contains(Length size) => size >= Min && size <= Max;

    /// <summary>The same width elsewhere, as along a taper.</summary>
    public SizeLimits Moved(Length by) => new(Min + by, Max + by);

    public LimitDeviations From(Length nominal) => new(Min - nominal, Max - nominal);
}
