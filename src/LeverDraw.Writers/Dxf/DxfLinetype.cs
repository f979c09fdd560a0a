using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;

namespace LeverDraw.Writers.Dxf;

/// <param name="Elements">Dash lengths above zero, gaps below; paper millimetres, scaled by $LTSCALE.</param>
internal sealed record DxfLinetype(string Name, string Description, ImmutableArray<double> Elements)
{
    public const string Continuous = "Continuous";
    public const string Hidden = "HIDDEN";
    public const string Centre = "CENTRE";
    public const string Phantom = "PHANTOM";

    public static ImmutableArray<DxfLinetype> All { get; } =
    [
        new("ByBlock", "", []),
        new("ByLayer", "", []),
        new(Continuous, "Solid line", []),
        new(Hidden, "Dashed", Of(LineRole.Hidden)),
        new(Centre, "Long dash, dot", Of(LineRole.Centre)),
        new(Phantom, "Long dash, two dots", Of(LineRole.Phantom)),
    ];

    /// <summary>The pen's own pattern, its gaps made negative.</summary>
    private static ImmutableArray<double> Of(LineRole role) =>
        [.. Pens.Of(role).Dashes.Select((length, i) => i % 2 == 0 ? length : -length)];
}
