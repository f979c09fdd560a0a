namespace LeverDraw.Mechanism.Statistics;

/// <summary>What comes of one draw of sizes. A struct, so that the loop over millions of draws calls it directly.</summary>
public interface IDrawnResult
{
    /// <param name="sizes">One number each, in the unit and order of the spreads.</param>
    /// <param name="binds">True when these sizes do not go together.</param>
    double Of(ReadOnlySpan<double> sizes, out bool binds);
}

/// <summary>A sum of sizes, each times a factor.</summary>
public readonly struct LinearResult(double[] factors) : IDrawnResult
{
    private readonly double[] _factors = factors;

    public double Of(ReadOnlySpan<double> sizes, out bool binds)
    {
        binds = false;
        double sum = 0;
        for (int i = 0; i < sizes.Length; i++)
            sum += sizes[i] * _factors[i];
        return sum;
    }
}
