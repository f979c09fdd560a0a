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
    private const int LeaningRounds = 4;

    private readonly LeverContacts _contacts;
    private readonly RigidMechanism _rigid;

    private Linkage(Assembly assembly, LeverContacts contacts, SlotContacts slot, PlaySizes sizes)
    {
        Assembly = assembly;
        _contacts = contacts;
        Sizes = sizes;
        SlotContacts = slot;
        Bearing = Bearing.Of(assembly.Lever, contacts, slot);
        Typical = sizes.TypicalGaps;
        _rigid = Rigid(contacts, sizes.Groove.Mid, sizes.Slot.Mid, Typical);
        Motion = slot.Motion(contacts);
        NutArm = NutArmOf(contacts);
        IronArm = NutArm / Motion.Slot;
        // Curved arms may hold their pads aside of the pivot.
        NutMiddle = (contacts.PadFront(default)!.Value.Reach - contacts.PadBack(default)!.Value.Reach) / 2;
    }

    public Assembly Assembly { get; }

    public PlaySizes Sizes { get; }

    /// <summary>With every size at the middle of its limits.</summary>
    public FourGaps Typical { get; }

    /// <summary>No gap is less than none with every size at the middle of its limits. Where one is, there is no such mechanism, and every number of lost turns would be made up.</summary>
    public bool GoesTogether => Gaps.All.All(gap => Typical[gap] >= Length.Zero);

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

    /// <summary>How far the lever leans either way of the middle when the nut is turned back.</summary>
    public Angle Lean => Angle.FromRadians((Idle - Typical.Thread - Typical.Groove).Millimetres / (2 * NutArm.Millimetres));

    /// <summary>
    /// What the formula leaves out, turns: it takes contacts as if they moved straight, and a lever that leans by δ moves them on arcs, by δ²/2 of their distance aside.
    /// These are the middles of the pads' crowns on the one side and the tongue's flanks on the other.
    /// </summary>
    public double LeftOut
    {
        get
        {
            LeverSizes sizes = Assembly.Lever.Sizes;
            Length crowns = (sizes[LeverFields.CrownRadius].Nominal * 2) - sizes[LeverFields.PadThickness].Nominal;
            return Turns((crowns + (Bearing.Thickness * Motion.Slot)) * (Square(Lean.Radians) / 2));
        }
    }

    internal LeverContacts Contacts => _contacts;

    internal RigidMechanism Solver => _rigid;

    /// <summary>Where the tongue bears when the nut is turned back at mid-travel.</summary>
    internal SlotContacts SlotContacts { get; }

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
        SizeLimits change = assembly.TongueChange;
        PlaySizes bare = SizesOf(assembly, change);
        double padChange = (bare.Pad.Mid + bare.PadOffset.Mid - assembly.Lever.Sizes[LeverFields.PadThickness].Nominal).Millimetres;
        var contacts = new LeverContacts(assembly.Lever, FrameOf(assembly), padChange, change.Mid.Millimetres);
        if (!Bearing.Reaches(contacts) || contacts.PadFront(default) is null || !PadsReach(assembly))
            return null;
        SlotContacts slot = FirstToClose(contacts, SizesWith);
        return new Linkage(assembly, contacts, slot, SizesWith(slot));

        PlaySizes SizesWith(SlotContacts at)
        {
            Length drawn = Length.FromMillimetres(at.Thickness) - change.Mid;
            return bare with { Tongue = new SizeLimits(drawn + change.Min, drawn + change.Max) };
        }
    }

    /// <summary>Of the contacts that the leaning lever may come to, those with the least idle way: they stop it.</summary>
    private static SlotContacts FirstToClose(LeverContacts contacts, Func<SlotContacts, PlaySizes> sizes)
    {
        SlotContacts best = contacts.SlotContactsAt(0, 0)!.Value, at = best;
        double least = Idle(best), arm = NutArmOf(contacts).Millimetres;
        // How far the lever leans depends on where it bears, and that on how far it leans.
        for (int round = 0; round < LeaningRounds; round++)
        {
            FourGaps gaps = sizes(at).TypicalGaps;
            double open = Idle(at) - (gaps.Thread + gaps.Groove).Millimetres, play = Math.Max(0, gaps.Pivot.Millimetres);
            double aside = at.Push(contacts).Net.Unit().X * play, back = at.Pull(contacts).Net.Unit().X * play;
            if (contacts.SlotContactsAt(-(open + aside) / (2 * arm), (open - back) / (2 * arm)) is not { } next)
                break;
            at = next;
            if (Idle(at) is var idle && idle < least)
                (least, best) = (idle, at);
        }

        return best;

        double Idle(SlotContacts slot) => slot.Motion(contacts).Idle(sizes(slot).TypicalGaps).Millimetres;
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

    private static Length NutArmOf(LeverContacts contacts) =>
        Length.FromMillimetres((Arm(contacts.PadFront(default)!.Value) + Arm(contacts.PadBack(default)!.Value)) / 2);

    private static double Arm(BandExtent contact) => Math.Abs((contact.Point - Point2D.Origin).Cross(contact.Normal));

    private static double Square(double value) => value * value;
}
