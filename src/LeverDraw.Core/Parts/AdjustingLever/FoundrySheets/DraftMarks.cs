using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.FoundrySheets;

/// <summary>Draft where it is drawn, in the section through the head: its angle with plus or minus, and the width it gives at the joint.</summary>
internal static class DraftMarks
{
    public const string WidthAtJoint = "head.width_at_joint";

    /// <summary>Nearer to a boss's edge the arrow would seem to mean the corner, millimetres.</summary>
    private const double FromBossEdge = 0.8;

    public static IEnumerable<Annotation> In(HeadSection head, PatternDraft draft, DimensionText text)
    {
        if (head.Walls.MaxBy(w => w.Depth) is not { } wall)
            yield break;
        double boss = (head.Shape.Boss?.Diameter.Millimetres ?? 0) / 2;
        Point2D[] on = [.. new[] { 0.85, 0.75, 0.65, 0.2, 0.12 }
            .Select(share => wall.Joint.Millimetres + (wall.Toward * share * wall.Depth.Millimetres))
            .Where(n => Math.Abs(Math.Abs(n) - boss) > FromBossEdge)
            .SelectMany(n => new[] { At(n, -1), At(n, 1) })];
        yield return new LeaderNote(LeverFields.Draft.Name, wall.Angle.Radians, new Label(["DRAFT " + DimensionText.DegreesText(wall.Angle) + " " + Sense(draft.Sense)]), [.. on]);
        if (wall.Added <= Length.Zero)
            yield break;
        double joint = wall.Joint.Millimetres, half = head.HalfWidth(joint, wall.Toward, Math.Abs(joint) < boss);
        Label width = text.Reference(Length.FromMillimetres(2 * half));
        yield return new LinearDimension(WidthAtJoint, 2 * half, width, new Point2D(-half, joint), new Point2D(half, joint), 0) { Sides = wall.Toward > 0 ? DimensionSides.Right : DimensionSides.Left };

        Point2D At(double n, int side) => new(side * head.HalfWidth(n, wall.Toward, Math.Abs(n) < boss), n);
    }

    /// <summary>As a pattern-maker says it.</summary>
    public static string Sense(string sense) => sense switch
    {
        CastingFields.Plus => "PLUS",
        CastingFields.Minus => "MINUS",
        _ => "FROM MID-DEPTH",
    };
}
