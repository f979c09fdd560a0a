namespace LeverDraw.Tolerancing.Allowances;

/// <summary>Contraction along the pin (x), square to the arms (n) and along the arms (z). One rate for all unless a trial said otherwise.</summary>
public readonly record struct AxisRates(ContractionRate X, ContractionRate N, ContractionRate Z)
{
    public static AxisRates Alike(ContractionRate rate) => new(rate, rate, rate);

    public bool AreAlike => X.Value == N.Value && N.Value == Z.Value;

    /// <summary>The largest way a rate may be off, for a size in no single direction.</summary>
    public double MostBelow => Math.Max(X.Below, Math.Max(N.Below, Z.Below));

    public double MostAbove => Math.Max(X.Above, Math.Max(N.Above, Z.Above));

    public AxisRates Then(ContractionRate next) => new(X.Then(next), N.Then(next), Z.Then(next));
}
