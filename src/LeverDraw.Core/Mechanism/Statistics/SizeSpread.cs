namespace LeverDraw.Mechanism.Statistics;

/// <summary>How sizes are taken to lie between their limits.</summary>
public enum SizeSpread
{
    /// <summary>Normal about the middle, the limits three standard deviations out.</summary>
    Normal,

    /// <summary>Evenly from limit to limit.</summary>
    Even,
}
