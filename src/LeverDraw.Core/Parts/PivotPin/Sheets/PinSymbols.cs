using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Geometry;
using LeverDraw.Units;

namespace LeverDraw.Parts.PivotPin.Sheets;

/// <summary>The pin's surface texture and edges: one sign on its side, which is one surface all round; its ends and all edges by the general signs.</summary>
internal static class PinSymbols
{
    /// <summary>Limits of a broken edge: common practice for a small turned part, no source. Less than a lever's, whose edges are filed.</summary>
    public static readonly Length LeastBreak = Length.FromMillimetres(0.05), GreatestBreak = Length.FromMillimetres(0.2);

    /// <summary>Shares of the length, from the large end, at which the sign may stand on the side.</summary>
    private static readonly ImmutableArray<double> Places = [0.8, 0.72, 0.88, 0.25, 0.4, 0.6];

    /// <summary>The rest is turned, to the profile's roughness where it states one.</summary>
    public static GeneralSigns General(Pin pin, DimensionText text) => new(
        TextureSign.Machined(pin.EndRoughness) ?? new TextureSign(TextureProcess.Removal),
        text.BrokenEdge(LeastBreak, GreatestBreak))
    {
        HasOthers = TextureSign.Machined(pin.SideRoughness) is not null,
    };

    public static ImmutableArray<Annotation> Of(Pin pin)
    {
        if (TextureSign.Machined(pin.SideRoughness) is not { } sign)
            return [];
        int side = pin.LargeEndRight ? 1 : -1;
        double half = pin.Length.Millimetres / 2;
        var points = Places.Select(share =>
        {
            double from = share * pin.Length.Millimetres;
            double r = (pin.LargeEnd.Millimetres - (from * pin.Taper.Rate)) / 2;
            return new SurfacePoint(new Point2D(side * (half - from), r), new Vector2D(side * pin.Taper.Rate / -2, 1).Unit());
        });
        return [new SurfaceTexture(PinFields.SideTexture.Name, sign, [.. points])];
    }
}
