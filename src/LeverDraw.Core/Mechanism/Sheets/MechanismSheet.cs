using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Mechanism.Setups;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Mechanism.Sheets;

/// <summary>The mechanism in section at mid-travel, each gap drawn open and lettered with its share of the lost turns.</summary>
public static class MechanismSheet
{
    public const string Kind = "mechanism";

    public static SheetContent Content(Setup setup, Profile profile, SheetOptions options)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(options);
        var text = new DimensionText(options.Units, options.Tolerances);
        Linkage linkage = setup.Linkage;
        ImmutableArray<GapShare> shares = GapShare.Of(linkage);
        DrawnGaps gaps = DrawnGaps.Of(linkage.Typical);
        var picture = new MechanismPicture(linkage, default, gaps);
        var main = new ViewSource("mechanism", null)
        {
            Edges = picture.Edges,
            Hatching = picture.Hatching,
            Orientation = picture.Orientation,
            Annotations = [.. shares.Select(s => GapNote(picture, s, text)), .. Sizes(linkage, picture, text), .. Names(picture)],
        };
        return new SheetContent(Kind, PartState.Assembly, main, [], [], [ShareBar.Of(shares)], MechanismNotes.Of(setup, gaps, text), Title(profile, "ADJUSTING MECHANISM", "ASSEMBLY, LOST MOTION", options.Units))
        {
            Tables = [Table(shares, text)],
        };
    }

    /// <summary>A to D, from nut to iron.</summary>
    internal static string Letter(Gap gap) => ((char)('A' + Gaps.All.IndexOf(gap))).ToString();

    /// <summary>Of a sheet that shows parts together: there is no one material and no general tolerance.</summary>
    internal static TitleBlock Title(Profile profile, string title, string documentType, ShownUnits units)
    {
        IFieldValues values = profile.Values;
        string own = values.Get(CommonFields.Title);
        return new TitleBlock(
            values.Get(CommonFields.Owner), own.Length > 0 ? own : title, profile.Name, values.Get(CommonFields.Number), values.Get(CommonFields.Revision), values.Get(CommonFields.Date),
            values.Get(CommonFields.Author), values.Get(CommonFields.Approved), documentType, "AS LISTED ON EACH PART", "", "",
            units.Words(), "1 of 1", false);
    }

    private static LeaderNote GapNote(MechanismPicture picture, GapShare share, DimensionText text)
    {
        ImmutableArray<SurfacePoint> places = picture.PlacesIn(share.Gap);
        return new LeaderNote("gap." + Letter(share.Gap), share.Typical.Millimetres, Label.Of(Letter(share.Gap) + " " + text.Fine(share.Typical), Words.Percent(share.Share)), [.. places.Select(p => p.At)])
        {
            Outward = [.. places.Select(p => p.Outward)],
            // At the groove's other rim the pad's shoulder stands near.
            SecondBest = share.Gap == Gap.Groove ? 1 : int.MaxValue,
            // Along the lever's own lining a leader to the hole would be lost.
            Grain = share.Gap == Gap.Pivot ? picture.Lining : null,
        };
    }

    internal static IEnumerable<Annotation> Names(MechanismPicture picture) =>
        picture.Names.Select(n => new LeaderNote("part." + n.Name.ToLowerInvariant().Replace(' ', '_'), 0, Label.Of(n.Name), n.Places) { OnFace = true, Grain = n.Grain });

    private static IEnumerable<Annotation> Sizes(Linkage linkage, MechanismPicture picture, DimensionText text)
    {
        yield return new LinearDimension("mechanism.nut_arm", linkage.NutArm.Millimetres, text.Reference(linkage.NutArm), Point2D.Origin, picture.PadFront.Point, LinearDimension.Upright)
        {
            AtOtherEdge = (Point2D.Origin, new(picture.StudEnd, picture.PadFront.Point.Y)),
        };
        Bearing bearing = linkage.Bearing;
        SlotFrame frame = linkage.Contacts.Frame;
        Point2D corner = picture.AtBed(picture.TongueFront.Reach, bearing.Height.Millimetres);
        yield return new LinearDimension("mechanism.bearing_height", bearing.Height.Millimetres, text.Reference(bearing.Height), Point2D.Origin, corner, frame.Up.Angle);
    }

    private static SheetTable Table(ImmutableArray<GapShare> shares, DimensionText text)
    {
        ImmutableArray<string> typical = text.Column([.. shares.Select(s => s.Typical)], 4), least = text.Column([.. shares.Select(s => s.Worst.Min)], 4), most = text.Column([.. shares.Select(s => s.Worst.Max)], 4);
        return new SheetTable(
            "GAPS AND WHAT THEY COST, " + text.Units.Words() + ", ROUNDED",
            [new(""), new("GAP"), new("TYPICAL", 1), new("LEAST", 1), new("MOST", 1), new("TURNS", 1), new("SHARE", 1), new("0.1 mm MORE\nCOSTS", 1)],
            [.. shares.Select((s, i) => ImmutableArray.Create(Letter(s.Gap), s.Gap.Words().ToUpperInvariant(), typical[i], least[i], most[i], Words.Turns(s.Turns), Words.Percent(s.Share), Words.Turns(s.PerTenth)))]);
    }
}
