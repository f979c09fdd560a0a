using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Sheets;
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

    /// <summary>Sizes between faces that are left as cast, as far as the sheet letters a tolerance on them.</summary>
    private static readonly ImmutableArray<SizeField> _ofCastFaces =
    [
        LeverFields.HeadDepth, LeverFields.HeadCornerRadius, LeverFields.ArmThickness, LeverFields.ArmWidth, LeverFields.ForkGap, LeverFields.CrotchRadius, LeverFields.ShoulderRadius,
        LeverFields.PadLength, LeverFields.PadEndCorner, LeverFields.TongueWidth, LeverFields.NeckThickness, LeverFields.FootFillet, LeverFields.HeadFillet, LeverFields.BossDiameter,
    ];

    /// <summary>The annotations of a view, those of the named features with their symbols.</summary>
    public static ImmutableArray<Annotation> Dress(ImmutableArray<Annotation> annotations, Lever lever, DimensionText text) =>
        [.. annotations.Select(a => a with { Label = Dressed(a.Name, a.Label, lever, text) })];

    /// <summary>The flat end of a parallel tongue, whose corners alone have a radius to carry the sign; null on other noses.</summary>
    public static Annotation? NoseEnd(Lever lever) => lever.Side.NoseEnd is { } end
        ? new SurfaceTexture("tongue.end", Texture(lever, LeverFields.TongueTexture), [.. new[] { 0.5, 0.3, 0.7 }.Select(t => new SurfacePoint(end.PointAt(t), lever.Side.Tongue.Along))])
        : null;

    /// <summary>Sizes that a casting may hold by itself, and that are machined where it does not. A note says so: a bare sign on the gap's short dimension line cost small sheets their scale.</summary>
    public static IEnumerable<SizeField> MachinedIfNeedBe(Lever lever) =>
        _ofCastFaces.Where(f => lever.Sizes.Find(f)?.Tolerance is not null);

    /// <summary>The rest stays as cast; machined edges are broken as the note says.</summary>
    public static GeneralSigns General(DimensionText text) => new(
        new TextureSign(TextureProcess.NoRemoval),
        text.BrokenEdge(LeastBreak, GreatestBreak));

    /// <summary>What the signs leave open: what the datums are, in which order they are made, and the unit of roughness.</summary>
    public static string Note(Lever lever, DimensionText text)
    {
        Length[] zones = [.. new[] { LeverFields.HoleSquareness, LeverFields.PadSymmetry, LeverFields.PadPosition, LeverFields.TonguePosition }.Select(f => lever.Sizes[f].Nominal).Where(z => z > Length.Zero).Distinct().Order()];
        string second = text.Units.Second() is null || zones.Length == 0 ? "" : " FRAMES: " + string.Join(", ", zones.Select(text.ZoneInEachUnit)) + ".";
        return "DATUMS: A HOLE AXIS, B MID-PLANE OF " + HeadFaces(lever) + " (FACE FIRST), C MID-PLANE OF TONGUE." + second + " Ra IN MICROMETRES.";
    }

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
                Texture = Texture(lever, LeverFields.HoleTexture),
            };
        }

        if (name == (lever.Boss is null ? LeverFields.HeadWidth.Name : LeverSection.OverBosses))
            return label with { Datum = HeadMidPlane, Texture = Texture(lever, LeverFields.HeadTexture) };
        if (name == LeverFields.ForkGap.Name)
            return label with { Frames = Frame(GeometricSigns.Symmetry, "", sizes[LeverFields.PadSymmetry].Nominal, text, HeadMidPlane) };
        if (name == LeverFields.PadThickness.Name)
        {
            return label with
            {
                Frames = Frame(GeometricSigns.Position, "", sizes[LeverFields.PadPosition].Nominal, text, HoleAxis, TongueMidPlane),
                Texture = Texture(lever, LeverFields.PadTexture),
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
                Texture = Texture(lever, LeverFields.TongueTexture),
            };
        }

        // A bulb's thickness is the diameter of its nose, and carries the sign already.
        if ((name == LeverNoseDetail.Nose && lever.Forms.Tongue != LeverFields.Bulb) || name == LeverFields.NoseRadius.Name)
            return label with { Texture = Texture(lever, LeverFields.TongueTexture) };
        return label;
    }

    /// <summary>Where the profile leaves the roughness unsaid the sign still says that the face is machined, since the rest is not.</summary>
    private static TextureSign Texture(Lever lever, RoughnessField field) =>
        TextureSign.Machined(lever.Sizes[field]) ?? new TextureSign(TextureProcess.Removal);

    /// <summary>One frame; none when the profile states zero.</summary>
    private static ImmutableArray<ControlFrame> Frame(string sign, string before, Length zone, DimensionText text, params ReadOnlySpan<string> datums) =>
        zone <= Length.Zero ? [] : [ControlFrame.Of(sign, before + text.Zone(zone), datums)];
}
