using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>The arms' two faces seen along the pin, as carriers: the right one travels up, the left one down.</summary>
/// <param name="RightCorner">Where the right face reaches the top of the pad.</param>
/// <param name="PadShift">n of the pads' mid-line.</param>
/// <param name="Mid">The mid-line from the pivot to the top of the pad.</param>
internal sealed record ArmFaces(Edge Right, Edge Left, Point2D RightCorner, Point2D LeftCorner, double PadShift, Edge Mid)
{
    public static ArmFaces Of(LeverMeasures m)
    {
        double half = m.ArmThickness / 2, end = m.ArmEndThickness / 2;
        if (m.ArmForm != LeverFields.Curved || m.Sagitta == 0)
        {
            Point2D right = new(end, m.PadTop), left = new(-end, m.PadTop);
            Point2D rightHead = new(half, -m.ArmThicknessLevel), leftHead = new(-half, -m.ArmThicknessLevel);
            return new(Carriers.Line(right, (rightHead - right).Unit()), Carriers.Line(leftHead, (left - leftHead).Unit()), right, left, 0, new LineEdge(Point2D.Origin, new(0, m.PadTop)));
        }

        CurvedArm arc = CurvedArm.From(-m.PadTop, m.Sagitta);
        // Pads toward −n: the centre lies toward +n, and the way up bends to the right.
        int side = Math.Sign(m.Sagitta);
        Point2D centre = new(-arc.PadShift + (side * arc.Radius), m.PadTop);
        return new(
            Carriers.Circle(centre, arc.Radius - (side * half), side < 0),
            Carriers.Circle(centre, arc.Radius + (side * half), side > 0),
            new(-arc.PadShift + half, m.PadTop),
            new(-arc.PadShift - half, m.PadTop),
            -arc.PadShift,
            ArcEdge.Between(centre, Point2D.Origin, new(-arc.PadShift, m.PadTop), side > 0));
    }
}
