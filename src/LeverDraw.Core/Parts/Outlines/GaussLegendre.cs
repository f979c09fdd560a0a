using System.Collections.Immutable;

namespace LeverDraw.Parts.Outlines;

/// <summary>Gauss–Legendre nodes and weights on −1…1, by Newton's method on the Legendre polynomial.</summary>
internal static class GaussLegendre
{
    public static ImmutableArray<(double Node, double Weight)> Twenty { get; } = Rule(20);

    private static ImmutableArray<(double Node, double Weight)> Rule(int n)
    {
        ImmutableArray<(double, double)>.Builder rule = ImmutableArray.CreateBuilder<(double, double)>(n);
        for (int i = 0; i < n; i++)
        {
            double x = Math.Cos(Math.PI * (i + 0.75) / (n + 0.5)), slope = 0;
            for (int pass = 0; pass < 60; pass++)
            {
                (double p, double before) = (1, 0);
                for (int k = 1; k <= n; k++)
                    (p, before) = ((((2 * k) - 1) * x * p - ((k - 1) * before)) / k, p);
                slope = n * ((x * p) - before) / ((x * x) - 1);
                double step = p / slope;
                x -= step;
                if (Math.Abs(step) < 1e-16)
                    break;
            }

            rule.Add((x, 2 / ((1 - (x * x)) * slope * slope)));
        }

        return rule.MoveToImmutable();
    }
}
