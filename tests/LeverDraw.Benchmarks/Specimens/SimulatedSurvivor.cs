using LeverDraw.Diagnostics;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Readings;

namespace LeverDraw.Benchmarks.Specimens;

/// <summary>What simulated survivors really are, as factors on what the estimates assume: all 1 is the simulation of the trade notes.</summary>
internal sealed record TrialConditions(string Name, double Made = 1, double Wear = 1, double Instrument = 1);

/// <summary>One size of one survivor: made with normal scatter, worn by an exponential amount one way, read with an instrument that has an error of its own and a step.</summary>
internal static class SimulatedSurvivor
{
    public static SourcePosition Nowhere { get; } = SourcePosition.WholeFile("simulated");

    /// <param name="design">Millimetres or degrees.</param>
    /// <param name="error">Of the instrument, as a share of its greatest: −1 to 1.</param>
    public static Reading Read(string specimen, Measurand m, double design, ReadAt at, double error, TrialConditions conditions, RandomSequence random) =>
        Shown(specimen, m, Size(m, design, at, conditions, random), at, error, conditions);

    /// <summary>The size that one survivor has: made and worn.</summary>
    public static double Size(Measurand m, double design, ReadAt at, TrialConditions conditions, RandomSequence random)
    {
        double made = random.Normal(conditions.Made * m.Spread(design));
        double wear = at == ReadAt.Witness || m.Wear == WearSide.None ? 0 : random.Exponential(conditions.Wear * m.UsualWear) * (m.Wear == WearSide.Smaller ? -1 : 1);
        return design + made + wear;
    }

    /// <summary>What the instrument shows of it.</summary>
    public static Reading Shown(string specimen, Measurand m, double size, ReadAt at, double error, TrialConditions conditions)
    {
        bool angle = m.Kind == ReadingKind.Angle;
        Instrument with = With(m);
        double off = conditions.Instrument * Math.Sqrt(3) * with.Common(angle, size) * error, step = Math.Sqrt(12) * with.Rounding(angle);
        return new Reading(specimen, m, Math.Round((size + off) / step) * step, null, with, at, false, string.Empty, Nowhere);
    }

    /// <summary>An even share of the instrument's greatest error, either way.</summary>
    public static double Error(RandomSequence random) => (2 * random.Even()) - 1;

    /// <summary>The usual instrument.</summary>
    public static Instrument With(Measurand m) =>
        m.Kind == ReadingKind.Angle ? Instruments.Protractor
        : m.Habit!.Made == MadeBy.CastRadius ? Instruments.RadiusGauge
        : m.Feature == "hole" ? Instruments.PinGauge
        : m.Feature == "pin" && m.Wear != WearSide.None ? Instruments.Micrometer
        : Instruments.Caliper;
}
