using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Units;

namespace LeverDraw.Mechanism;

/// <summary>How the tongue stands in the cap iron's slot at mid-travel, from its real outline.</summary>
/// <param name="Height">Of the place where it bears over the pin's axis, square to the bed. For a flank that slants it is the lower end of the slot's faces: zp + iron + broken edge.</param>
/// <param name="Thickness">Of the tongue along the bed, as far as it stands between the slot's faces.</param>
/// <param name="StandOut">Of the tip over the iron: how deep the tongue engages.</param>
/// <param name="Land">From the lower end of the slot's faces up to where the tongue's flank ends (on a bulb, to its widest place): the full thickness left to bear.</param>
/// <param name="Slope">Between the tongue's flank where it bears and the slot's face; zero where the tongue's widest place stands in the slot.</param>
public sealed record Bearing(Length Height, Length Thickness, Length StandOut, Length Land, Angle Slope)
{
    /// <summary>Less land than this soon wears away (trade notes 5; common practice, no source).</summary>
    public static Length LeastLand { get; } = Length.FromMillimetres(0.5);

    public bool IsThin => Land < LeastLand;

    /// <summary>The tongue reaches the slot's faces.</summary>
    internal static bool Reaches(LeverContacts contacts) =>
        contacts.TipHeight(default) > contacts.Frame.SlotBottom && contacts.TongueFront(default) is not null && contacts.TongueBack(default) is not null;

    internal static Bearing Of(Lever lever, LeverContacts contacts, SlotContacts at)
    {
        SlotFrame frame = contacts.Frame;
        SideFeatures side = lever.Side;
        double Level(Point2D p) => (p - Point2D.Origin).Dot(frame.Up);
        double land = lever.Forms.Tongue == LeverFields.Bulb ? Level(side.NoseCentre) : Math.Min(Level(side.FlankLower.End), Level(side.FlankUpper.Start));
        double slope = (Math.Acos(Math.Clamp(at.Front.Normal.Dot(frame.Bed), -1, 1)) + Math.Acos(Math.Clamp(-at.Back.Normal.Dot(frame.Bed), -1, 1))) / 2;
        return new Bearing(
            Length.FromMillimetres(at.HeightIn(frame)),
            Length.FromMillimetres(at.Thickness),
            Length.FromMillimetres(contacts.TipHeight(default) - frame.IronTop),
            Length.FromMillimetres(land - frame.SlotBottom),
            Angle.FromRadians(slope));
    }
}
