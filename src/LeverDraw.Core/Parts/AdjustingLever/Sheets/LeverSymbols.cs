using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>Datums, geometrical tolerances and surface textures of the finished lever. Each hangs on the dimension of its feature of size, so that it means the axis or mid-plane, and both of its faces.</summary>
/// <remarks>A: the pivot hole's axis. B: the mid-plane between the head's side faces. C: the tongue's mid-plane, which gives the tongue's direction.</remarks>
internal static class LeverSymbols
{
    /// <summary>Limits of a broken edge: common practice, no source.</summary>
    public static readonly Length LeastBreak = Length.FromMillimetres(0.2), GreatestBreak = Length.FromMillimetres(0.4);

    private const string HoleAxis = "A", HeadMidPlane = "B", TongueMidPlane = "C";

    /// <summary>The annotations of a view, those of the named features with their symbols.</summary>
    public static ImmutableArray<Annotation> Dress(ImmutableArray<Annotation> annotations, Lever lever, DimensionText text) =>
        [.. annotations.Select(a => a with { Label = Dressed(a.Name, a.Label, lever, text) })];

    /// <summary>The rest stays as cast; machined edges are broken as the note says.</summary>
    public static GeneralSigns General(DimensionText text) => new(
        new TextureSign(TextureProcess.NoRemoval),
        new EdgeSign("−" + text.FirstNumber(LeastBreak), "−" + text.FirstNumber(GreatestBreak)));

    /// <summary>What the signs leave open: the order of the datums and the unit of roughness.</summary>
    public const string Note = "SIZES FROM DATUMS A, B, C IN THAT ORDER. Ra IN MICROMETRES.";

    private static Label Dressed(string name, Label label, Lever lever, DimensionText text)
    {
        LeverSizes sizes = lever.Sizes;
        if (name == LeverFields.HoleDiameter.Name)
        {
            return label with
            {
                Frames = Frame(GeometricSigns.Perpendicularity, "⌀", sizes[LeverFields.HoleSquareness].Nominal, HeadMidPlane, text),
                Datum = HoleAxis,
                Texture = TextureSign.Machined(sizes[LeverFields.HoleTexture]),
            };
        }

        if (name == LeverFields.HeadWidth.Name)
            return label with { Datum = HeadMidPlane, Texture = TextureSign.Machined(sizes[LeverFields.HeadTexture]) };
        if (name == LeverFields.ForkGap.Name)
            return label with { Frames = Frame(GeometricSigns.Symmetry, "", sizes[LeverFields.PadSymmetry].Nominal, HeadMidPlane, text) };
        if (name == LeverFields.PadThickness.Name)
            return label with { Texture = TextureSign.Machined(sizes[LeverFields.PadTexture]) };
        if (name == LeverFields.TongueWidth.Name)
            return label with { Frames = Frame(GeometricSigns.Symmetry, "", sizes[LeverFields.TonguePosition].Nominal, HeadMidPlane, text) };
        if (name == LeverFields.TongueThickness.Name)
        {
            return label with
            {
                Frames = Frame(GeometricSigns.Symmetry, "", sizes[LeverFields.TonguePosition].Nominal, HoleAxis, text),
                Datum = TongueMidPlane,
                Texture = TextureSign.Machined(sizes[LeverFields.TongueTexture]),
            };
        }

        return label;
    }

    /// <summary>One frame; none when the profile states zero.</summary>
    private static ImmutableArray<ControlFrame> Frame(string sign, string before, Length zone, string datum, DimensionText text) =>
        zone <= Length.Zero ? [] : [ControlFrame.Of(sign, before + text.Zone(zone), datum)];
}
