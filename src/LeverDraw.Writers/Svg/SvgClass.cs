using LeverDraw.Drafting.Plotting;

namespace LeverDraw.Writers.Svg;

/// <summary>The class and colour of each role: the names that users restyle by, so they are a promise.</summary>
internal static class SvgClass
{
    public static ReadOnlySpan<byte> Of(LineRole role) => role switch
    {
        LineRole.Outline => "outline"u8,
        LineRole.Edge => "edge"u8,
        LineRole.RaisedMark => "raised-mark"u8,
        LineRole.Hidden => "hidden"u8,
        LineRole.Centre => "centre"u8,
        LineRole.Phantom => "phantom"u8,
        LineRole.Section => "section"u8,
        LineRole.Hatch => "hatch"u8,
        LineRole.Dimension => "dimension"u8,
        LineRole.CuttingPlane => "cutting-plane"u8,
        LineRole.Lettering => "lettering"u8,
        LineRole.Frame => "frame"u8,
        LineRole.TitleBlock => "titleblock"u8,
        LineRole.Table => "table"u8,
        LineRole.Symbol => "symbol"u8,
        LineRole.Parting => "parting"u8,
        LineRole.Allowance => "allowance"u8,
        LineRole.OverlayA => "overlay-a"u8,
        LineRole.OverlayB => "overlay-b"u8,
        _ => throw new ArgumentOutOfRangeException(nameof(role)),
    };

    /// <summary>All ink is black but the second overlay's, which also has its own line kind: a copy in grey loses nothing.</summary>
    public static ReadOnlySpan<byte> Colour(LineRole role) =>
        role == LineRole.OverlayB ? "#b00020"u8 : "#000"u8;
}
