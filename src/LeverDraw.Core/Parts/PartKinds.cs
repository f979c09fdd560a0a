using System.Collections.Immutable;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Profiles;

namespace LeverDraw.Parts;

/// <summary>The kinds of part there are. A new one is a folder beside this file and a line here.</summary>
public static class PartKinds
{
    public const string LeverKind = "lever", PinKind = "pin";

    public static PartFields Lever { get; } = new(LeverKind, LeverFields.All);

    public static PartFields Pin { get; } = new(PinKind, PinFields.All);

    public static ImmutableArray<PartFields> All { get; } = [Lever, Pin];
}
