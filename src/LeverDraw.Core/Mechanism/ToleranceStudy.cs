using System.Collections.Immutable;
using LeverDraw.Mechanism.Statistics;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Mechanism;

/// <summary>How far the lost motion may stray when the sizes do within their limits.</summary>
/// <param name="WorstCase">Of the nut's idle way: every size at its worst limit at once.</param>
/// <param name="RootSumSquare">The usual statistical limits.</param>
public sealed record ToleranceStudy(ImmutableArray<Contributor> Contributors, SizeLimits WorstCase, SizeLimits RootSumSquare)
{
    /// <summary>Step of the iron's thickness for its factor, and how finely the simulation follows it, mm.</summary>
    private const double Step = 0.05;

    public static ToleranceStudy Of(Linkage linkage)
    {
        ArgumentNullException.ThrowIfNull(linkage);
        PlaySizes s = linkage.Sizes;
        LostMotion m = linkage.Motion;
        (string Name, Gap? Gap, SizeLimits Limits, double Factor)[] rows =
        [
            ("thread play", Gap.Thread, s.Thread, 1),
            ("groove width", Gap.Groove, s.Groove, 1),
            ("pad thickness", Gap.Groove, s.Pad, -1),
            ("pad offset", Gap.Groove, s.PadOffset, -1),
            ("hole diameter", Gap.Pivot, s.Hole, m.Pivot),
            ("pin diameter", Gap.Pivot, s.Pin, -m.Pivot),
            ("slot width", Gap.Slot, s.Slot, m.Slot),
            ("tongue thickness", Gap.Slot, s.Tongue, -m.Slot),
            ("iron thickness", null, s.Iron, IronFactor(linkage)),
        ];
        double all = rows.Sum(r => Square(r.Limits.Width.Millimetres * r.Factor));
        // About the idle way itself: gaps are small differences of large sizes, and the iron's thickness enters by its change alone.
        var chain = new ToleranceChain(rows.Select(r => new ChainLink(r.Name, Length.Zero, new LimitDeviations(-r.Limits.Width / 2, r.Limits.Width / 2), r.Factor)));
        Length half = chain.WorstCase.Max, usual = chain.RootSumSquare.Max;
        return new ToleranceStudy(
            [.. rows.Select(r => new Contributor(r.Name, r.Gap, r.Limits, r.Factor, all == 0 ? 0 : Square(r.Limits.Width.Millimetres * r.Factor) / all))],
            new SizeLimits(linkage.Idle - half, linkage.Idle + half),
            new SizeLimits(linkage.Idle - usual, linkage.Idle + usual));
    }

    /// <summary>Random draws of all sizes, the idle way in turns by the formula, with the arms that each drawn iron gives.</summary>
    /// <param name="target">Turns to count draws over; null: none.</param>
    public SimulationResult Simulate(Linkage linkage, SizeSpread spread, long draws, ulong seed, double? target)
    {
        ArgumentNullException.ThrowIfNull(linkage);
        DrawnSize[] sizes = [.. Contributors.Select(c => new DrawnSize(c.Limits.Min.Millimetres, c.Limits.Max.Millimetres))];
        // Normal draws go beyond the worst case now and then, but hardly further than six standard deviations.
        Length usual = RootSumSquare.Width;
        double least = linkage.Turns(Length.Min(WorstCase.Min, RootSumSquare.Mid - usual)), most = linkage.Turns(Length.Max(WorstCase.Max, RootSumSquare.Mid + usual));
        return Simulation.Run(new IdleTurns(linkage), sizes, spread, draws, seed, new DrawnSize(least, most), target);
    }

    private static double IronFactor(Linkage linkage)
    {
        Linkage? thin = IronCurve.With(linkage, -Step), thick = IronCurve.With(linkage, Step);
        return thin is null || thick is null ? 0 : (thick.Idle - thin.Idle).Millimetres / (2 * Step);
    }

    private static double Square(double value) => value * value;
}
