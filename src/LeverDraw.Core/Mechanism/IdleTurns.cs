using LeverDraw.Mechanism.Statistics;

namespace LeverDraw.Mechanism;

/// <summary>Lost turns of drawn sizes, in the order of <see cref="ToleranceStudy.Contributors"/>, millimetres.</summary>
internal readonly struct IdleTurns(Linkage linkage) : IDrawnResult
{
    private readonly IronCurve _iron = new(linkage);
    private readonly double _lead = linkage.Lead.Millimetres;

    public double Of(ReadOnlySpan<double> sizes, out bool binds)
    {
        (double slot, double pivot, double thicker) = _iron.At(sizes[8]);
        double thread = sizes[0], groove = sizes[1] - sizes[2] - sizes[3], hole = sizes[4] - sizes[5], tongue = sizes[6] - sizes[7] - thicker;
        binds = groove < 0 || hole < 0 || tongue < 0;
        return (thread + groove + (pivot * hole) + (slot * tongue)) / _lead;
    }
}
