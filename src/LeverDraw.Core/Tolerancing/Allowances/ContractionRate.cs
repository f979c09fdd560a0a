using LeverDraw.Units;

namespace LeverDraw.Tolerancing.Allowances;

public enum RateOrigin
{
    /// <summary>The usual value of the tables; its uncertainty reaches to the ends of the published range.</summary>
    Book,

    /// <summary>What the profile states.</summary>
    Stated,

    /// <summary>Measured on a trial pattern and its casting.</summary>
    Trial,
}

/// <summary>Linear contraction, length per length of the casting (0.0104 is 1.04 %): a pattern is casting × (1 + rate). From zero below a half.</summary>
public readonly record struct ContractionRate
{
    private ContractionRate(double value, double below, double above, RateOrigin origin) =>
        (Value, Below, Above, Origin) = (value, below, above, origin);

    public double Value { get; }

    /// <summary>How far the true rate may lie below <see cref="Value"/>, not negative.</summary>
    public double Below { get; }

    /// <summary>How far it may lie above.</summary>
    public double Above { get; }

    public RateOrigin Origin { get; }

    /// <summary>Pattern over casting: 1 + rate (reference 04d).</summary>
    public double Factor => 1 + Value;

    public double Percent => Value * 100;

    /// <summary>N of "1 in N"; infinite when nothing contracts.</summary>
    public double OneInN => 1 / Value;

    public double InchesPerFoot => Value * 12;

    public static ContractionRate None => default;

    /// <exception cref="ArgumentOutOfRangeException">Below zero, or a half or more.</exception>
    public static ContractionRate Of(double value, RateOrigin origin = RateOrigin.Stated) => Of(value, 0, 0, origin);

    public static ContractionRate FromPercent(double percent) => Of(percent / 100);

    public static ContractionRate OneIn(double n) => Of(1 / n);

    public static ContractionRate FromInchesPerFoot(double inches) => Of(inches / 12);

    /// <summary>The usual value within its published range.</summary>
    public static ContractionRate Book(double lowest, double usual, double highest) =>
        Of(usual, Math.Max(0, usual - lowest), Math.Max(0, highest - usual), RateOrigin.Book);

    /// <summary>Measured: pattern / casting − 1. Both readings may be off by <paramref name="uncertainty"/>; the rate's limits are the worst of the two together.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The sizes give no contraction between zero and a half.</exception>
    public static ContractionRate Trial(Length pattern, Length casting, Length uncertainty)
    {
        double value = (pattern / casting) - 1;
        double most = ((pattern + uncertainty) / (casting - uncertainty)) - 1, least = ((pattern - uncertainty) / (casting + uncertainty)) - 1;
        return Of(value, value - least, most - value, RateOrigin.Trial);
    }

    /// <summary>For a master: the contraction of the working pattern's metal and then of the casting's, (1 + a)(1 + b) − 1. Books add the two; the difference is a·b.</summary>
    public ContractionRate Then(ContractionRate next) => Of(
        (Factor * next.Factor) - 1,
        (Factor * next.Factor) - ((Factor - Below) * (next.Factor - next.Below)),
        ((Factor + Above) * (next.Factor + next.Above)) - (Factor * next.Factor),
        Origin);

    private static ContractionRate Of(double value, double below, double above, RateOrigin origin) =>
        value is >= 0 and < 0.5
            ? new(value, below, above, origin)
            : throw new ArgumentOutOfRangeException(nameof(value), "A contraction lies between zero and a half.");
}
