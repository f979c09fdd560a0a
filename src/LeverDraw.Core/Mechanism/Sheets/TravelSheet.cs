using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Drafting.Views;
using LeverDraw.Mechanism.Setups;
using LeverDraw.Profiles;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Mechanism.Sheets;

/// <summary>The mechanism toward both ends of the nut's travel and in the middle, and how it works all along.</summary>
public static class TravelSheet
{
    public const string Kind = "travel";

    /// <summary>Of half the travel: where the lever has left flange or slot or its pads jam, the picture is taken further in.</summary>
    private static readonly double[] Shares = [1, 0.9, 0.8, 0.7, 0.6, 0.5];

    public static SheetContent Content(Setup setup, Profile profile, SheetOptions options)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(options);
        var text = new DimensionText(options.Units, options.Tolerances);
        Linkage linkage = setup.Linkage;
        DrawnGaps gaps = DrawnGaps.Of(linkage.Typical);
        ViewSource middle = View("middle", "NUT AT MID-TRAVEL", linkage, default, gaps);
        middle = middle with { Annotations = [.. MechanismSheet.Names(new MechanismPicture(linkage, default, gaps))] };
        ViewSource[] down = [.. End(-1, linkage, gaps, text)], up = [.. End(1, linkage, gaps, text)];
        // In one row, level with each other, the nut going from left to right: only the poses differ. Small paper has no room for three beside each other.
        bool small = options.IsOnSmallPaper, thirdAngle = options.Projection == ProjectionMethod.ThirdAngle;
        ImmutableArray<ViewSource> left = [.. thirdAngle ? down : up], right = [.. thirdAngle ? up : down];
        return new SheetContent(Kind, PartState.Assembly, middle, small ? [] : right, small ? [] : left, small ? [.. down.Concat(up).Select(v => v with { Continues = true })] : [], Notes(linkage, gaps, text), Title(profile, options))
        {
            Tables = [Table(linkage, text)],
        };
    }

    /// <summary>Another document than the mechanism's: it must not share its number.</summary>
    private static TitleBlock Title(Profile profile, SheetOptions options)
    {
        TitleBlock title = MechanismSheet.Title(profile, "ADJUSTING MECHANISM", "ASSEMBLY, TRAVEL", options.Units);
        return title with { DrawingNumber = title.DrawingNumber.Length > 0 ? title.DrawingNumber + "-V" : "" };
    }

    /// <summary>The mechanism at one end of the nut's travel, or as near to it as lever, flange and slot stay together.</summary>
    /// <param name="way">−1 away from the toe, 1 toward it.</param>
    private static IEnumerable<ViewSource> End(int way, Linkage linkage, DrawnGaps gaps, DimensionText text)
    {
        double half = linkage.Assembly.Plane.Nut.Travel.Millimetres / 2;
        foreach (double share in Shares)
        {
            double nut = way * half * share;
            if (linkage.Solver.WithNutAt(linkage.NutMiddle + nut, Drive.Advance) is not { } state || linkage.Solver.GrooveLeft(state.Pose) is < 0)
                continue;
            string title = "NUT " + text.InSentence(Length.FromMillimetres(Math.Round(Math.Abs(nut), 2))) + (way < 0 ? " BACK, IRON DOWN" : " FORWARD, IRON UP");
            yield return View(way < 0 ? "down" : "up", title, linkage, state.Pose, gaps);
            yield break;
        }
    }

    private static ViewSource View(string id, string? title, Linkage linkage, LeverPose pose, DrawnGaps gaps)
    {
        var picture = new MechanismPicture(linkage, pose, gaps);
        return new ViewSource(id, title) { Edges = picture.Edges, Hatching = picture.Hatching, Orientation = picture.Orientation };
    }

    private static SheetTable Table(Linkage linkage, DimensionText text)
    {
        ImmutableArray<TravelPoint> points = TravelPoint.Over(linkage, BacklashQuestion.TravelPoints);
        ImmutableArray<string> nut = text.Column([.. points.Select(p => p.Nut)], 3, 2), per = text.Column([.. points.Select(p => p.PerTurn ?? Length.Zero)], 4), depth = text.Column([.. points.Select(p => p.DepthPerTurn ?? Length.Zero)], 4);
        return new SheetTable(
            "OVER THE NUT'S TRAVEL, LENGTHS IN " + text.Units.Words(),
            [new("NUT FROM\nMIDDLE", 1), new("LEVER\nTURNED", 1), new("TURNS\nLOST", 1), new("IRON IN\nONE TURN", 1), new("DEPTH IN\nONE TURN", 1)],
            [.. points.Select((p, i) => ImmutableArray.Create(
                nut[i], p.Turn is { } turn ? (turn.Degrees + 0.0).ToString("0.0", CultureInfo.InvariantCulture) + "°" : "–",
                p.IdleTurns is { } idle ? (p.Binds ? "BINDS" : Words.Turns(idle)) : "–", p.PerTurn is null ? "–" : per[i], p.DepthPerTurn is null ? "–" : depth[i]))]);
    }

    private static ImmutableArray<string> Notes(Linkage linkage, DrawnGaps gaps, DimensionText text) =>
    [
        .. Jam(linkage, text),
        "DRAWN AT MID-TRAVEL AND TOWARD BOTH ENDS. SOLVED EXACTLY FROM THE LEVER'S OWN OUTLINE, SIZES AT THE MIDDLE OF THEIR LIMITS; NUT DRIVING THE IRON DOWN.",
        "NUT FROM MIDDLE: MINUS IS AWAY FROM THE TOE, WHICH SENDS THE IRON DOWN. LEVER TURNED: FROM ARMS SQUARE TO STUD. TRAVEL " + text.InSentence(linkage.Assembly.Plane.Nut.Travel.Nominal) + " IN ALL.",
        "SEEN FROM THE USER'S RIGHT, THE TOE TO THE RIGHT. " + gaps.Words(),
        "SAFETY: THE IRON IS SHARP. TAKE IT OUT OF THE PLANE BEFORE YOU WORK ON LEVER, PIN OR NUT.",
    ];

    /// <summary>Where the pads jam before the nut's travel ends: then the travel is not what the stud allows.</summary>
    private static IEnumerable<string> Jam(Linkage linkage, DimensionText text)
    {
        if (FreeTravel.BeforeJam(linkage) is var (back, forward))
            yield return $"TILTED PADS FILL THE NUT'S GROOVE BEYOND {text.InSentence(back)} BACK AND {text.InSentence(forward)} FORWARD: IT BINDS THERE. ROUNDER CROWNS OR A WIDER GROOVE FREE IT.";
    }
}
