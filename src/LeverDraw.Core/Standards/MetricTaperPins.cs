using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>A metric taper pin, 1:50, named by the diameter of its SMALL end.</summary>
/// <param name="SmallEnd">Nominal diameter d of the small end; its deviations are h10 unless agreed otherwise.</param>
/// <param name="RoundedEnd">Height a of the rounded end, about.</param>
/// <param name="CommonLengths">Lengths usually stocked (from memory).</param>
public sealed record MetricTaperPin(Length SmallEnd, Length RoundedEnd, LengthRange CommonLengths)
{
    /// <summary>d + length/50.</summary>
    public Length LargeEnd(Length length) => SmallEnd + length * Taper.MetricPins.Rate;
}

/// <summary>The metric taper pins, smallest first.</summary>
public static class MetricTaperPins
{
    public static StandardSource Source { get; } = new(
        "Metric taper pins", "ISO 2339", "1986", "", Certainty.Mixed,
        "d and a: one scan with two readings set right by preferred numbers; taper: two sources; common lengths and end radii from memory");

    /// <summary>Nominal d; a; shortest and longest common length, mm.</summary>
    public static ImmutableArray<MetricTaperPin> All { get; } =
    [
        Pin(0.6, 0.08, 4, 8),
        Pin(0.8, 0.1, 5, 12),
        Pin(1, 0.12, 6, 16),
        Pin(1.2, 0.16, 6, 20),
        Pin(1.5, 0.2, 8, 24),
        Pin(2, 0.25, 10, 35),
        Pin(2.5, 0.3, 10, 35),
        Pin(3, 0.4, 12, 45),
        Pin(4, 0.5, 14, 55),
        Pin(5, 0.63, 18, 60),
        Pin(6, 0.8, 22, 90),
        Pin(8, 1, 22, 120),
        Pin(10, 1.2, 26, 160),
        Pin(12, 1.6, 32, 180),
        Pin(16, 2, 40, 200),
        Pin(20, 2.5, 45, 200),
        Pin(25, 3, 50, 200),
        Pin(30, 4, 55, 200),
        Pin(40, 5, 60, 200),
        Pin(50, 6.3, 65, 200),
    ];

    public static Answer<MetricTaperPin> WithSmallEnd(Length nominal)
    {
        double mm = SizeSteps.ToBorder(nominal);
        return Answer<MetricTaperPin>.First(
            All,
            pin => SizeSteps.ToBorder(pin.SmallEnd) == mm,
            () => "the metric taper pins have small ends from 0.6 to 50 mm in steps of their series");
    }

    /// <summary>The next larger pin of the series.</summary>
    public static Answer<MetricTaperPin> Above(MetricTaperPin pin)
    {
        int at = All.IndexOf(pin);
        return at >= 0 && at + 1 < All.Length
            ? Answer<MetricTaperPin>.Given(All[at + 1])
            : Answer<MetricTaperPin>.Refused("the metric taper pins end at a small end of 50 mm");
    }

    private static MetricTaperPin Pin(double d, double a, double shortest, double longest) =>
        new(Length.FromMillimetres(d), Length.FromMillimetres(a),
            new LengthRange(Length.FromMillimetres(shortest), Length.FromMillimetres(longest)));
}
