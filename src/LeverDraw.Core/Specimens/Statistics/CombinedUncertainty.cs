namespace LeverDraw.Specimens.Statistics;

/// <summary>Standard uncertainties of independent causes put together, with their degrees of freedom.</summary>
internal static class CombinedUncertainty
{
    /// <summary>Root of the sum of squares (GUM 5.1.2), and the effective degrees of freedom by Welch and Satterthwaite (GUM G.4.1).</summary>
    /// <param name="causes">Each with its standard uncertainty and its degrees of freedom, infinite when it is known; at least one above zero.</param>
    public static (double Deviation, double Freedom) Of(params (double Deviation, double Freedom)[] causes)
    {
        double square = causes.Sum(c => c.Deviation * c.Deviation);
        return (Math.Sqrt(square), square * square / causes.Sum(c => Math.Pow(c.Deviation, 4) / c.Freedom));
    }
}
