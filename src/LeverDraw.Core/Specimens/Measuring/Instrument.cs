using System.Collections.Immutable;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Specimens.Measuring;

/// <summary>What a reading was taken with.</summary>
/// <param name="Name">As the readings file gives it.</param>
/// <param name="Step">Of the display or the set of gauges.</param>
/// <param name="DegreeError">Greatest error of an angle, degrees.</param>
/// <param name="Error">Greatest error of a length, in use.</param>
public sealed record Instrument(string Name, Length Step, double DegreeError, Func<Length, Length> Error)
{
    /// <summary>Standard uncertainty that all readings with this instrument share: a rectangular law of the greatest error as half width (GUM 4.3.7).</summary>
    internal double Common(bool angle, double size) => (angle ? DegreeError : Error(Length.FromMillimetres(Math.Max(0, size))).Millimetres) / Math.Sqrt(3);

    /// <summary>Standard uncertainty of the display step alone: step/√12 (GUM F.2.2.1).</summary>
    internal double Rounding(bool angle) => angle ? 0.1 : Step.Millimetres / Math.Sqrt(12);
}

/// <summary>The instruments there are. Caliper: the standards' table; the others: the trade notes' figures for use at the bench; rule, radius gauge and protractor: common practice, no source.</summary>
public static class Instruments
{
    public static Instrument Caliper { get; } = new("caliper", Mm(0.01), 1, size => CaliperErrors.At(size) is { IsGiven: true, Value: var row } ? row.Fine : Mm(0.04));

    public static Instrument Vernier { get; } = new("vernier", Mm(0.05), 1, size => CaliperErrors.At(size) is { IsGiven: true, Value: var row } ? row.Coarse : Mm(0.08));

    public static Instrument Micrometer { get; } = new("micrometer", Mm(0.001), 1, _ => Mm(0.004));

    public static Instrument PinGauge { get; } = new("pin-gauge", Mm(0.01), 1, _ => Mm(0.005));

    public static Instrument RadiusGauge { get; } = new("radius-gauge", Mm(0.25), 1, _ => Mm(0.25));

    public static Instrument Protractor { get; } = new("protractor", Mm(1), 0.5, _ => Mm(1));

    public static Instrument Scan { get; } = new("scan", Mm(0.04), 0.5, _ => Mm(0.15));

    public static Instrument Photo { get; } = new("photo", Mm(0.05), 1, _ => Mm(0.25));

    public static Instrument Rule { get; } = new("rule", Mm(0.5), 1, _ => Mm(0.25));

    /// <summary>For forms and marks, which are seen.</summary>
    public static Instrument Eye { get; } = new("eye", Mm(1), 5, _ => Mm(1));

    public static ImmutableArray<Instrument> All { get; } = [Caliper, Vernier, Micrometer, PinGauge, RadiusGauge, Protractor, Scan, Photo, Rule, Eye];

    /// <summary>The flat of a caliper's inside jaws (trade notes), millimetres.</summary>
    private const double JawFlat = 0.4;

    /// <summary>By how much inside jaws read a small bore too small: a flat of width w across a bore D bridges w²/(2D) of it.</summary>
    public static Length SmallBoreError(Length bore) => Mm(JawFlat * JawFlat / (2 * bore.Millimetres));

    private static Length Mm(double mm) => Length.FromMillimetres(mm);
}
