using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Tolerancing;

/// <summary>One size of a chain.</summary>
/// <param name="Factor">How the result moves with this size: +1 adds, −1 takes away; other values for levers and tapers.</param>
public sealed record ChainLink(string Name, Length Nominal, LimitDeviations Deviations, double Factor = 1);

/// <summary>A sum of toleranced sizes and how far the sum may stray. An empty chain is zero.</summary>
public sealed class ToleranceChain
{
    public ToleranceChain(IEnumerable<ChainLink> links) => Links = [.. links];

    public ImmutableArray<ChainLink> Links { get; }

    /// <summary>Σ factor·nominal.</summary>
    public Length Nominal => Sum(link => link.Nominal * link.Factor);

    /// <summary>The middle of the result: Σ factor·(nominal + middle of its deviations).</summary>
    public Length Mid => Sum(link => (link.Nominal + link.Deviations.Mid) * link.Factor);

    /// <summary>Every size at its worst limit at once: Mid ± ½ Σ |factor|·width.</summary>
    public SizeLimits WorstCase => About(Sum(link => link.Deviations.Width * Math.Abs(link.Factor)) / 2);

    /// <summary>Mid ± ½ √Σ (factor·width)²: the usual statistical limits, good when the sizes are independent and centred.</summary>
    public SizeLimits RootSumSquare => About(Length.FromMillimetres(
        Math.Sqrt(Links.Sum(link => Square((link.Deviations.Width * link.Factor).Millimetres))) / 2));

    private SizeLimits About(Length half) => new(Mid - half, Mid + half);

    private Length Sum(Func<ChainLink, Length> part) =>
        Links.Aggregate(Length.Zero, (total, link) => total + part(link));

    private static double Square(double value) => value * value;
}
