using System.Collections.Immutable;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.HostPlanes;
using LeverDraw.Parts.PivotPin;

namespace LeverDraw.Mechanism.Setups;

/// <summary>A lever in a plane as it was found, what could be replaced, and what that costs.</summary>
/// <param name="Found">As it stands, with what was measured.</param>
/// <param name="Spares">Where new nut, irons and cap irons come from.</param>
/// <param name="Prices">Of the parts that may be replaced.</param>
/// <param name="Target">Lost turns the owner would accept; null when not said.</param>
public sealed record Setup(
    string Name,
    SetupPart<Lever> Lever,
    SetupPart<Pin> Pin,
    SetupPart<HostPlane> Plane,
    HostPlane Spares,
    Assembly Found,
    Linkage Linkage,
    ImmutableDictionary<MechanismPart, double> Prices,
    string Money,
    double? Target)
{
    /// <summary>The parts as drawn, nothing worn: the setup's lever and pin, the spares' nut and irons.</summary>
    public Assembly AllNew => Cures.Replace(this, [.. MechanismParts.All]);
}

/// <summary>A part that a setup names, and its profile's own name.</summary>
public sealed record SetupPart<T>(string Path, string Name, T Part);
