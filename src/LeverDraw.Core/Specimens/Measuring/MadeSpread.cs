namespace LeverDraw.Specimens.Measuring;

/// <summary>Standard deviation of a size from part to part as made, by process: the one place. Millimetres, or degrees for an angle.</summary>
/// <remarks>Cast 0.10 mm is the trade notes' own figure for these parts; a filed or faced size takes half the drawing's usual tolerance of 0.1 mm, hole and pin the notes' 0.015 and 0.01 mm; the rest is our own default, common practice, no source.</remarks>
internal static class MadeSpread
{
    /// <summary>Share of a large cast size that its spread does not fall under: contraction alone varies by so much (own).</summary>
    private const double OfSize = 0.005;

    public static double Of(MadeBy process, double size) => process switch
    {
        MadeBy.Cast => Math.Max(0.10, OfSize * size),
        MadeBy.CastRadius => 0.25,
        MadeBy.Filed or MadeBy.Faced => 0.05,
        MadeBy.Reamed => 0.015,
        MadeBy.Ground => 0.01,
        MadeBy.Cut => 0.15,
        _ => 1,
    };
}
