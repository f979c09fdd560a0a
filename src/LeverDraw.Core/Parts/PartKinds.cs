using System.Collections.Immutable;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Profiles;

namespace LeverDraw.Parts;

/// <summary>The kinds of part there are. A new one is a folder beside this file and a line here.</summary>
public static class PartKinds
{
    public static PartKind Lever { get; } = PartKind.Of<Lever>(
        new PartFields("lever", LeverFields.All), profile => LeverPart.Build(profile.Values));

    public static PartKind Pin { get; } = PartKind.Of<Pin>(
        new PartFields("pin", PinFields.All), profile => PinPart.Build(profile.Values));

    public static ImmutableArray<PartKind> All { get; } = [Lever, Pin];

    /// <summary>What the profile reader needs to know of them.</summary>
    public static ImmutableArray<PartFields> Fields { get; } = [.. All.Select(k => k.Fields)];
}
