using LeverDraw.Tolerancing;

namespace LeverDraw.Profiles;

/// <summary>The limits that a size states for itself.</summary>
public static class StatedLimits
{
    /// <summary>Null when the size states no tolerance, or a zone that does not exist for it (the profile reader tells that).</summary>
    public static SizeLimits? Of(SizeValue size) => size.Tolerance switch
    {
        ZoneTolerance zone when ToleranceZone.Parse(zone.Code).Then(z => Iso286.Limits(z, size.Nominal)) is { IsGiven: true } limits => limits.Value,
        DeviationTolerance deviations => new SizeLimits(size.Nominal + deviations.Lower, size.Nominal + deviations.Upper),
        _ => null,
    };

    /// <summary>The size alone where it states no tolerance.</summary>
    public static SizeLimits OrExact(SizeValue size) => Of(size) ?? new SizeLimits(size.Nominal, size.Nominal);
}
