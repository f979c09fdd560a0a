using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Tolerancing;

public enum FitKind
{
    /// <summary>The smallest hole is at least as large as the largest shaft.</summary>
    Clearance,

    Transition,

    /// <summary>The largest hole is at most as large as the smallest shaft.</summary>
    Interference,
}

/// <summary>A hole zone with a shaft zone, such as H8/f7.</summary>
public readonly record struct Fit
{
    /// <exception cref="ArgumentException">The first is not a hole zone or the second not a shaft zone.</exception>
    public Fit(ToleranceZone hole, ToleranceZone shaft)
    {
        if (hole.Feature != FitFeature.Hole || shaft.Feature != FitFeature.Shaft)
            throw new ArgumentException("A fit is a hole zone and a shaft zone.", nameof(hole));
        Hole = hole;
        Shaft = shaft;
    }

    public ToleranceZone Hole { get; }

    public ToleranceZone Shaft { get; }

    public string Text => Hole.Text + "/" + Shaft.Text;

    /// <summary>Reads <c>H8/f7</c>.</summary>
    public static Answer<Fit> Parse(string text)
    {
        int slash = text.IndexOf('/', StringComparison.Ordinal);
        if (slash < 0)
            return Answer<Fit>.Refused("a fit is a hole zone, a slash and a shaft zone such as H8/f7, not \"" + text + "\"");
        return ToleranceZone.Parse(text[..slash]).Then(hole => ToleranceZone.Parse(text[(slash + 1)..]).Then(shaft =>
            hole.Feature == FitFeature.Hole && shaft.Feature == FitFeature.Shaft
                ? Answer<Fit>.Given(new Fit(hole, shaft))
                : Answer<Fit>.Refused("in a fit the capital letter (hole) comes first and the small letter (shaft) second, as in H8/f7")));
    }

    /// <summary>What the fit gives on a nominal size.</summary>
    public Answer<FitLimits> On(Length nominal)
    {
        ToleranceZone shaftZone = Shaft;
        return Iso286.Limits(Hole, nominal).Then(hole =>
            Iso286.Limits(shaftZone, nominal).Map(shaft => new FitLimits(hole, shaft)));
    }

    public override string ToString() => Text;
}

/// <summary>A hole and a shaft, each with its limits. Clearance is hole − shaft; a negative one is interference.</summary>
public readonly record struct FitLimits(SizeLimits Hole, SizeLimits Shaft)
{
    public Length MinClearance => Hole.Min - Shaft.Max;

    public Length MaxClearance => Hole.Max - Shaft.Min;

    /// <remarks>Compared to a picometre: 3.06 mm limits made from tabled deviations are not exact doubles.</remarks>
    public FitKind Kind =>
        MinClearance.Millimetres >= -1e-9 ? FitKind.Clearance
        : MaxClearance.Millimetres <= 1e-9 ? FitKind.Interference
        : FitKind.Transition;
}
