using System.Collections.Immutable;

namespace LeverDraw.Mechanism;

/// <summary>A part that may be replaced to cure lost motion.</summary>
public enum MechanismPart
{
    Pin,
    Lever,
    Nut,
    CapIron,
    Iron,
}

/// <summary>What the parts are called.</summary>
public static class MechanismParts
{
    public static ImmutableArray<MechanismPart> All { get; } = [MechanismPart.Pin, MechanismPart.Lever, MechanismPart.Nut, MechanismPart.CapIron, MechanismPart.Iron];

    public static string Word(this MechanismPart part) => part switch
    {
        MechanismPart.Pin => "pin",
        MechanismPart.Lever => "lever",
        MechanismPart.Nut => "nut",
        MechanismPart.CapIron => "cap iron",
        _ => "iron",
    };
}
