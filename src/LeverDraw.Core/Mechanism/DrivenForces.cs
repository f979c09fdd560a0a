using LeverDraw.Geometry;

namespace LeverDraw.Mechanism;

/// <summary>Forces on a lever that stands in equilibrium between one flange and one face of the slot, without friction; the flange's is one.</summary>
/// <param name="Net">What nut and iron press on the lever with together, and so the lever on its pin.</param>
/// <param name="Ratio">Of the iron's move along the bed to the nut's along the stud, at this instant.</param>
/// <param name="PinForce">Size of <paramref name="Net"/> over the nut's force along the stud.</param>
internal readonly record struct DrivenForces(Vector2D Net, double Ratio, double PinForce)
{
    /// <param name="centre">Of the hole.</param>
    public static DrivenForces Of(BandExtent pad, BandExtent tongue, Point2D centre, Vector2D bed)
    {
        double nutArm = Math.Abs((pad.Point - centre).Cross(pad.Normal)), ironArm = Math.Abs((tongue.Point - centre).Cross(tongue.Normal));
        double k = nutArm / ironArm;
        Vector2D net = -pad.Normal - (tongue.Normal * k);
        double along = Math.Abs(tongue.Normal.Dot(bed)), onNut = Math.Abs(pad.Normal.Dot(SlotFrame.Stud));
        return new DrivenForces(net, onNut / (k * along), net.Length / onNut);
    }
}
