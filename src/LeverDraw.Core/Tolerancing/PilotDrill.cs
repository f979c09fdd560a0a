using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Tolerancing;

/// <summary>The drill before a reamer. A drill cuts oversize in brass, so it stays a tenth of a millimetre under the least size the reamer leaves (common practice, no source).</summary>
/// <param name="Name">Of an inch drill; empty for a metric one, which its diameter names.</param>
public sealed record PilotDrill(string Name, Length Diameter)
{
    /// <summary>What a drill leaves for the reamer, on diameter, at least.</summary>
    public static Length LeastStock { get; } = Length.FromMillimetres(0.1);

    /// <summary>What it leaves before a parallel reamer at most, where there is a drill for it (common practice, no source).</summary>
    public static Length MostParallelStock { get; } = Length.FromMillimetres(0.25);

    /// <summary>The largest inch drill that leaves the reamer its stock.</summary>
    /// <param name="leastSize">Of the reamed hole: a tapered one's small end.</param>
    public static Answer<TwistDrill> InchUnder(Length leastSize) => TwistDrills.NearestNotAbove(leastSize - LeastStock);

    /// <summary>The largest metric drill that leaves the reamer its stock.</summary>
    /// <param name="leastSize">As for <see cref="InchUnder"/>.</param>
    public static Answer<Length> MetricUnder(Length leastSize) => MetricTwistDrills.NearestNotAbove(leastSize - LeastStock);

    /// <summary>Before a parallel reamer: the inch drill, or the metric one where the inch drills leave a gap.</summary>
    /// <param name="leastSize">The least limit of the reamed hole.</param>
    public static Answer<PilotDrill> ForParallel(Length leastSize) => InchUnder(leastSize).Map(inch =>
        leastSize - inch.Diameter > MostParallelStock && MetricUnder(leastSize) is { IsGiven: true } metric && metric.Value > inch.Diameter
            ? new PilotDrill(string.Empty, metric.Value)
            : Of(inch));

    /// <summary>Before a taper reamer.</summary>
    /// <param name="smallEnd">Least diameter of the reamed hole.</param>
    public static Answer<PilotDrill> ForTapered(Length smallEnd) => InchUnder(smallEnd).Map(Of);

    private static PilotDrill Of(TwistDrill drill) => new(drill.Name, drill.Diameter);
}
