using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>What the side view says of the arms: length, thickness at a level that can be found, and how a curved arm is bent.</summary>
internal static class LeverArmAnnotations
{
    public const string PadShift = "arms.pad_shift";

    /// <summary>Of a curved arm's hollow face; it follows from thickness, shift and where the arc's centre lies.</summary>
    public const string HollowRadius = "arms.hollow_radius";

    /// <summary>Where a curved arm's thickness may stand on its mid-line, seen from the pivot, best first.</summary>
    private static readonly ImmutableArray<double> _curvedStations = [0.78, 0.65, 0.62, 0.55, 0.45, 0.88];

    /// <summary>Between a raised mark and the arm's thickness, millimetres: an arrow at the mark's crest would give the thickness over it (own rule).</summary>
    private const double FromMark = 0.4;

    /// <summary>Of a curved arm's thickness: from the upright through the pivot to the arm's face, or that line would go through the arrow there (own rule).</summary>
    private const double FromUpright = 0.6;

    /// <summary>From a curved arm's thickness to where its radius is pointed at, millimetres: nearer, two arrows would end side by side on one face (own rule).</summary>
    private const double FromThickness = 3;

    /// <summary>How far below the axis a tapered arm's thickness is taken.</summary>
    public static Length ThicknessLevel(Lever lever) =>
        Length.FromMillimetres(-Station(lever, lever.Sizes[LeverFields.ArmThickness].Millimetres / 2).Left.Y);

    /// <param name="curveNoted">How a curved arm's mid-line lies stands in the notes.</param>
    public static IEnumerable<Annotation> Of(Lever lever, DimensionText text, bool curveNoted)
    {
        SideFeatures side = lever.Side;
        SizeValue length = lever.Sizes[LeverFields.ArmLength];
        yield return new LinearDimension(LeverFields.ArmLength.Name, length.Millimetres, text.Size(length), Point2D.Origin, side.PadCentre, LinearDimension.Upright) { Sides = DimensionSides.Left };
        Length end = Length.FromMillimetres(-side.PadBottom);
        yield return new LinearDimension("arms.end_from_axis", end.Millimetres, text.Reference(end), Point2D.Origin, EndOf(side), LinearDimension.Upright) { Sides = DimensionSides.Left };
        SizeValue thickness = lever.Sizes[LeverFields.ArmThickness];
        (Point2D left, Point2D right) = Station(lever, thickness.Millimetres / 2);
        var across = new LinearDimension(LeverFields.ArmThickness.Name, thickness.Millimetres, text.Size(thickness), left, right, (right - left).Angle) { Slide = (0, 0) };
        if (lever.Forms.Arms == LeverFields.Stepped)
        {
            double free = Math.Max(0, side.ArmRight.Y - side.PadTop);
            yield return across with { Slide = BesideMark(lever, -free * 0.8, -free * 0.15) };
        }
        else
        {
            // A tapered arm's thickness holds at one level, which the notes say; a curved arm's across its own slant.
            yield return lever.Forms.Arms == LeverFields.Tapered || side.ArmMidline is ArcEdge ? across with { Sides = default } : across;
        }

        if (side.ArmMidline is ArcEdge)
        {
            foreach (Annotation annotation in Curve(lever, text, right.Y, curveNoted))
                yield return annotation;
        }
    }

    /// <param name="level">At which the thickness stands.</param>
    private static IEnumerable<Annotation> Curve(Lever lever, DimensionText text, double level, bool noted)
    {
        SideFeatures side = lever.Side;
        Length shift = Length.FromMillimetres(side.PadShift);
        yield return new LinearDimension(PadShift, shift.Millimetres, text.Size(shift), Point2D.Origin, side.PadCentre, 0)
        {
            OnlyOutside = true,
            // Below the pads stands the mould's joint on the foundry's sheets.
            Sides = noted ? DimensionSides.Both : DimensionSides.Left,
        };
        // Of a face, where a gauge can be laid; an arrow on the mid-line would have the face through it.
        ArcEdge hollow = ((Edge[])[side.ArmFaceRight, side.ArmFaceLeft]).OfType<ArcEdge>().MinBy(a => a.Radius)!;
        Label radius = text.Reference(Length.FromMillimetres(hollow.Radius), "R");
        yield return new RadiusDimension(HollowRadius, hollow.Radius, noted ? radius : radius with { Lines = [.. radius.Stacked().Lines, "CENTRE LEVEL", "WITH PAD TOP"] }, ClearArcs.Of(ClearArcs.Off(level, hollow, FromThickness))) { MaterialAtCentre = false };
    }

    /// <summary>The longer part of a range, below the arms' upper level, that a raised mark leaves free.</summary>
    private static (double From, double To) BesideMark(Lever lever, double from, double to)
    {
        if (MarkProud.OnArmBetween(lever) is not { } mark)
            return (from, to);
        double top = lever.Side.ArmRight.Y, above = mark.To + FromMark - top, below = mark.From - FromMark - top;
        return to - above >= below - from ? (Math.Clamp(above, from, to), to) : (from, Math.Clamp(below, from, to));
    }

    /// <summary>Two points of the arm's faces the stated thickness apart.</summary>
    private static (Point2D Left, Point2D Right) Station(Lever lever, double half)
    {
        if (lever.Side.ArmMidline is not ArcEdge midline)
            return (lever.Side.ArmLeft, lever.Side.ArmRight);
        Interval? mark = MarkProud.OnArmBetween(lever);
        IEnumerable<double> free = _curvedStations.Where(IsFree);
        return At(free.Where(IsClear).Concat(free).FirstOrDefault(_curvedStations[0]));

        (Point2D Left, Point2D Right) At(double station)
        {
            Point2D at = midline.PointAt(station);
            Vector2D right = (at - midline.Centre).Unit();
            right = right.X < 0 ? -right : right;
            return (at - (right * half), at + (right * half));
        }

        bool IsFree(double station)
        {
            double z = midline.PointAt(station).Y;
            return mark is not { } m || z < m.From - FromMark || z > m.To + FromMark;
        }

        bool IsClear(double station)
        {
            (Point2D left, Point2D right) = At(station);
            return left.X < -FromUpright && right.X > FromUpright;
        }
    }

    /// <summary>The left end of a flat pad end, the tip of a round one.</summary>
    private static Point2D EndOf(SideFeatures side) =>
        new(side.PadEnd is LineEdge flat ? flat.Box.MinX : side.PadCentre.X, side.PadBottom);
}
