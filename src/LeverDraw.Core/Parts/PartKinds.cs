using System.Collections.Immutable;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Profiles;

namespace LeverDraw.Parts;

/// <summary>All part kinds there are. A new one is a folder, and a line here.</summary>
public static class PartKinds
{
    public static ImmutableArray<PartKind> All { get; } =
    [
        PartKind.Of<Lever>(new PartFields("adjusting-lever", LeverFields.All), profile => LeverPart.Build(profile.Values)),
    ];
}
