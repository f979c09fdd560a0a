namespace LeverDraw.Units;

/// <summary>Change of diameter per unit of length along the axis; 1:48 is 1/48. Zero is parallel. Never negative.</summary>
public readonly record struct Taper
{
    private Taper(double rate) => Rate = rate;

    /// <summary>The inch taper-pin series: 1/4 in per foot on diameter (reference 07h, two sources).</summary>
    public static Taper InchPins => OneIn(48);

    /// <summary>The metric taper-pin series, ISO 2339 (reference 07h).</summary>
    public static Taper MetricPins => OneIn(50);

    public static Taper Parallel => default;

    public double Rate { get; }

    public bool IsParallel => Rate == 0;

    /// <summary>The length in which the diameter changes by one; infinite when parallel.</summary>
    public double LengthPerUnit => 1 / Rate;

    /// <summary>The angle between the two sides: 2·atan(rate/2).</summary>
    public Angle IncludedAngle => Angle.FromRadians(2 * Math.Atan(Rate / 2));

    /// <exception cref="ArgumentOutOfRangeException">The denominator is not finite and positive.</exception>
    public static Taper OneIn(double denominator) =>
        double.IsFinite(denominator) && denominator > 0
            ? new Taper(1 / denominator)
            : throw new ArgumentOutOfRangeException(nameof(denominator), "A taper 1:n needs a finite n above zero.");
}
