using LeverDraw.Parts;
using LeverDraw.Profiles;

namespace LeverDraw.Mechanism.Setups;

/// <summary>The kind of profile that names a lever, its pin and the plane they stand in.</summary>
public static class SetupKind
{
    public static PartKind Kind { get; } = PartKind.OfSeveral<Setup>(
        new PartFields("setup", SetupFields.All) { Common = CommonFields.OfFile },
        SetupReading.Build);
}
