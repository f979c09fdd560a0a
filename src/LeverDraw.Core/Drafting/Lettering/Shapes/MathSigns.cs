namespace LeverDraw.Drafting.Lettering.Shapes;

/// <summary>Signs of arithmetic, as wide as a figure and centred on half the figures' height, and marks that stand with a number.</summary>
internal static class MathSigns
{
    public const string Paths = """
        + M 0 5 L 5 5 M 2.5 7.5 L 2.5 2.5
        2212 M 0 5 L 5 5
        ± M 0 6 L 5 6 M 2.5 8.5 L 2.5 3.5 M 0 1 L 5 1
        × M 0 3 L 4 7 M 0 7 L 4 3
        ÷ M 0 5 L 5 5 P 2.5 7.6 P 2.5 2.4
        00B7 P 0 5
        = M 0 6.3 L 5 6.3 M 0 3.7 L 5 3.7
        < M 4.6 8 L 0 5 L 4.6 2
        > M 0 8 L 4.6 5 L 0 2
        ≤ M 4.6 9 L 0 6 L 4.6 3 M 0 1 L 4.6 1
        ≥ M 0 9 L 4.6 6 L 0 3 M 0 1 L 4.6 1
        ~ M 0 4.4 D 0.5 1 B 1.5 5.6 1 0 B 3.5 4.4 1 0 B 5 5.6 0.5 1
        ≈ M 0 5.7 D 0.5 1 B 1.5 6.9 1 0 B 3.5 5.7 1 0 B 5 6.9 0.5 1 M 0 3.1 D 0.5 1 B 1.5 4.3 1 0 B 3.5 3.1 1 0 B 5 4.3 0.5 1
        ≠ M 0 6.3 L 5 6.3 M 0 3.7 L 5 3.7 M 1 2 L 4 8
        √ M 0 4.6 L 1 5.2 L 2.6 0 L 5 11 L 7 11
        ∞ M 4 5 D 0.5 1 B 6 7 1 0 T 6 3 B 4 5 -0.5 1 B 2 7 -1 0 T 2 3 B 4 5 0.5 1
        ° O 1.1 8.9 1.1
        2032 M 0.6 10 L 0 7.4
        2033 M 0.6 10 L 0 7.4 M 2.2 10 L 1.6 7.4
        00B5 M 0 -3 L 0 7 M 0 2.4 D 0 -1 B 2.1 0 1 0 B 4.6 2.1 0.5 1 M 4.6 7 L 4.6 0
        """;
}
