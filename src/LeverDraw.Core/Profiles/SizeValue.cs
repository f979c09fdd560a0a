using LeverDraw.Units;

namespace LeverDraw.Profiles;

/// <summary>A size as the profile states it: its nominal, and its own tolerance if it has one (else the general tolerance holds).</summary>
public sealed record SizeValue(Length Nominal, StatedTolerance? Tolerance = null)
{
    public double Millimetres => Nominal.Millimetres;
}

/// <summary>A tolerance written beside a size.</summary>
public abstract record StatedTolerance;

/// <summary>A zone code such as <c>H8</c> or <c>f7</c>.</summary>
public sealed record ZoneTolerance(string Code) : StatedTolerance;

/// <summary>Upper and lower deviation from the nominal; upper is above lower.</summary>
public sealed record DeviationTolerance(Length Upper, Length Lower) : StatedTolerance;
