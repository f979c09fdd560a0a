using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Profiles;

/// <summary>A profile read without a fault, what it extends merged in.</summary>
/// <param name="Path">As the user gave it.</param>
/// <param name="Units">What the profile's plain numbers are in.</param>
/// <param name="Files">The profile and all it extends, nearest first.</param>
public sealed record Profile(
    string Kind,
    string Name,
    string Path,
    LengthUnit Units,
    IFieldValues Values,
    ImmutableArray<string> Files);
