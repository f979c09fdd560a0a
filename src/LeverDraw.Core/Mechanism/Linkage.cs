using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.HostPlanes;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Mechanism;

/// <summary>An assembly as a mechanism: its gaps, its arms at mid-travel, and the rigid solver set up for it.</summary>
/// <remarks>Mid-travel: the arms stand square to the stud. Travel is measured from there.</remarks>
public sealed class Linkage
{
    private readonly LeverContacts _contacts;
    private readonly RigidMechanism _rigid;

    private Linkage(Assembly assembly, LeverContacts contacts, PlaySizes sizes, Bearing bearing)
    {
        Assembly = assembly;
        _contacts = contacts;
        Sizes = sizes;
        Bearing = bearing;
        Typical = new FourGaps(sizes.Typical(Gap.Thread), sizes.Typical(Gap.Groove), sizes.Typical(Gap.Pivot), sizes.Typical(Gap.Slot));
        _rigid = Rigid(contacts, sizes.Groove.Mid, sizes.Slot.Mid, Typical);
        (Motion, NutArm, IronArm) = MidTravel(contacts);
        // Curved arms may hold their pads aside of the pivot.
        NutMiddle = (contacts.PadFront(default)!.Value.Reach - contacts.PadBack(default)!.Value.Reach) / 2;
    }

    public Assembly Assembly { get; }

    public PlaySizes Sizes { get; }

    /// <summary>With every size at the middle of its limits.</summary>
    public FourGaps Typical { get; }

    /// <summary>How the tongue stands in the slot at mid-travel.</summary>
    public Bearing Bearing { get; }

    /// <summary>By the formula, at mid-travel.</summary>
    public LostMotion Motion { get; }

    /// <summary>h_a, from the pivot to the nut's line of push at mid-travel.</summary>
    public Length NutArm { get; }

    /// <summary>h_t: for small moves the tongue drives the iron as if at this height over the pin's axis.</summary>
    public Length IronArm { get; }

    public Length Lead => Assembly.Plane.Nut.Lead.Nominal;

    public Angle StudAngle => Assembly.Plane.Nut.StudAngle;

    /// <summary>The nut's idle way by the formula, all sizes typical.</summary>
    public Length Idle => Motion.Idle(Typical);

    internal LeverContacts Contacts => _contacts;

    internal RigidMechanism Solver => _rigid;

    /// <summary>Where the nut stands at mid-travel, along the stud from the pin's axis, mm.</summary>
    internal double NutMiddle { get; }

    public double Turns(Length alongStud) => alongStud / Lead;

    /// <summary>The nut's idle way by the exact solution at mid-travel; null when the lever binds or contact is lost.</summary>
    public Length? ExactIdle() => _rigid.IdleAt(NutMiddle) is { } idle ? Length.FromMillimetres(idle) : null;

    /// <summary>The iron's way along the bed in one turn, at mid-travel: p·h_t/h_a.</summary>
    public Length TravelPerTurn => Lead * (IronArm / NutArm);

    /// <summary>Travel · sin(bed angle).</summary>
    public Length DepthPerTurn => TravelPerTurn * Math.Sin(Assembly.Plane.BedAngle.Radians);

    /// <summary>The mechanism, or null when the tongue does not reach the slot or no pad stands in the groove.</summary>
    public static Linkage? Of(Assembly assembly)
    {
        ArgumentNullException.ThrowIfNull(assembly);
        SlotFrame frame = FrameOf(assembly);
        PlaySizes bare = SizesOf(assembly, new SizeLimits(Length.Zero, Length.Zero));
        double padChange = (bare.Pad.Mid + bare.PadOffset.Mid - assembly.Lever.Sizes[LeverFields.PadThickness].Nominal).Millimetres;
        var contacts = new LeverContacts(assembly.Lever, frame, padChange, assembly.TongueChange.Mid.Millimetres);
        if (Bearing.Of(assembly.Lever, contacts) is not { } bearing || contacts.PadFront(default) is null || !PadsReach(assembly))
            return null;
        SizeLimits change = assembly.TongueChange;
        Length drawn = bearing.Thickness - change.Mid;
        return new Linkage(assembly, contacts, SizesOf(assembly, new SizeLimits(drawn + change.Min, drawn + change.Max)), bearing);
    }

    /// <summary>The pads cover the level of the stud's axis.</summary>
    public static bool PadsReach(Assembly assembly)
    {
        ArgumentNullException.ThrowIfNull(assembly);
        LeverSizes sizes = assembly.Lever.Sizes;
        Length off = assembly.Plane.Nut.StudDistance.Nominal - sizes[LeverFields.ArmLength].Nominal;
        return Math.Abs(off.Millimetres) <= sizes[LeverFields.PadLength].Millimetres / 2;
    }

    internal static SlotFrame FrameOf(Assembly assembly)
    {
        HostPlane plane = assembly.Plane;
        double iron = plane.PivotDepth.Millimetres + Assembly.OfPlane(plane.Iron.Thickness).Mid.Millimetres;
        double cap = Assembly.OfPlane(plane.CapIron.Thickness).Mid.Millimetres, broken = plane.CapIron.EdgeBreak.Millimetres;
        double inner = assembly.Lever.Sizes[LeverFields.ForkGap].Millimetres / 2;
        double? reach = plane.Nut.Flange is { } flange ? Math.Sqrt(Math.Max(0, Square(flange.Millimetres / 2) - Square(inner))) : null;
        return new SlotFrame(plane.Nut.StudAngle.Radians, plane.Nut.StudDistance.Millimetres, reach, iron, iron + broken, iron + cap - broken);
    }

    private static PlaySizes SizesOf(Assembly assembly, SizeLimits tongue)
    {
        HostPlane plane = assembly.Plane;
        return new PlaySizes(
            Assembly.OfPlane(plane.Nut.Play),
            Assembly.OfPlane(plane.Nut.Groove),
            assembly.PadLimits,
            assembly.PadOffsetLimits,
            assembly.HoleLimits,
            assembly.PinLimits,
            Assembly.OfPlane(plane.CapIron.Slot),
            tongue,
            Assembly.OfPlane(plane.Iron.Thickness),
            Assembly.OfPlane(plane.CapIron.Thickness));
    }

    private static RigidMechanism Rigid(LeverContacts contacts, Length groove, Length slot, FourGaps gaps) =>
        new(contacts, groove.Millimetres, slot.Millimetres, gaps.Thread.Millimetres, Math.Max(0, gaps.Pivot.Millimetres));

    /// <summary>The factors of the gaps with the hole in the middle of its play and the tongue in the middle of the slot; the two ways of driving share each gap evenly.</summary>
    private static (LostMotion Motion, Length NutArm, Length IronArm) MidTravel(LeverContacts contacts)
    {
        var still = new RigidMechanism(contacts, 0, 0, 0, 0);
        DrivenState push = still.At(0, Drive.Advance)!.Value, pull = still.At(0, Drive.Withdraw)!.Value;
        BandExtent front = contacts.PadFront(default)!.Value, back = contacts.PadBack(default)!.Value;
        double arm = (Arm(front) + Arm(back)) / 2;
        var motion = new LostMotion(((1 / push.Ratio) + (1 / pull.Ratio)) / 2, (push.PinForce + pull.PinForce) / 2);
        return (motion, Length.FromMillimetres(arm), Length.FromMillimetres(arm / motion.Slot));
    }

    private static double Arm(BandExtent contact) => Math.Abs((contact.Point - Point2D.Origin).Cross(contact.Normal));

    private static double Square(double value) => value * value;
}
