using LeverDraw.Geometry;

namespace LeverDraw.Mechanism;

/// <summary>Where the tongue comes to bear on the slot's two faces when the nut is turned back about mid-travel, told of the lever as it stands in the middle.</summary>
/// <remarks>
/// With its gaps the lever leans both ways of the middle. A flank that slants more than it leans bears on the lower end of the slot's face;
/// one that slants less goes over to the upper end, or to the nose below it. The first contact to close stops the lever: the one with the least idle way.
/// </remarks>
internal readonly record struct SlotContacts(BandExtent Front, BandExtent Back)
{
    /// <summary>Along the bed.</summary>
    public double Thickness => Front.Reach + Back.Reach;

    /// <summary>Height over the pin's axis, square to the bed; the mean of both.</summary>
    public double HeightIn(SlotFrame frame) => ((Front.Point - Point2D.Origin).Dot(frame.Up) + (Back.Point - Point2D.Origin).Dot(frame.Up)) / 2;

    /// <summary>Factors of the gaps with the hole in the middle of its play, and the nut's idle way shared evenly by both ways of driving.</summary>
    /// <remarks>Each way takes up half of every gap but the slot's, of which it takes what makes the two halves of the idle way equal: hence the weights.</remarks>
    public LostMotion Motion(LeverContacts contacts)
    {
        DrivenForces push = Push(contacts), pull = Pull(contacts);
        double both = push.Ratio + pull.Ratio;
        return new LostMotion(2 / both, ((push.PinForce * push.Ratio) + (pull.PinForce * pull.Ratio)) / both);
    }

    public DrivenForces Push(LeverContacts contacts) => DrivenForces.Of(contacts.PadFront(default)!.Value, Front, Point2D.Origin, contacts.Frame.Bed);

    public DrivenForces Pull(LeverContacts contacts) => DrivenForces.Of(contacts.PadBack(default)!.Value, Back, Point2D.Origin, contacts.Frame.Bed);
}
