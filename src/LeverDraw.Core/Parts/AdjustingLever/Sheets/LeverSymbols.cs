using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>Datums, geometrical tolerances and surface textures of the finished lever. Each hangs on the dimension of its feature of size, so that it means the axis or mid-plane, and both of its faces.</summary>
/// <remarks>A: the pivot hole's axis. B: the mid-plane between the head's side faces, the bosses' where there are any. C: the tongue's mid-plane, which gives the tongue's direction.</remarks>
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
        text.BrokenEdge(LeastBreak, GreatestBreak));

    /// <summary>What the signs leave open: what the datums are, in which order they are made, and the unit of roughness.</summary>
    public static string Note(Lever lever) =>
        "DATUMS: A HOLE AXIS, B MID-PLANE OF " + HeadFaces(lever) + " (FACE FIRST), C MID-PLANE OF TONGUE. Ra IN MICROMETRES.";

    /// <summary>The faces that run in the plane's frog.</summary>
    public static string HeadFaces(Lever lever) => lever.Boss is null ? "HEAD FACES" : "BOSS FACES";

    private static Label Dressed(string name, Label label, Lever lever, DimensionText text)
    {
        LeverSizes sizes = lever.Sizes;
        if (name == LeverFields.HoleDiameter.Name)
        {
            return label with
            {
                Frames = Frame(GeometricSigns.Perpendicularity, "⌀", sizes[LeverFields.HoleSquareness].Nominal, text, HeadMidPlane),
                Datum = HoleAxis,
                Texture = TextureSign.Machined(sizes[LeverFields.HoleTexture]),
            };
        }

        if (name == (lever.Boss is null ? LeverFields.HeadWidth.Name : LeverSection.OverBosses))
            return label with { Datum = HeadMidPlane, Texture = TextureSign.Machined(sizes[LeverFields.HeadTexture]) };
        if (name == LeverFields.ForkGap.Name)
            return label with { Frames = Frame(GeometricSigns.Symmetry, "", sizes[LeverFields.PadSymmetry].Nominal, text, HeadMidPlane) };
        if (name == LeverFields.PadThickness.Name)
        {
            return label with
            {
                Frames = Frame(GeometricSigns.Position, "", sizes[LeverFields.PadPosition].Nominal, text, HoleAxis, TongueMidPlane),
                Texture = TextureSign.Machined(sizes[LeverFields.PadTexture]),
            };
        }

        // What the pads' position refers to is theoretically exact (ISO 1101, ISO 5458).
        if (name == LeverFields.Sweep.Name || name == LeverArmAnnotations.PadShift)
            return label with { Boxed = sizes[LeverFields.PadPosition].Nominal > Length.Zero };
        if (name == LeverFields.TongueThickness.Name)
        {
            return label with
            {
                Frames = Frame(GeometricSigns.Symmetry, "", sizes[LeverFields.TonguePosition].Nominal, text, HoleAxis),
                Datum = TongueMidPlane,
                Texture = TextureSign.Machined(sizes[LeverFields.TongueTexture]),
            };
        }

        return label;
    }

    /// <summary>One frame; none when the profile states zero.</summary>
    private static ImmutableArray<ControlFrame> Frame(string sign, string before, Length zone, DimensionText text, params ReadOnlySpan<string> datums) =>
        zone <= Length.Zero ? [] : [ControlFrame.Of(sign, before + text.Zone(zone), datums)];
}
