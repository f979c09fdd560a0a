using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>The nose enlarged, where the sizes that meet the cap iron's slot can be read.</summary>
internal static class LeverNoseDetail
{
    /// <summary>The round nose's radius.</summary>
    public const string Nose = "tongue.nose";

    /// <summary>Degrees.</summary>
    private const double LeastDrawnTaper = 1;

    public static double CircleRadius(Lever lever) =>
        Math.Max(lever.Sizes[LeverFields.TongueThickness].Millimetres, 2 * (lever.Side.NoseTip - lever.Side.NoseCentre).Length) * 0.85;

    /// <summary>The thin circle round the nose in the side view.</summary>
    public static ViewEdge Mark(Lever lever) => Around(lever).Circle;

    public static ViewSource Of(Lever lever, DimensionText text)
    {
        SideFeatures side = lever.Side;
        CircledDetail around = Around(lever);
        Vector2D along = (side.NoseCentre - Point2D.Origin).Unit();
        // Each from the centre outward: a chain line begins with a dash, so they cross in dashes there.
        IEnumerable<ViewEdge> axes = new[] { side.NoseCentre - (along * around.Reach), side.NoseTip, side.NoseUpper, side.NoseLower }
            .Select(end => new ViewEdge(LineRole.Centre, new LineEdge(side.NoseCentre, end)));
        return around.View("nose", LeverLetters.Nose, side, axes, Annotations(lever, text));
    }

    private static CircledDetail Around(Lever lever) => new(lever.Side.NoseCentre, CircleRadius(lever));

    private static IEnumerable<Annotation> Annotations(Lever lever, DimensionText text)
    {
        SideFeatures side = lever.Side;
        SizeValue thickness = lever.Sizes[LeverFields.TongueThickness];
        // From the flanks' side the extension lines would make slivers with them; a bulb's neck stands back.
        DimensionSides beyondTip = (side.NoseLower - side.NoseUpper).Cross(side.NoseTip - side.NoseCentre) > 0 ? DimensionSides.Left : DimensionSides.Right;
        yield return new LinearDimension(LeverFields.TongueThickness.Name, thickness.Millimetres, text.Size(thickness), side.NoseUpper, side.NoseLower, (side.NoseLower - side.NoseUpper).Angle)
        {
            Better = lever.Sizes.Find(LeverFields.NeckThickness) is null ? beyondTip : DimensionSides.Both,
        };
        if (side.Nose is { } nose)
            yield return new RadiusDimension(Nose, nose.Radius, text.Reference(Length.FromMillimetres(nose.Radius), "R"), [nose]) { MaterialAtCentre = true };
        if (side.NoseCorner is { } corner)
            yield return new RadiusDimension(LeverFields.NoseRadius.Name, corner.Radius, CornerText(side.NoseEnd is null, corner.Radius, text), [corner]) { MaterialAtCentre = true };
        if (side.NeckFillet is { } neckFillet)
            yield return new RadiusDimension("blends.fillet.neck", neckFillet.Radius, text.Size(Length.FromMillimetres(neckFillet.Radius), "2× R"), [neckFillet]) { MaterialAtCentre = false };
        if (lever.Sizes.Find(LeverFields.NeckThickness) is { } neck)
        {
            // Stated half the bulb's diameter behind its centre, as a note says, across the neck itself: extension lines would make slivers with the flanks.
            Vector2D back = (side.NoseCentre - Point2D.Origin).Unit() * (thickness.Millimetres / 2);
            Vector2D across = (side.NoseLower - side.NoseUpper).Unit() * (neck.Millimetres / 2);
            Point2D middle = side.NoseCentre - back;
            yield return new LinearDimension(LeverFields.NeckThickness.Name, neck.Millimetres, text.Size(neck), middle - across, middle + across, across.Angle) { Better = DimensionSides.None, Slide = (0, 0) };
        }

        if (lever.Forms.Tongue != LeverFields.Parallel)
            yield return FlankTaper(lever);

        if (side.FlankLower is ArcEdge cam)
            yield return new RadiusDimension(LeverFields.CamRadius.Name, cam.Radius, text.Size(lever.Sizes[LeverFields.CamRadius], "R"), [.. EdgeClip.ToCircle([cam], side.NoseCentre, CircleRadius(lever)).OfType<ArcEdge>()]) { MaterialAtCentre = true };
    }

    /// <summary>Corners that take up the whole end follow from the thickness.</summary>
    private static Label CornerText(bool fullRound, double radius, DimensionText text) =>
        fullRound ? text.Reference(Length.FromMillimetres(radius), "2× R") : text.Size(Length.FromMillimetres(radius), "2× R");

    /// <summary>The angle between mid-line and straight flank, about the point beyond the nose where the two meet.</summary>
    private static Annotation FlankTaper(Lever lever)
    {
        SideFeatures side = lever.Side;
        Vector2D along = (side.NoseCentre - Point2D.Origin).Unit(), flank = (side.FlankUpper.To - side.FlankUpper.From).Unit();
        double slope = along.Cross(flank);
        Angle taper = Angle.FromRadians(Math.Asin(Math.Abs(slope)));
        string sign = lever.Forms.Tongue == LeverFields.Cam ? string.Empty : "2× ";
        // So slight a slope meets the mid-line too far off to be drawn as an angle.
        if (taper.Degrees < LeastDrawnTaper)
            return new LeaderNote(LeverFields.FlankTaper.Name, taper.Radians, DimensionText.Degrees(taper, sign), [side.FlankUpper.PointAt(0.15), side.FlankUpper.PointAt(0.3)]);

        double reach = CircleRadius(lever);
        Point2D apex = side.FlankUpper.From - (flank * (along.Cross(side.FlankUpper.From - Point2D.Origin) / slope));
        double middleEnd = (apex - (side.NoseCentre - (along * reach))).Length;
        double flankEnd = EdgeClip.ToCircle([side.FlankUpper], side.NoseCentre, reach).Max(e => (e.End - apex).Length);
        double middle = (-along).Angle, aside = flank.Angle;
        bool flankLast = (-along).Cross(flank) > 0;
        double outer = Math.Max(middleEnd, flankEnd);
        return new AngleDimension(
            LeverFields.FlankTaper.Name, taper.Radians, DimensionText.Degrees(taper, sign), apex, flankLast ? middle : aside, flankLast ? aside : middle, flankLast ? middleEnd : flankEnd, flankLast ? flankEnd : middleEnd)
        {
            Reach = (outer + 0.6, outer + 6),
        };
    }
}
