using LeverDraw.Geometry;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>Where the middle of the raised mark stands, millimetres: the arms' −n face between head and crotch, or the head's right side face above the hole.</summary>
internal readonly record struct MarkSeat(double X, double N, double Z)
{
    public static MarkSeat Of(Lever lever, RaisedMark mark)
    {
        if (mark.Place == LeverFields.HeadFace)
        {
            double above = ((lever.Hole.AtRight.Millimetres / 2) + (lever.Sizes[LeverFields.HeadHeight].Millimetres / 2)) / 2;
            return new MarkSeat(lever.Sizes[LeverFields.HeadWidth].Millimetres / 2, 0, above);
        }

        // Level with the gap's top the web is widest between crotch and shoulders; the letters stand above it.
        double z = lever.Fork.GapTop + (mark.LetterHeight.Millimetres / 2) + 0.5;
        Interval chord = ContourChords.HorizontalAt(lever.SideProfile, z)[0];
        return new MarkSeat(0, chord.From, z);
    }
}
