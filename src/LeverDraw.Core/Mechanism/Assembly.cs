using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.HostPlanes;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Profiles;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Mechanism;

/// <summary>A lever on its pin in a plane, and what was measured on the two. What was measured on the plane stands in <paramref name="Plane"/>.</summary>
public sealed record Assembly(Lever Lever, Pin Pin, HostPlane Plane)
{
    /// <summary>Measured on the thicker pad; null: as drawn.</summary>
    public SizeLimits? Pad { get; init; }

    public SizeLimits? PadOffset { get; init; }

    /// <summary>In the middle of the head.</summary>
    public SizeLimits? Hole { get; init; }

    /// <summary>Where the middle of the head runs.</summary>
    public SizeLimits? PinDiameter { get; init; }

    /// <summary>How much thinner the tongue is than drawn, where it bears; null: as drawn, with its tolerance.</summary>
    public SizeLimits? TongueWear { get; init; }

    public SizeLimits PadLimits => Pad ?? OfPart(Lever.Sizes[LeverFields.PadThickness]);

    /// <summary>As drawn: anything from none to the stated most.</summary>
    public SizeLimits PadOffsetLimits => PadOffset ?? new SizeLimits(Length.Zero, Lever.Sizes[LeverFields.PadOffset].Nominal);

    public SizeLimits HoleLimits => Hole ?? OfPart(Lever.Sizes[LeverFields.HoleDiameter]);

    /// <summary>Driven home: both ends equally proud, so that the pin's middle stands in the head's.</summary>
    public SizeLimits PinLimits
    {
        get
        {
            if (PinDiameter is { } measured)
                return measured;
            SizeLimits named = OfPart(Pin.NamedSize);
            Length change = Pin.Middle - Pin.NamedSize.Nominal;
            return new SizeLimits(named.Min + change, named.Max + change);
        }
    }

    /// <summary>Difference of the tongue's thickness from the drawn one.</summary>
    public SizeLimits TongueChange
    {
        get
        {
            if (TongueWear is { } wear)
                return new SizeLimits(-wear.Max, -wear.Min);
            SizeValue size = Lever.Sizes[LeverFields.TongueThickness];
            SizeLimits limits = OfPart(size);
            return new SizeLimits(limits.Min - size.Nominal, limits.Max - size.Nominal);
        }
    }

    /// <summary>A size of a part to be made: its own limits, else the general tolerance of the sheets, ISO 2768-m.</summary>
    public static SizeLimits OfPart(SizeValue size)
    {
        if (StatedLimits.Of(size) is { } stated)
            return stated;
        return new GeneralTolerance(GeneralToleranceClass.Medium).OfLength(size.Nominal) is { IsGiven: true } general
            ? general.Value.About(size.Nominal)
            : new SizeLimits(size.Nominal, size.Nominal);
    }

    /// <summary>A size of a plane: its own limits, else it was measured and is taken as it is.</summary>
    public static SizeLimits OfPlane(SizeValue size) => StatedLimits.OrExact(size);
}
