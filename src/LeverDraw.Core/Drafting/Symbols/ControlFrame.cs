using System.Collections.Immutable;

namespace LeverDraw.Drafting.Symbols;

/// <summary>One geometrical tolerance as lettered in its frame (ISO 1101): the characteristic's sign, the zone, the datums in order.</summary>
/// <param name="Sign">One of <see cref="GeometricSigns"/>.</param>
/// <param name="Zone">Final text: with <c>⌀</c> where the zone is a cylinder.</param>
public sealed record ControlFrame(string Sign, string Zone, ImmutableArray<string> Datums)
{
    public static ControlFrame Of(string sign, string zone, params ReadOnlySpan<string> datums) => new(sign, zone, [.. datums]);

    public ImmutableArray<string> Compartments => [Sign, Zone, .. Datums];

    public override string ToString() => string.Join(' ', Compartments);
}
