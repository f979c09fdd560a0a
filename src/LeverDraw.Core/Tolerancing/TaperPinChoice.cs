using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Tolerancing;

/// <summary>The drill before the taper reamer.</summary>
/// <param name="FromTable">True when the drill is listed for this pin number and length; false when it is the <see cref="PilotDrill"/>.</param>
/// <param name="SmallEnd">The pin's small end.</param>
public sealed record PinDrillChoice(TwistDrill Drill, bool FromTable, Length SmallEnd)
{
    /// <summary>Drill − small end; above zero the reamer leaves the last of the hole at drill size.</summary>
    public Length OverSmallEnd => Drill.Diameter - SmallEnd;
}

/// <summary>The next larger pin, for a hole cleaned up after damage.</summary>
/// <param name="WallLeft">Between the larger hole's large end and the lug's edge.</param>
/// <param name="WallIsEnough">True when that is at least half the hole's diameter (common practice, no source).</param>
public sealed record OversizePin(InchTaperPin Pin, Length WallLeft, bool WallIsEnough);

/// <summary>Tools and repair size for a taper pin.</summary>
public static class TaperPinChoice
{
    /// <summary>large − length · taper.</summary>
    public static Length SmallEnd(Length largeEnd, Length length, Taper taper) => largeEnd - length * taper.Rate;

    /// <summary>small + length · taper.</summary>
    public static Length LargeEnd(Length smallEnd, Length length, Taper taper) => smallEnd + length * taper.Rate;

    /// <summary>The listed drill for this number and length, else the largest number, letter or fraction drill that leaves the reamer its stock.</summary>
    public static Answer<PinDrillChoice> Drill(InchTaperPin pin, Length length)
    {
        Length smallEnd = pin.SmallEnd(length);
        Answer<TaperPinDrill> listed = TaperPinDrills.For(pin.Number, length);
        Answer<TwistDrill> drill = listed.IsGiven
            ? listed.Then(row => TwistDrills.Named(row.Drill))
            : PilotDrill.InchUnder(smallEnd);
        return drill.Map(d => new PinDrillChoice(d, listed.IsGiven, smallEnd));
    }

    /// <summary>The reamer of the pin's number, refused when its flutes do not hold both ends of a hole for the whole pin.</summary>
    public static Answer<TaperPinReamer> Reamer(InchTaperPin pin, Length length) =>
        TaperPinReamers.Numbered(pin.Number).Then(reamer => reamer.Covers(pin.SmallEnd(length), pin.LargeEnd)
            ? Answer<TaperPinReamer>.Given(reamer)
            : Answer<TaperPinReamer>.Refused(
                "reamer " + reamer.Number + " does not reach over the whole length of this pin; use a longer reamer or a shorter pin"));

    /// <summary>The next pin of the series and the wall it leaves.</summary>
    /// <param name="edgeDistance">From the hole's axis to the nearest edge of the lug.</param>
    public static Answer<OversizePin> NextOversize(InchTaperPin pin, Length edgeDistance) =>
        InchTaperPins.Above(pin).Map(next =>
        {
            Length wall = WallLeft(edgeDistance, next.LargeEnd);
            return new OversizePin(next, wall, wall >= LeastWall(next.LargeEnd));
        });

    /// <summary>Between the hole's large end and the lug's edge.</summary>
    /// <param name="edgeDistance">From the hole's axis to that edge.</param>
    public static Length WallLeft(Length edgeDistance, Length largeEnd) => edgeDistance - largeEnd / 2;

    /// <summary>What should be left: half the hole's diameter (common practice, no source).</summary>
    public static Length LeastWall(Length largeEnd) => largeEnd * TaperPinFitting.LeastWallPerDiameter;
}
