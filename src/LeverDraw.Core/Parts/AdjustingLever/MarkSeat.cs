using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>Where the raised mark stands: along the right arm's −n face, or across the head's right side face above the hole.</summary>
/// <param name="Middle">Of the lettering: (x, z) on the arm, (n, z) on the head.</param>
/// <param name="Room">Length there is for the text, millimetres; <paramref name="RoomAcross"/> for the letters' height.</param>
/// <param name="Face">Height of the surface it stands on: n on the arm, x on the head.</param>
internal readonly record struct MarkSeat(Point2D Middle, double Angle, double Room, double RoomAcross, double Face)
{
    /// <summary>Free margin round the letters, millimetres (own rule).</summary>
    private const double Margin = 0.4;

    public bool OnArm => Angle != 0;

    public static MarkSeat On(RaisedMark mark, ForkFeatures fork, SideFeatures side, PivotHole hole)
    {
        if (mark.Place == LeverFields.ArmBack)
        {
            // Between the step at the pad and the fillet at the head, and no higher than the shoulder leaves room beside the letters.
            double inner = fork.GapSide.Start.X, outer = fork.ArmOuter.Start.X;
            double low = Math.Max(side.ArmFaceLeft.End.Y, fork.ArmOuter.Start.Y);
            double edge = Math.Min(outer, ((inner + outer) / 2) + (mark.LetterHeight.Millimetres / 2) + Margin);
            double high = Math.Min(side.ArmFaceLeft.Start.Y, Math.Max(fork.ArmOuter.End.Y, ShoulderHeight.At(fork, edge)));
            double z = mark.Level ?? Tenth((low + high) / 2);
            Point2D face = side.ArmFaceLeft.PointAt(Math.Clamp((side.ArmFaceLeft.Start.Y - z) / (side.ArmFaceLeft.Start.Y - side.ArmFaceLeft.End.Y), 0, 1));
            return new MarkSeat(new((inner + outer) / 2, z), Math.PI / 2, high - low - (2 * Margin), outer - inner - (2 * Margin), face.X);
        }

        double bottom = hole.AtRight.Millimetres / 2, top = Math.Min(fork.HeadSide.End.Y, Math.Abs(side.HeadFilletFlankUpper.End.Y));
        double half = Math.Abs(side.ArmRight.X);
        return new MarkSeat(new(0, mark.Level ?? ((bottom + top) / 2)), 0, 2 * half, top - bottom - (2 * Margin), fork.HeadSide.Start.X);
    }

    /// <summary>A cast mark is placed to a round number.</summary>
    private static double Tenth(double level) => Math.Round(level, 1);

    public PlotText Letters(RaisedMark mark)
    {
        double height = mark.LetterHeight.Millimetres, width = StrokeLettering.WidthOf(mark.Text, height);
        Vector2D along = Vector2D.FromAngle(Angle);
        Point2D anchor = Middle - (along * (width / 2)) - (along.Left * (height / 2));
        return StrokeLettering.Compose(mark.Text, anchor, height, Angle);
    }
}
