using LeverDraw.Cli.Drawing;
using LeverDraw.Cli.Json;
using LeverDraw.Diagnostics;
using LeverDraw.Mechanism;
using LeverDraw.Mechanism.Statistics;
using LeverDraw.Units;

namespace LeverDraw.Cli.Mechanism;

/// <summary>What <c>backlash --json</c> prints: lengths in millimetres, angles in degrees.</summary>
internal sealed record BacklashShape(bool Ok, BacklashSetupShape? Report, IReadOnlyList<WrittenShape> Written, IReadOnlyList<DiagnosticShape> Diagnostics);

internal sealed record BacklashSetupShape(
    string Setup, string Lever, string Pin, string Plane, LostShape AsFound, LostShape? AllNew, double? Target, MechanicsShape Mechanics,
    IReadOnlyList<GapShape> Gaps, RangeShape WorstCase, RangeShape RootSumSquare, SimulationShape Simulation, IReadOnlyList<SizeShape> Sizes,
    IReadOnlyList<TravelShape> Travel, IReadOnlyList<CureShape> Cures, CureShape? Cheapest);

/// <param name="Meant"><c>exact</c> or <c>formula</c>: which of the two <paramref name="Turns"/> is.</param>
/// <param name="FormulaLeavesOut">About so many turns; below 0.0008 the two agree within 0.001.</param>
internal sealed record LostShape(double Turns, double ByFormula, double? Exactly, string Meant, double Lean, double FormulaLeavesOut);

internal sealed record MechanicsShape(
    double NutArm, double IronArm, double Ratio, double PivotFactor, double Lead, double TravelPerTurn, double DepthPerTurn,
    double TongueHeight, double TongueThickness, double TongueStandOut, double TongueLand, double SidePlay);

internal sealed record GapShape(string Gap, double Typical, double Least, double Most, double Turns, double Share, double TurnsPerTenth);

internal sealed record RangeShape(double LeastTurns, double MostTurns);

internal sealed record SimulationShape(
    long Draws, ulong Seed, string Spread, EstimateShape MeanTurns, double StandardDeviation, EstimateShape LowEnd, EstimateShape HighEnd, EstimateShape? OverTarget, EstimateShape Binding);

internal sealed record EstimateShape(double Value, double Low, double High);

internal sealed record SizeShape(string Name, string? Gap, double Least, double Most, double TurnsPerTenth, double ShareOfVariance);

internal sealed record TravelShape(double Nut, double? LeverTurned, double? TurnsLost, double? IronPerTurn, double? DepthPerTurn);

internal sealed record CureShape(IReadOnlyList<string> Parts, double Price, double? Turns);

internal static class BacklashShapes
{
    /// <param name="report">Null when something stood in its way.</param>
    public static BacklashShape Of(BacklashReport? report, IEnumerable<RenderedFile> written, IEnumerable<Diagnostic> told) =>
        new(report is not null, report is null ? null : Of(report), [.. written.Select(SheetOutput.Shape)], [.. told.Select(ShapesJson.Of)]);

    private static BacklashSetupShape Of(BacklashReport r)
    {
        Linkage linkage = r.Linkage;
        Bearing b = linkage.Bearing;
        SimulationResult s = r.Simulation;
        double Tenth(double factor) => linkage.Turns(Length.FromMillimetres(0.1) * factor);
        return new BacklashSetupShape(
            r.Setup.Name, r.Setup.Lever.Name, r.Setup.Pin.Name, r.Setup.Plane.Name,
            Of(r.Now), r.AllNew is { } fresh ? Of(fresh) : null, r.Target,
            new MechanicsShape(
                linkage.NutArm.Millimetres, linkage.IronArm.Millimetres, linkage.Motion.Slot, linkage.Motion.Pivot, linkage.Lead.Millimetres, linkage.TravelPerTurn.Millimetres,
                linkage.DepthPerTurn.Millimetres, b.Height.Millimetres, b.Thickness.Millimetres, b.StandOut.Millimetres, b.Land.Millimetres, r.SidePlay.Millimetres),
            [.. r.Shares.Select(g => new GapShape(g.Gap.Words(), g.Typical.Millimetres, g.Worst.Min.Millimetres, g.Worst.Max.Millimetres, g.Turns, g.Share, g.PerTenth))],
            Of(r.InTurns(r.Tolerances.WorstCase)), Of(r.InTurns(r.Tolerances.RootSumSquare)),
            new SimulationShape(s.Draws, s.Seed, s.Spread == SizeSpread.Normal ? "normal" : "even", Of(s.Mean), s.StandardDeviation, Of(s.LowEnd), Of(s.HighEnd), s.Over is { } over ? Of(over) : null, Of(s.Binding)),
            [.. r.Tolerances.Contributors.Select(c => new SizeShape(c.Name, c.Gap?.Words(), c.Limits.Min.Millimetres, c.Limits.Max.Millimetres, Tenth(c.Factor), c.Variance))],
            [.. r.Travel.Select(t => new TravelShape(t.Nut.Millimetres, t.Turn?.Degrees, t.IdleTurns, t.PerTurn?.Millimetres, t.DepthPerTurn?.Millimetres))],
            [.. r.Cures.Select(Of)], r.Cheapest is { } cheapest ? Of(cheapest) : null);
    }

    private static LostShape Of(LostTurns lost) => new(lost.Meant, lost.Formula, lost.Exact, lost.Exact is null ? "formula" : "exact", lost.Lean.Degrees, lost.LeftOut);

    private static RangeShape Of((double Least, double Most) turns) => new(turns.Least, turns.Most);

    private static EstimateShape Of(Estimate e) => new(e.Value, e.Low, e.High);

    private static CureShape Of(Cure cure) => new([.. cure.Parts.Select(p => p.Word())], cure.Price, cure.Turns);
}
