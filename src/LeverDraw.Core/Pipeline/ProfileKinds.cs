using System.Collections.Immutable;
using LeverDraw.Mechanism.Setups;
using LeverDraw.Parts;

namespace LeverDraw.Pipeline;

/// <summary>All kinds of profile there are: of parts, and of what is made up of parts.</summary>
public static class ProfileKinds
{
    public static ImmutableArray<PartKind> All { get; } = [.. PartKinds.All, SetupKind.Kind];
}
