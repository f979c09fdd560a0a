using System.Collections.Immutable;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.HostPlanes;
using LeverDraw.Profiles;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Mechanism.Fitting;

/// <summary>Tries a lever in a plane, from lugs to cap iron.</summary>
internal sealed class FitTrial
{
    private readonly Assembly assembly;
    private readonly LengthWords words;
    private readonly PinFit pinFit;

    private FitTrial(Assembly assembly, LengthWords words)
    {
        this.assembly = assembly;
        this.words = words;
        pinFit = new PinFit(assembly, words);
    }

    /// <param name="words">For the reasons.</param>
    public static LeverFit Of(FittedLever fitted, HostPlane plane, LengthWords words)
    {
        var assembly = new Assembly(fitted.Lever, fitted.Pin, plane);
        Linkage? linkage = Linkage.Of(assembly);
        ImmutableArray<FitContact> contacts = new FitTrial(assembly, words).Contacts(linkage);
        FitVerdict verdict = contacts.Any(c => c.State == FitState.Fails) ? FitVerdict.DoesNotGo : contacts.Any(c => c.State == FitState.Loose) ? FitVerdict.WithPlay : FitVerdict.GoesIn;
        return new LeverFit(fitted.Name, plane.Name, verdict, contacts, linkage is { GoesTogether: true } ? LostTurns.Of(fitted.Name, linkage).Meant : null);
    }

    private ImmutableArray<FitContact> Contacts(Linkage? linkage) =>
    [
        Head(), Shoulders(), pinFit.InLugs(), pinFit.InHead(), UnderBed(),
        Fork(), .. Pocket(), Reach(), Pads(), .. Flange(),
        Passes("tongue through iron", "the tongue is too wide for the iron's slot", assembly.Plane.Iron.Slot),
        Passes("tongue across cap iron", "the tongue is too wide for the cap iron's slot", assembly.Plane.CapIron.SlotLength),
        .. Tongue(linkage),
    ];

    private FitContact Head()
    {
        LeverSizes sizes = assembly.Lever.Sizes;
        SizeLimits gap = Assembly.OfPlane(assembly.Plane.Lugs.Gap), head = Assembly.OfPart(sizes[LeverFields.HeadWidth]);
        Length bosses = (assembly.Lever.Boss?.Height ?? Length.Zero) * 2;
        SizeLimits clearance = new(gap.Min - head.Max - bosses, gap.Max - head.Min - bosses);
        return FitContact.Clearance(words, "head between lugs", clearance, FittingRules.EndFloat, bosses > Length.Zero ? "the head over its bosses is too wide for the lugs" : "the head is too wide for the lugs", over =>
        {
            Length each = (over + Length.FromMillimetres(0.1)) / 2, there = bosses > Length.Zero ? bosses / 2 : head.Min * ((1 - FittingRules.LeastLeft) / 2);
            return each > there ? null : $"face {words.InSentence(each)} off each side of the head ({(bosses > Length.Zero ? "the bosses are " + words.InSentence(there) + " high" : words.InSentence(head.Min - (each * 2)) + " left")})";
        });
    }

    private FitContact Shoulders()
    {
        Length least = ShoulderGap.Least(assembly.Lever, assembly.Plane.Lugs, out Length at);
        var clearance = new SizeLimits(least, least);
        // Too wide a head fouls the lugs at the axis already, and is told there.
        return FitContact.Clearance(words, "shoulders beside lugs", clearance, null, $"the shoulders, which begin {words.InSentence(assembly.Lever.Sizes[LeverFields.ShoulderStart].Nominal)} below the axis, run into the lugs {words.InSentence(at)} below it", over =>
            at == Length.Zero ? null : $"cut the lugs' inner faces back by {words.InSentence(over)}, {words.InSentence(at)} below the axis, or begin the shoulders lower");
    }

    private FitContact UnderBed()
    {
        Lever lever = assembly.Lever;
        double highest = lever.Side.Edges.Where(e => e.Name is "head-left" or "head-right").Select(e => e.Edge.Box).Aggregate(0.0, (m, b) => Math.Max(m, Math.Max(Math.Abs(b.MaxX), Math.Abs(b.MaxY))));
        Length clearance = assembly.Plane.PivotDepth.Nominal - Length.FromMillimetres(highest);
        return FitContact.Clearance(words, "head under bed", new SizeLimits(clearance, clearance), null, "the head stands out of the bed", _ => null);
    }

    private FitContact Fork()
    {
        SizeLimits gap = Assembly.OfPart(assembly.Lever.Sizes[LeverFields.ForkGap]), bottom = Assembly.OfPlane(assembly.Plane.Nut.Bottom);
        return FitContact.Clearance(words, "fork over groove", new SizeLimits(gap.Min - bottom.Max, gap.Max - bottom.Min), null, "the fork is too narrow for the nut's groove", over =>
            over > assembly.Lever.Sizes[LeverFields.ArmWidth].Nominal * (2 * (1 - FittingRules.LeastLeft)) ? null : $"file {words.InSentence(over / 2)} off the inner side of each arm");
    }

    private IEnumerable<FitContact> Pocket()
    {
        if (assembly.Plane.Lugs.Pocket is not { } pocket)
            yield break;
        LeverSizes sizes = assembly.Lever.Sizes;
        Length outside = sizes[LeverFields.ForkGap].Nominal + (sizes[LeverFields.ArmWidth].Nominal * 2), clearance = pocket.Nominal - outside;
        yield return FitContact.Clearance(words, "arms in frog", new SizeLimits(clearance, clearance), null, "the arms are too far apart for the frog", over =>
            over > sizes[LeverFields.ArmWidth].Nominal * (2 * (1 - FittingRules.LeastLeft)) ? null : $"file {words.InSentence(over / 2)} off the outer side of each arm");
    }

    private FitContact Reach()
    {
        LeverSizes sizes = assembly.Lever.Sizes;
        Length off = assembly.Plane.Nut.StudDistance.Nominal - sizes[LeverFields.ArmLength].Nominal;
        Length left = (sizes[LeverFields.PadLength].Nominal / 2) - Length.FromMillimetres(Math.Abs(off.Millimetres));
        return FitContact.Clearance(words, "pads at the stud", new SizeLimits(left, left), null, off > Length.Zero ? "the arms are too short to reach the nut" : "the arms are too long for the nut", _ => null);
    }

    private FitContact Pads()
    {
        SizeLimits groove = Assembly.OfPlane(assembly.Plane.Nut.Groove), pad = assembly.PadLimits, offset = assembly.PadOffsetLimits;
        return FitContact.Clearance(words, "pads in groove", new SizeLimits(groove.Min - pad.Max - offset.Max, groove.Max - pad.Min - offset.Min), FittingRules.Groove, "the pads are too thick for the nut's groove", over =>
            over > pad.Min * (1 - FittingRules.LeastLeft) ? null : $"file {words.InSentence(over / 2)} off each face of the pads ({words.InSentence(pad.Max - over)} left)");
    }

    private IEnumerable<FitContact> Flange()
    {
        if (assembly.Plane.Nut.Flange is not { } flange)
            yield break;
        Length beside = (flange.Nominal - assembly.Lever.Sizes[LeverFields.ForkGap].Nominal) / 2, clearance = beside - FittingRules.Flange;
        yield return FitContact.Clearance(words, "flange beside fork", new SizeLimits(clearance, clearance), null, "the nut's flange hardly reaches past the fork's inner sides: short", _ => null);
    }

    private FitContact Passes(string name, string tooWide, SizeValue opening)
    {
        SizeLimits slot = Assembly.OfPlane(opening), tongue = Assembly.OfPart(assembly.Lever.Sizes[LeverFields.TongueWidth]);
        return FitContact.Clearance(words, name, new SizeLimits(slot.Min - tongue.Max, slot.Max - tongue.Min), null, tooWide, over =>
            over > tongue.Min * (1 - FittingRules.LeastLeft) ? null : $"file {words.InSentence(over / 2)} off each side of the tongue");
    }

    private IEnumerable<FitContact> Tongue(Linkage? linkage)
    {
        if (linkage is null)
        {
            if (Linkage.PadsReach(assembly))
                yield return new FitContact("tongue in slot", Length.Zero, default, FitState.Fails, "the tongue never reaches the cap iron's slot", null);
            yield break;
        }

        SizeLimits clearance = linkage.Sizes.Worst(Gap.Slot);
        yield return FitContact.Clearance(words, "tongue in slot", clearance, FittingRules.Slot, "the tongue is too thick for the cap iron's slot", over =>
            over > linkage.Sizes.Tongue.Min * (1 - FittingRules.LeastLeft) ? null : $"file {words.InSentence(over / 2)} off each flank of the tongue ({words.InSentence(linkage.Sizes.Tongue.Max - over)} left)");
        Bearing bearing = linkage.Bearing;
        var land = new SizeLimits(bearing.Land, bearing.Land);
        yield return bearing.IsThin
            ? new FitContact("tongue's land", bearing.Land, land, FitState.Loose, $"only {words.InSentence(bearing.Land)} of the tongue's full thickness bear", string.Empty)
            : new FitContact("tongue's land", bearing.Land, land, FitState.Good, string.Empty, string.Empty);
    }
}
