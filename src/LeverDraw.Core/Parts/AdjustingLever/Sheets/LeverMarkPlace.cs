using LeverDraw.Drafting.Lettering;
using LeverDraw.Geometry;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>Where the raised mark stands: the level of its lettering's middle, dimensioned from the pivot's axis, from a point beside the letters so that no line runs through them.</summary>
internal static class LeverMarkPlace
{
    public const string Name = "mark.middle_from_axis";

    public static Point2D? InForkView(Lever lever)
    {
        if (lever.Mark is not { Place: LeverFields.ArmBack } mark)
            return null;
        MarkSeat seat = MarkSeat.On(mark, lever.Fork, lever.Side, lever.Hole);
        return seat.Middle + new Vector2D(mark.LetterHeight.Millimetres / 2, 0);
    }

    public static Point2D? InSideView(Lever lever)
    {
        if (lever.Mark is not { Place: LeverFields.HeadFace } mark)
            return null;
        MarkSeat seat = MarkSeat.On(mark, lever.Fork, lever.Side, lever.Hole);
        return seat.Middle + new Vector2D(StrokeLettering.WidthOf(mark.Text, mark.LetterHeight.Millimetres) / 2, 0);
    }
}
