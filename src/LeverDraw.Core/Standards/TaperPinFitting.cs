using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>How far a 1:50 pin stands out by hand before it is driven home.</summary>
public sealed record StandOffBeforeDriving(Length SmallEnd, Length Least, Length Most);

/// <summary>Shop figures for fitting taper pins.</summary>
public static class TaperPinFitting
{
    public static StandardSource Source { get; } = new(
        "Fitting taper pins", "Workshop manuals", "", "", Certainty.Thin,
        "stand-off of metric pins: one reaming manual; within 1/16 in of home by hand: US Army TM 9-254; wall, stand-out and interference limits: common practice or our own default, no source");

    /// <summary>Metric pins, stand-off before driving (one reaming manual).</summary>
    public static ImmutableArray<StandOffBeforeDriving> MetricStandOff { get; } =
    [
        Row(5, 3, 3),
        Row(6, 4, 5),
        Row(8, 5, 6),
        Row(10, 8, 8),
    ];

    /// <summary>In a good hole the pin goes in by hand to within this of home (US Army TM 9-254).</summary>
    public static Length HandSeating { get; } = Length.FromInches(1.0 / 16);

    /// <summary>The driven pin stands out of the lug at least this much at its large end (common practice, no source).</summary>
    public static Length StandOutLeast { get; } = Length.FromMillimetres(0.5);

    /// <summary>And at most this much (common practice, no source).</summary>
    public static Length StandOutMost { get; } = Length.FromMillimetres(1.6);

    /// <summary>Wall that should stay between hole and lug edge, as a part of the hole diameter (common practice, no source).</summary>
    public const double LeastWallPerDiameter = 0.5;

    /// <summary>More diametral interference than this may split an iron lug (our own default, no source).</summary>
    public static Length MostInterference { get; } = Length.FromMillimetres(0.035);

    private static StandOffBeforeDriving Row(double d, double least, double most) =>
        new(Length.FromMillimetres(d), Length.FromMillimetres(least), Length.FromMillimetres(most));
}
